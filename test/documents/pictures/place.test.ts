import assert from 'node:assert/strict';
import { placePicture } from '../../../src/documents/pictures/place.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

describe('the picture of places', () => {
  it('is not there where the note has no procedure', () => {
    const { value } = readNote('wheal: 1\n');
    assert.ok(value !== null);
    assert.equal(placePicture(value, referenceTables), undefined);
  });
});
