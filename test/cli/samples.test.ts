import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { wheal } from './run.ts';

const root = join(import.meta.dirname, '..', '..');
const folderName = 'samples';

interface File {
  readonly path: string;
  readonly findings: readonly {
    readonly code: string;
    readonly severity: string;
    readonly range: { readonly start: { readonly line: number } };
  }[];
}

/** What each wrong sample is there to show: every code above information, in the order of the text. */
const shown: Readonly<Record<string, readonly string[]>> = {
  'amide-allergy': ['allergy/agent'],
  'comma-trap': ['yaml/comma-splits'],
  'icd-electrosurgery': ['device/electrosurgery'],
  'immunofluorescence-in-formalin': ['specimen/wrong-medium'],
  'misspelt-keys': ['shape/unknown-key', 'shape/unknown-key'],
  'over-the-limit': ['dose/over-limit'],
  'punch-without-closure': ['closure/missing'],
  'result-not-told': ['follow-up/not-told'],
  'sutures-out-early': ['closure/removal-early'],
  'unit-slips': ['dose/weight-implausible'],
};

/** What else the unit slips show: worth a look, and no more. */
const alsoShown: Readonly<Record<string, readonly string[]>> = {
  'unit-slips': ['quantity/leading-zero', 'quantity/misread-unit'],
};

const nameOf = ({ path }: File): string => path.slice(folderName.length + 1, -'.wheal.yaml'.length);

const codesOf = ({ findings }: File, loud: boolean): readonly string[] =>
  findings
    .filter(({ severity }) => loud === (severity === 'error' || severity === 'warning'))
    .map(({ code }) => code);

describe('samples', () => {
  for (const day of ['2026-04-30', '2027-01-01'])
    describe(`as of ${day}`, () => {
      let files: readonly File[] = [];
      before(async () => {
        const { out } = await wheal(['check', folderName, '--format', 'json', '--as-of', day], { cwd: root });
        files = (JSON.parse(out) as { files: readonly File[] }).files;
      });

      it('shows exactly what each wrong note is there to show, and nothing above information in the right ones', () => {
        const found = Object.fromEntries(files.map((file) => [nameOf(file), codesOf(file, true)]));
        const expected = Object.fromEntries(files.map((file) => [nameOf(file), shown[nameOf(file)] ?? []]));
        assert.deepEqual(found, expected);
        assert.deepEqual(
          Object.keys(shown).filter((name) => !(name in found)),
          [],
        );
      });

      it('shows what is worth a look', () => {
        for (const [name, codes] of Object.entries(alsoShown)) {
          const file = files.find((one) => nameOf(one) === name);
          assert.ok(file);
          const quiet = codesOf(file, false);
          for (const code of codes) assert.ok(quiet.includes(code), `${name}: ${code}`);
        }
      });
    });

  it('are visits over a month, with a right one of each method', () => {
    const all = readdirSync(join(root, folderName))
      .filter((name) => name !== 'practice.wheal.yaml')
      .map((name) => ({ name, text: readFileSync(join(root, folderName, name), 'utf8') }));
    assert.ok(all.length >= 10);
    const days = all.map(({ text }) => /^visit: (\S+)/m.exec(text)![1]!).sort();
    assert.deepEqual([days[0], days.at(-1)], ['2026-03-02', '2026-03-31']);
    const clean = all.filter(({ name }) => !(name.slice(0, -'.wheal.yaml'.length) in shown));
    const methods = clean.flatMap(({ text }) =>
      [...text.matchAll(/^ +method: (.+)$/gm)].map(([, one]) => one!),
    );
    for (const method of ['shave', 'deep shave', 'scissor', 'curettage', 'punch', 'incisional', 'excisional'])
      assert.ok(methods.includes(method), method);
  });

  for (const name of readdirSync(join(root, folderName))) {
    const text = readFileSync(join(root, folderName, name), 'utf8');
    it(`${name} says that it is invented, and what it shows`, () => {
      assert.match(text, /^# Invented: /);
      const wrong = name.slice(0, -'.wheal.yaml'.length) in shown;
      if (name !== 'practice.wheal.yaml') assert.match(text, wrong ? /^# Fault: /m : /^# Clean: /m);
    });
  }
});
