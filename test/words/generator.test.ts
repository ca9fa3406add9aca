import assert from 'node:assert/strict';
import { parse } from 'yaml';
import { allergens } from '../../src/reference/allergens.ts';
import { agents } from '../../src/reference/agents.ts';
import { cautions } from '../../src/reference/cautions.ts';
import { closures } from '../../src/reference/closures.ts';
import { dressings } from '../../src/reference/dressings.ts';
import { hemostasis } from '../../src/reference/hemostasis.ts';
import { implants } from '../../src/reference/implants.ts';
import { materials } from '../../src/reference/materials.ts';
import { preparations } from '../../src/reference/preparations.ts';
import { judge } from '../checks/tester.ts';
import { allClauses, allPairs } from './generator/clauses.ts';
import { allCues, groupOf } from './generator/cues.ts';
import { generate, type Case } from './generator/generate.ts';
import { homes, noteOf, aways, quoted } from './generator/notes.ts';
import { Random } from './generator/random.ts';
import { isWrong } from './generator/report.ts';
import { things } from './generator/things.ts';

const none: readonly string[] = [];
const missing = (wanted: Iterable<string>, seen: ReadonlySet<string>): readonly string[] =>
  [...wanted].filter((one) => !seen.has(one));

describe('the generator of clinic texts', () => {
  let cases: readonly Case[];

  before(() => {
    cases = [...generate(7, 30_000)];
  });

  it('gives the same cases for the same seed, and others for another', () => {
    assert.deepEqual([...generate(3, 300)], [...generate(3, 300)]);
    const [one, other] = [3, 4].map((seed) => [...generate(seed, 300)].map(({ text }) => text));
    assert.notDeepEqual(one, other);
  });

  it('gives as many texts of each answer', () => {
    for (const answer of ['said', 'denied', 'unclear'] as const)
      assert.equal(cases.filter((one) => one.answer === answer).length, 10_000);
  });

  it('hardly ever gives a text twice', () => {
    const texts = new Set(cases.slice(0, 6_000).map(({ text }) => text));
    assert.ok(texts.size >= 0.95 * 6_000, `only ${texts.size} of 6000 texts differ`);
  });

  it('names every row of the tables of dangers, and most of their words', () => {
    const rows = new Set(cases.map(({ kind, row }) => `${kind} ${row}`));
    assert.deepEqual(missing(new Set(things.map(({ kind, row }) => `${kind} ${row}`)), rows), none);
    const words = new Set(cases.map(({ word }) => word));
    const known = new Set(things.flatMap((one) => one.words));
    assert.ok(words.size >= 0.95 * known.size, `${words.size} of ${known.size} words`);
  });

  it('uses every cue, clause and map of each answer', () => {
    const used = new Set(cases.map(({ answer, cue }) => `${answer} ${cue}`));
    const wanted = [
      ...[...allCues, ...allClauses].map(({ answer, text }) => `${answer} ${text}`),
      ...allPairs.map(({ answer, value }) => `${answer} map of ${value}`),
    ];
    assert.deepEqual(missing(wanted, used), none);
  });

  it('writes under every key', () => {
    assert.deepEqual(
      missing([...aways, ...Object.values(homes)], new Set(cases.map(({ key }) => key))),
      none,
    );
  });

  it('leaves no row of a table of dangers out', () => {
    const has = (row: string): boolean => things.some((one) => one.row === row);
    const products: readonly { readonly contains?: readonly string[] }[] = [
      ...[...closures, ...dressings, ...hemostasis],
      ...[...materials, ...preparations],
    ];
    const held = products.flatMap(({ contains = [] }) => contains);
    const used = allergens.filter(({ name, covers = [] }) =>
      [name, ...covers].some((one) => held.includes(one)),
    );
    const devices = implants.filter(({ concern }) => !['none', 'unknown', 'passive'].includes(concern));
    const judged = cautions.filter((row) => row.epinephrine ?? row.endArtery ?? row.methemoglobin);
    const rows = [...used, ...agents, ...devices, ...judged].map(({ name }) => name);
    assert.deepEqual(
      rows.filter((row) => !has(row)),
      none,
    );
  });

  it('writes YAML in which the text is what it was', () => {
    for (const { note, key, text, shape } of cases.slice(0, 600)) {
      const written = JSON.stringify(parse(note));
      const parts = shape === 'map' ? [text.slice(0, text.indexOf(': '))] : text.split(' | ');
      for (const part of parts)
        assert.ok(written.includes(JSON.stringify(part).slice(1, -1)), `${key}: ${part} in\n${note}`);
    }
  });

  it('writes notes in which a plain entry of every row is reported, and none without it', () => {
    for (const thing of things) {
      const home = homes[groupOf(thing.kind)];
      const random = new Random(1);
      const silent = thing.words.slice(0, 4).filter((word) => {
        const note = noteOf(home, `[${quoted(word, random)}]`, thing, random);
        return isWrong(
          { ...thing, answer: 'said', least: thing.mild ? 'information' : 'warning' },
          judge(note).findings,
        );
      });
      assert.deepEqual(silent, none, `${thing.kind} ${thing.row}`);
      const without = judge(noteOf(home, 'none', thing, random)).findings;
      assert.ok(!isWrong({ ...thing, answer: 'denied', least: 'warning' }, without), thing.row);
    }
  });
});
