import assert from 'node:assert/strict';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { analyse, fixAll, fixesAt } from '../../../src/service/index.ts';

const context = { tables: referenceTables, today: '2026-03-02' };

/** What becomes of the patient by each fix of one check that speaks plainly, by its title. */
function ways(code: string, text: string): Readonly<Record<string, string | undefined>> {
  const analysis = analyse(text, context);
  assert.deepEqual(fixAll(analysis), []);
  return Object.fromEntries(
    fixesAt(analysis, 0, text.length)
      .filter(
        (one) => one.code === code && /: (?:allergies|implants|conditions|medications)\b/.test(one.title),
      )
      .map(({ title, edits, sure }) => {
        assert.equal(sure, false);
        return [title.slice(20), /^patient:.*(?:\n .*)*/m.exec(applyEdits(text, edits))?.[0]];
      }),
  );
}

const note = (patient: string, procedure: string): string =>
  `visit: 2026-03-02\n${patient}\nprocedures:\n  - site: left cheek\n    method: shave\n${procedure}`;
const current = '    hemostasis: electrosurgery\n';
const lidocaine = '    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL}\n';

describe('a statement that leaves a danger open', () => {
  it('gets an entry that says it, or `??` in its place', () => {
    assert.deepEqual(
      ways('device/electrosurgery', note('patient: {id: C-1, implants: [possible pacemaker]}', current)),
      {
        'implants: pacemaker': 'patient: {id: C-1, implants: [possible pacemaker, pacemaker]}',
        'implants as ??': 'patient: {id: C-1, implants: [??]}',
      },
    );
    assert.deepEqual(
      ways('device/electrosurgery', note('patient: {id: C-1, implants: pacemaker?}', current)),
      {
        'implants: pacemaker': 'patient: {id: C-1, implants: [pacemaker?, pacemaker]}',
        'implants as ??': 'patient: {id: C-1, implants: ??}',
      },
    );
    assert.deepEqual(
      ways(
        'allergy/agent',
        note('patient:\n  id: C-1\n  allergies:\n    - possible lidocaine allergy', lidocaine),
      ),
      {
        'allergies: lidocaine':
          'patient:\n  id: C-1\n  allergies:\n    - possible lidocaine allergy\n    - lidocaine',
        'allergies as ??': 'patient:\n  id: C-1\n  allergies:\n    - ??',
      },
    );
  });

  it('gets them in the list that it belongs to, where another text says it', () => {
    const remarks = `${current}    remarks: may have an ICD\n`;
    assert.deepEqual(ways('device/electrosurgery', note('patient: {id: C-1, implants: none}', remarks)), {
      'implants: ICD': 'patient: {id: C-1, implants: ICD}',
      'implants as ??': 'patient: {id: C-1, implants: ??}',
    });
    assert.deepEqual(ways('device/electrosurgery', note('patient: {id: C-1}', remarks)), {
      'implants: ICD': 'patient: {id: C-1, implants: ICD}',
      'implants as ??': 'patient: {id: C-1, implants: ??}',
    });
    const plain = note('patient:\n  id: C-1\n  implants:\n    - hip replacement', remarks);
    assert.deepEqual(ways('device/electrosurgery', plain), {
      'implants: ICD': 'patient:\n  id: C-1\n  implants:\n    - hip replacement\n    - ICD',
      'implants as ??': 'patient:\n  id: C-1\n  implants:\n    - hip replacement\n    - ??',
    });
  });

  it('is never denied by a fix, and what is plain gets none', () => {
    for (const implants of ['[possible pacemaker]', 'pacemaker?', '[pacemaker]', '[no pacemaker]']) {
      const found = Object.keys(
        ways('device/electrosurgery', note(`patient: {id: C-1, implants: ${implants}}`, current)),
      );
      assert.ok(found.every((title) => !/\bno\b|none|denie/i.test(title)));
      assert.equal(
        found.some((title) => title.startsWith('implants')),
        /possible|\?/.test(implants),
      );
    }
  });

  it('is a condition that calls for care too', () => {
    const prilocaine = '    anesthetic: {agent: prilocaine, concentration: 1%, volume: 10 mL}\n';
    const text = note(
      'patient: {id: C-1, born: 1961-08-09, weight: 62 kg, conditions: [possible methemoglobinemia]}',
      prilocaine,
    );
    const found = ways('dose/methemoglobin', text);
    assert.equal(Object.keys(found).length, 2, JSON.stringify(found));
    assert.match(Object.values(found).join(), /conditions: \[\?\?\]/);
  });
});
