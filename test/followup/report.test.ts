import assert from 'node:assert/strict';
import { nextKind } from '../../src/followup/next-words.ts';
import { asksOf } from '../../src/followup/report.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';

describe('what a report asks for', () => {
  const asks = (text: string): boolean => asksOf(text, tables).length > 0;
  it('knows melanoma by its short form, and millimeters from it', () => {
    assert.ok(asks('MM, 0.5 mm'));
    for (const text of ['nevus, 3 mm', 'NEVUS, 3 MM', 'cyst measuring 4x3 MM']) assert.ok(!asks(text), text);
  });
  it('knows a lost sample, and other things that are lost, empty or missing from it', () => {
    for (const text of [
      'lost',
      'Specimen lost',
      'container empty',
      'Sample lost in transit',
      'specimen missing',
    ])
      assert.ok(asks(text), text);
    for (const text of [
      'lichen planus with lost rete ridges',
      'scarring alopecia, empty follicles in most sections',
      'dermatitis; the granular layer is missing in places',
    ])
      assert.ok(!asks(text), text);
  });
  it('takes no question of the clinic for a finding', () => {
    assert.ok(!asks('Clinical impression: r/o BCC. Diagnosis: seborrheic keratosis'));
  });
});

describe('words of a next step', () => {
  it('are something to do, something to look at again, or nothing', () => {
    for (const text of ['ED&C', 'recheck in 3 months and excise', 'tumor board'])
      assert.equal(nextKind(text), 'action');
    for (const text of ['f/u 1 year', 'rebiopsy if it grows', 'annual skin check'])
      assert.equal(nextKind(text), 'recall');
    for (const text of [
      'Mohs if insurance approves',
      'excise, book if patient agrees',
      're-excise if margins involved',
    ])
      assert.equal(nextKind(text), 'action', text);
    for (const text of [
      'return if worse',
      'rebiopsy if the lesion recurs',
      'see if not better',
      'biopsy if any change',
    ])
      assert.equal(nextKind(text), 'recall', text);
    for (const text of ['none', 'no excision needed', 'reassurance']) assert.equal(nextKind(text), 'nothing');
  });
});
