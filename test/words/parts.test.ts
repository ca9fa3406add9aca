import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../checks/tester.ts';
import { sutureRemoval } from '../../src/followup/sutures.ts';
import { readNote } from '../../src/note/read.ts';
import { readSite } from '../../src/note/words/site.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';

const note = (procedure: string, visit = ''): string =>
  `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09}\n${visit}procedures:\n  - site: left cheek\n${procedure}`;

const removalOf = (procedure: string): ReturnType<typeof sutureRemoval> => {
  const { value } = readNote(note(procedure));
  const [first] = value!.procedures!;
  return sutureRemoval(value!, first!, readSite('left cheek', tables.sites), tables);
};

describe('each part of a list in one text counts', () => {
  it('for the day on which stitches come out', () => {
    const removable = removalOf('    method: punch\n    closure: 5-0 nylon x2\n');
    const inMap = removalOf('    method: punch\n    closure: {material: nylon, size: 5-0, count: 2}\n');
    assert.equal(removable.kind, inMap.kind);
    const sewn = removalOf('    method: punch\n    hemostasis: pressure and suture\n');
    assert.equal(sewn.kind, removalOf('    method: punch\n    hemostasis: [pressure, suture]\n').kind);
    assert.notEqual(sewn.kind, removalOf('    method: punch\n    hemostasis: pressure and gauze\n').kind);
  });

  it('for the results that have to come', () => {
    const specimen = (tests: string): string =>
      note(
        `    method: punch\n    specimen:\n      label: A\n      medium: saline\n      tests: ${tests}\n      sent: ⟦2026-03-02⟧\n`,
      );
    const today = '2026-04-20';
    flags('follow-up/result-overdue', specimen('bacterial and fungal cultures'), { today });
    silent(
      'follow-up/result-overdue',
      specimen('fungal culture, mycobacterial culture').replace(/[⟦⟧]/g, ''),
      {
        today: '2026-04-10',
      },
    );
  });

  it('for results, where one late report is that of all cultures, and of nothing else', () => {
    const specimen = (tests: string, received: string): string =>
      note(
        `    method: punch\n    specimen:\n      label: A\n      medium: saline\n      tests: ${tests}\n      sent: ⟦2026-03-02⟧\n      result: {received: ${received}, diagnosis: no growth}\n`,
      );
    const today = '2026-06-20';
    const code = 'follow-up/result-overdue';
    const all = 'bacterial, fungal and mycobacterial culture';
    silent(code, specimen(all, '2026-04-24').replace(/[⟦⟧]/g, ''), { today });
    // The report of the bacteria, a little late; and histology that came with no culture after it.
    assert.equal(judgeBy(code, specimen(all, '2026-03-18').replace(/[⟦⟧]/g, ''), { today }).length, 1);
    flags(code, specimen('H&E and fungal culture', '2026-04-24'), { today });
  });

  it('for consent', () => {
    const consent = (text: string): string =>
      note('    method: punch\n', `consent: ${text}\n`).replace('1961-08-09', '2016-08-09');
    assert.equal(judgeBy('record/consent-of-minor', consent('written, signed')).length, 1);
    silent('record/consent-of-minor', consent('verbal from mother, then signed'));
    silent('record/consent-declined', consent('written; declined a photo'));
  });

  it('and so does the size in the words for a punch', () => {
    const open = (method: string): string => note(`    method: ${method}\n    closure: left open\n`);
    assert.equal(judgeBy('closure/open-punch', open('8 mm punch')).length, 1);
    assert.equal(judgeBy('closure/open-punch', open('Punch biopsy, 8 mm')).length, 1);
    silent('closure/open-punch', open('3 mm punch'));
    silent('closure/open-punch', open('8 mm lesion removed by 3 mm punch'));
    silent('closure/open-punch', open('8 mm punch\n    size: 3 mm'));
  });
});
