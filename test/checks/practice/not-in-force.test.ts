import assert from 'node:assert/strict';
import { check, messageOf } from '../../../src/checks/index.ts';
import { maxDose } from '../../../src/dose/max.ts';
import { readNote, readPractice } from '../../../src/note/read.ts';
import { tablesFrom, unreadTables, type Tables } from '../../../src/practice/tables.ts';
import { assertWords } from '../tester.ts';

const head =
  'wheal: 1\nvisit: 2026-03-02\npatient: {id: C-1, weight: 62 kg, born: 1970-01-01}\nprocedures:\n';
const plain = `${head}  - {site: left upper back, method: shave}\n`;
const injected = `${plain.trimEnd().slice(0, -1)}, anesthetic: [{agent: lidocaine, concentration: 1%, volume: 1 mL}]}\n`;

const judged = (text: string, tables: Tables): ReturnType<typeof check> =>
  check(readNote(text), { tables, today: '2026-03-02' });

const formsIn = (text: string, tables: Tables): readonly string[] =>
  judged(text, tables).findings.flatMap((finding) => {
    if (finding.code !== 'practice/not-in-force') return [];
    assert.equal(finding.severity, 'error');
    assertWords(finding);
    return [finding.form];
  });

describe('practice/not-in-force', () => {
  it('is in every note whose practice file can’t be read, and no dose is judged', () => {
    for (const tables of [
      unreadTables,
      tablesFrom(readPractice('- a\n- b\n')),
      tablesFrom(readPractice('wheal: 7')),
    ]) {
      assert.deepEqual(formsIn(plain, tables), ['file']);
      assert.deepEqual(formsIn(injected, tables), ['file']);
      const { dose } = judged(injected, tables);
      assert.equal(dose?.judged, false);
      assert.match(dose.why ?? '', /practice file can’t be read/);
    }
  });

  for (const rows of [
    'limits: 3 mg/kg',
    'limits: {agent: lidocaine, max-mg-per-kg: lots}',
    'limits: {agent: lidocaine, max-mg-per-kg: ??}',
    'limits: {agent: lidocaine, max-mg: 100, max-mg-per-kg: -3}',
    'limits: {agent: lidocane-like, max-mg: 100}',
    'limits: {agent: lidocaine}',
    'limits: {max-mg: 100}',
    'limits: {agent: lidocaine, max-mg-per-kilo: 3, max-mg: 400}',
    'boundaries: [{agent: lidocaine, max-mg: 100}]',
    'lmts: [{agent: lidocaine, most: 100 mg}]',
    'limits: [{agent: lidocaine, max-mg: 100}]\nlimits: [{agent: lidocaine, max-mg: 90}]',
    'limits: [{agent: lidocaine, max-mg: 100',
    'authority: the boss',
    'authority: ??',
    'name: a\n  limits: [{agent: lidocaine, max-mg: 100}]',
  ])
    it(`is in a note with an anesthetic where a row that may hold a limit is lost: ${rows.replace('\n', ' / ')}`, () => {
      const tables = tablesFrom(readPractice(`wheal: 1\n${rows}\n`));
      assert.deepEqual(formsIn(injected, tables), ['rows']);
      assert.deepEqual(formsIn(plain, tables), []);
      const { dose } = judged(injected, tables);
      assert.equal(dose?.judged, false);
      assert.equal(dose.fraction, null);
      const agent = tables.agents.find('lidocaine')!;
      const query = { agent, mgPerMl: 10, epinephrineMicrogramsPerMl: 0, kg: 62, months: 600 };
      assert.ok('why' in maxDose(query, tables), 'a maximum is given');
    });

  for (const rows of [
    '',
    '# nothing yet',
    'limts: {agent: lidocaine, max-mg: 100}',
    'limits: {agent: lidocaine, max-mg: 100}',
    'overdue: {result: soon}',
    'stock: [{product: a, agent: nothing known}]',
    'name: practice of the tests\ncolor: blue',
    'severities: {record/missing-depth: loud}',
  ])
    it(`is in no note where none that could is: ${rows.replace('\n', ' / ')}`, () => {
      const tables = tablesFrom(readPractice(rows === '' ? '' : `${rows}\n`));
      assert.deepEqual(formsIn(injected, tables), []);
      assert.equal(judged(injected, tables).dose?.judged, true);
    });

  it('stays an error whatever severity is wanted, and accepted', () => {
    const tables: Tables = { ...unreadTables, severities: new Map([['practice/not-in-force', 'off']]) };
    assert.deepEqual(formsIn(plain, tables), ['file']);
    const accepted = `${plain}accepted: [{check: practice/not-in-force, reason: known, by: K.O.}]\n`;
    assert.deepEqual(formsIn(accepted, unreadTables), ['file']);
  });

  it('names the file that is to be corrected', () => {
    const [finding] = judged(plain, unreadTables).findings.filter(
      ({ code }) => code === 'practice/not-in-force',
    );
    assert.match(messageOf(finding!), /practice\.wheal\.yaml/);
  });
});

describe('an empty practice file', () => {
  it('is told from one that can’t be read in time that follows its length', () => {
    for (const text of [' '.repeat(20_000), '\n# a\n---\n', `${' '.repeat(20_000)}- a`])
      assert.equal(
        tablesFrom(readPractice(text)).gap,
        text.trim().startsWith('- a') ? unreadTables.gap : undefined,
      );
  });
});
