import assert from 'node:assert/strict';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { familyOf } from '../../src/checks/danger.ts';
import { sourceFiles } from '../../src/checks/generated/source-files.ts';
import { catalogue, type Check } from '../../src/checks/index.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { isTooLoud } from './marks.ts';

const families = [
  'yaml',
  'shape',
  'quantity',
  'record',
  'site',
  'method',
  'dose',
  'allergy',
  'device',
  'hemostasis',
  'closure',
  'specimen',
  'dressing',
  'follow-up',
  'practice',
];

/** British spellings that slip in; what people read is in American spelling. */
const british =
  /\b(\w*an)aesth|\bh(a)emo|\bcolour|\bcentre\b|\blabell(ed|ing)|\bgrey\b|\b\w+ise[ds]?\b(?<!otherwise|precise|raise[ds]?|exercise[ds]?|advise[ds]?|rise[s]?|likewise|noise|premise[s]?|promise[ds]?|revise[ds]?|surprise[ds]?|arise[s]?|wise|bruise[ds]?|else)|\badrenaline\b|\blignocaine\b|\btumour|\boedema|\bmetre/i;

const root = join(import.meta.dirname, '..', '..');
const folders = readdirSync(join(root, 'src/checks'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !['generated', 'running'].includes(entry.name))
  .map(({ name }) => name);

const sendsAway = /\b(?:take|leave) (?:\S+ ){1,4}(?:out|away)\b|\b(?:remove|delete|drop|erase)\b/i;

const textsOf = ({ title, why, messages }: Check): readonly string[] => [
  title,
  why,
  ...Object.values(messages),
];

/** A template with its placeholders taken out. */
const filled = (template: string): string => template.replace(/\{\w+\}/g, '');

describe('the catalogue of checks', () => {
  it('has each code once', () => {
    const codes = catalogue.map(({ code }) => code);
    assert.deepEqual(
      codes.filter((code, at) => codes.indexOf(code) !== at),
      [],
    );
  });

  it('has no folder of checks that is not a family', () => {
    assert.deepEqual(
      folders.filter((folder) => !families.includes(folder)),
      [],
    );
  });

  it('has no page without a check', () => {
    const pages = folders.flatMap((folder) =>
      readdirSync(join(root, 'src/checks', folder))
        .filter((name) => name.endsWith('.md'))
        .map((name) => `${folder}/${name.replace(/\.md$/, '')}`),
    );
    const codes = new Set(catalogue.map(({ code }) => code));
    assert.deepEqual(
      pages.filter((code) => !codes.has(code)),
      [],
    );
  });

  for (const [path, checks] of sourceFiles) {
    const inFile = path.replace(/^src\/checks\/|\.ts$/g, '');
    const own = checks.length === 1 ? checks[0] : undefined;
    it(`${path} has its tests at the same path, and the name of its check where it has only one`, () => {
      assert.ok(existsSync(join(root, 'test/checks', `${inFile}.test.ts`)), `test/checks/${inFile}.test.ts`);
      if (own !== undefined) assert.equal(inFile, own.code);
    });
  }

  for (const check of catalogue) {
    describe(check.code, () => {
      it('is named family/what, stands in the folder of its family and keeps to plain letters', () => {
        assert.match(check.code, /^[a-z-]+\/[a-z0-9]+(-[a-z0-9]+)*$/);
        assert.ok(families.includes(familyOf(check.code)));
      });

      it('has a title, a reason and a source that is known', () => {
        assert.ok(check.title.length > 0 && check.title.length <= 90, 'title');
        assert.ok(check.why.length > 0 && /[.]$/.test(check.why), 'why');
        assert.ok(check.sources.length > 0, 'no source');
        for (const { source } of check.sources) assert.notEqual(citation(source), '');
      });

      it('is no louder than the surest of its sources allows', () => {
        assert.ok(!isTooLoud(check.severity, check), check.severity);
      });

      it('sends nothing away that may be a dose, an allergy or an implant', () => {
        if (!/^(?:allergy|device|dose|quantity|shape|record)\//.test(check.code)) return;
        // An item without any words holds nothing.
        const said = Object.values(check.messages).filter((text) => !text.startsWith('This item of'));
        for (const text of said) assert.doesNotMatch(text, sendsAway);
      });

      it('has short messages with whole placeholders', () => {
        assert.ok(Object.keys(check.messages).length > 0, 'no message');
        for (const [form, template] of Object.entries(check.messages)) {
          assert.notEqual(template.trim(), '', form);
          assert.ok(template.length <= 300, `${form} is ${template.length} characters long`);
          assert.doesNotMatch(filled(template), /\{\w*$|\$\{|undefined/, form);
          const open = filled(template).split('{').length;
          assert.equal(open, filled(template).split('}').length, `${form} has a loose brace`);
        }
      });

      it('names only forms that it has a message for', () => {
        const { alternatives, milder, nextStep, messages } = check;
        const named = [alternatives?.forms ?? [], Object.keys(milder ?? {}), Object.keys(nextStep ?? {})];
        for (const form of named.flat()) assert.ok(Object.hasOwn(messages, form), form);
      });

      it('is written in American spelling', () => {
        for (const text of textsOf(check)) assert.doesNotMatch(text, british);
      });
    });
  }
});
