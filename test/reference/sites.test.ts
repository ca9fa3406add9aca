import assert from 'node:assert/strict';
import { sharedPhrases } from '../../src/note/words/site-words.ts';
import { WordTable } from '../../src/note/words/word-table.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { sites } from '../../src/reference/sites.ts';
import { sutureWindows } from '../../src/reference/suture-windows.ts';

const named = (wanted: (row: (typeof sites)[number]) => boolean): string[] =>
  sites.filter(wanted).map(({ name }) => name);
const holds = (names: readonly string[], all: readonly string[]): void => {
  assert.deepEqual(
    names.filter((name) => !all.includes(name)),
    [],
  );
};

describe('body sites', () => {
  it('are at least 130, each with words of its own', () => {
    assert.ok(sites.length >= 130, String(sites.length));
    assert.doesNotThrow(() => new WordTable(sites));
    assert.deepEqual(sharedPhrases(sites), []);
  });

  it('are written in plain lower case', () => {
    for (const { name, synonyms } of sites)
      for (const word of [name, ...synonyms]) assert.match(word, /^[a-z0-9]+( [a-z0-9]+)*$/, name);
  });

  it('have a suture window, or none on purpose', () => {
    const groups = new Set(sutureWindows.map(({ group }) => group));
    for (const { name, group } of sites) assert.ok(group === null || groups.has(group), name);
    // Inside the mouth stitches are absorbable (suture chart); for the others no row was found.
    assert.deepEqual(named(({ group }) => group === null).sort(), [
      'buccal mucosa',
      'ear canal',
      'gingiva',
      'hard palate',
      'labial mucosa',
      'nasal vestibule',
      'perianal skin',
      'perineum',
      'tongue',
      'urethral meatus',
      'vagina',
    ]);
  });

  it('cite sources that exist for what lies under them', () => {
    for (const { danger } of sites) if (danger) assert.notEqual(citation(danger.source), '');
  });

  it('name the motor nerves that a cut at temple, jaw and lateral neck can reach', () => {
    // Fitzpatrick's Dermatology 9e, Cutaneous Surgical Anatomy: three danger zones.
    const under = (name: string): string => sites.find((row) => row.name === name)?.danger?.structure ?? '';
    assert.match(under('temple'), /temporal branch/);
    assert.match(under('jawline'), /marginal mandibular/);
    assert.match(under('lateral neck'), /spinal accessory/);
    assert.match(under('posterior triangle of the neck'), /spinal accessory/);
    assert.equal(under('cheek'), '');
  });

  it('mark fingers, toes, nose, ear and penis as supplied by end arteries', () => {
    // Mepivacaine with epinephrine, drug monograph: digit, nose and ear. The penis is common teaching, no source.
    const ends = named(({ endArtery }) => endArtery);
    holds(
      ['thumb', 'little finger', 'great toe', 'nasal tip', 'helix', 'earlobe', 'glans penis', 'thumbnail'],
      ends,
    );
    for (const name of ['cheek', 'palm', 'dorsal hand', 'postauricular skin'])
      assert.ok(!ends.includes(name));
  });

  it('mark what later checks ask for', () => {
    holds(
      ['upper eyelid', 'medial canthus', 'eyebrow', 'infraorbital cheek'],
      named(({ nearEye }) => nearEye),
    );
    assert.deepEqual(
      named(({ earCanal }) => earCanal),
      ['ear canal'],
    );
    holds(
      ['palm', 'sole', 'heel', 'ring finger', 'fifth toe', 'great toenail'],
      named(({ acral }) => acral),
    );
    holds(
      ['shin', 'calf', 'ankle', 'dorsal foot'],
      named(({ slowHealing }) => slowHealing),
    );
    holds(
      ['sternum', 'shoulder', 'upper back', 'earlobe', 'jawline'],
      named(({ keloidProne }) => keloidProne),
    );
    holds(
      ['vertex of the scalp', 'axilla', 'scrotum'],
      named(({ hairBearing }) => hairBearing),
    );
    holds(
      ['axilla', 'inframammary fold', 'groin', 'natal cleft'],
      named(({ dressable }) => dressable === 'fold'),
    );
    holds(
      ['lower back', 'waist', 'hip'],
      named(({ friction }) => friction === 'waistband'),
    );
    holds(
      ['dorsal foot', 'heel'],
      named(({ friction }) => friction === 'shoe'),
    );
    holds(
      ['labial mucosa', 'tongue', 'nasal vestibule'],
      named(({ mucosa }) => mucosa),
    );
  });

  it('ask for a side where there are two of a kind, and never in the strict midline', () => {
    holds(
      ['cheek', 'helix', 'axilla', 'knee', 'ring finger', 'nasal ala'],
      named(({ side }) => side === 'needed'),
    );
    assert.deepEqual(
      named(({ side }) => side === 'never'),
      ['glabella', 'columella', 'suprasternal notch', 'xiphoid', 'umbilicus', 'natal cleft', 'coccyx'],
    );
  });
});
