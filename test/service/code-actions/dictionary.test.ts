import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import dictionary from 'word-list';
import { realWords } from '../../../src/note/generated/real-words.ts';
import { unpacked } from '../../../src/note/text/packed-words.ts';
import { analyse, fixAll, fixesAt } from '../../../src/service/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { times } from '../../share.ts';

const exhaustive = process.env['WHEAL_EXHAUSTIVE'] === '1';

/** Those that are near our words, and some of the rest; all where the run is told to be exhaustive. */
function words(): readonly string[] {
  const all = readFileSync(dictionary, 'utf8').split('\n');
  if (exhaustive) return all;
  const near = [...unpacked(realWords)];
  const share = (some: readonly string[], count: number): readonly string[] => {
    const apart = Math.max(1, Math.floor(some.length / count));
    return some.filter((_, at) => at % apart === 0);
  };
  return [...share(near, times(800)), ...share(all, times(200))];
}

const inList = (key: string) => (some: readonly string[]) =>
  `procedures:\n  - ${key}:\n${some.map((word) => `      - ${word}\n`).join('')}`;
const inPatient = (key: string) => (some: readonly string[]) =>
  `patient:\n  ${key}:\n${some.map((word) => `    - ${word}\n`).join('')}`;
const inEach = (write: (word: string) => string) => (some: readonly string[]) =>
  `procedures:\n${some.map((word) => `  - ${write(word)}\n`).join('')}`;

/** Every key whose words come from a table or are compared with one. */
const keys: Readonly<Record<string, (some: readonly string[]) => string>> = {
  allergies: inPatient('allergies'),
  implants: inPatient('implants'),
  conditions: inPatient('conditions'),
  medications: inPatient('medications'),
  hemostasis: inList('hemostasis'),
  preparation: inList('preparation'),
  dressing: inList('dressing'),
  closure: inList('closure'),
  site: inEach((word) => `site: ${word}`),
  'site beside another word': inEach((word) => `site: left ${word} lip`),
  method: inEach((word) => `method: ${word}`),
  depth: inEach((word) => `depth: ${word}`),
  relation: inEach((word) => `relation: ${word}`),
  'relation in two words': inEach((word) => `relation: ${word} skin`),
  consent: inEach((word) => `consent: ${word}`),
  medium: inEach((word) => `specimen: {medium: ${word}}`),
  tests: inEach((word) => `specimen: {tests: [${word}]}`),
  agent: inEach((word) => `anesthetic: {agent: ${word}}`),
  injection: inEach((word) => `anesthetic: 1 mL ${word} 1%`),
  volume: inEach((word) => `anesthetic: {volume: 1 ${word}}`),
  size: inEach((word) => `size: 4 ${word}`),
  material: inEach((word) => `closure: {material: ${word}}`),
  layer: inEach((word) => `closure: {layer: ${word}}`),
  event: (some) => `events:\n${some.map((word) => `  - kind: ${word}\n`).join('')}`,
  'event in two words': (some) => `events:\n${some.map((word) => `  - kind: wound ${word}\n`).join('')}`,
};

/** Fewer than the findings of a kind that are shown. */
const inOneNote = 80;

describe('the dictionary', function () {
  this.timeout(3_600_000);
  const some = words();

  for (const [key, write] of Object.entries(keys))
    it(`has no word that a sure fix changes under ${key}`, () => {
      for (let at = 0; at < some.length; at += inOneNote) {
        const text = write(some.slice(at, at + inOneNote));
        const analysis = analyse(text, { tables: referenceTables, today: '2026-03-02' });
        const sure = fixesAt(analysis, 0, text.length).filter((fix) => fix.sure && fix.does === 'mend');
        for (const { title, edits } of sure)
          assert.fail(`${title}: ${text.slice(edits[0]!.start - 20, edits[0]!.end + 20)}`);
        assert.deepEqual(fixAll(analysis), [], key);
      }
    });
});
