import assert from 'node:assert/strict';
import { placeWords } from '../../src/documents/handout/places.ts';
import { catalogue } from '../../src/documents/handout/sentences/index.ts';
import type { Language } from '../../src/note/words/language.ts';
import { sites } from '../../src/reference/sites.ts';
import { misspelt } from './spelling.ts';

const languages: readonly Language[] = ['en', 'es'];

describe('spelling of the handout', () => {
  it('would be noticed if it were wrong', () => {
    assert.deepEqual(misspelt('Wash the woond', 'en'), ['woond']);
    assert.deepEqual(misspelt('Lave la erida', 'es'), ['erida']);
  });

  for (const language of languages) {
    it(`is that of a dictionary in every sentence (${language})`, () => {
      for (const sentence of catalogue.values())
        assert.deepEqual(misspelt(sentence[language], language), [], `${sentence.id}: ${sentence[language]}`);
    });

    it(`is that of a dictionary in every place (${language})`, () => {
      for (const base of sites) {
        const text = placeWords({ base, side: 'left' }, language) ?? '';
        assert.deepEqual(misspelt(text, language), [], text);
      }
    });
  }
});
