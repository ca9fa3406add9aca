import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

const limit = 'agent: lidocaine, epinephrine: yes, max-mg-per-kg: 8, max-mg: 550';
const approved = 'approved: {by: A.B., on: 2026-01-05, reason: Trial under supervision.}';
const tables = tablesOf(readPractice(`limits: [{${limit}, ${approved}}]`).value);

describe('dose/loosened-limit', () => {
  it('names the label’s limit that a dose passes under the practice’s own', () => {
    // US prescribing information: 7 mg/kg with epinephrine, at 62 kg 434 mg; 8 mg/kg make 496 mg.
    const [finding] = flags('dose/loosened-limit', note([withEpinephrine('⟦44 mL⟧')]), {
      tables,
      severity: 'information',
    });
    assert.equal(
      messageOf(finding!),
      'The 440 mg of lidocaine with epinephrine are more than the 434 mg of US prescribing information. They are judged by the practice’s own 496 mg (A.B., 2026-01-05: Trial under supervision).',
    );
  });

  it('says so where the dose is within both, too', () => {
    const [finding] = flags('dose/loosened-limit', note([withEpinephrine('⟦5 mL⟧')]), { tables });
    assert.match(messageOf(finding!), /within the 434 mg .*loosened that limit to 496 mg/);
  });

  it('is silent where the limit is the label’s, or stricter, or not approved', () => {
    silent('dose/loosened-limit', note([withEpinephrine('5 mL')]));
    silent('dose/loosened-limit', note([lidocaine('5 mL')]), { tables });
    for (const other of [limit, limit.replace('8', '6').replace('550', '400')])
      silent('dose/loosened-limit', note([withEpinephrine('5 mL')]), {
        tables: tablesOf(readPractice(`limits: [{${other}}]`).value),
      });
  });
});
