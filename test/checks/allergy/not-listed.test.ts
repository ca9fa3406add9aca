import { flags, silent } from '../tester.ts';

describe('allergy/not-listed', () => {
  const code = 'allergy/not-listed';
  const of = (allergies: string, patient: string, remarks = ''): string =>
    `visit: 2026-03-02\npatient: {id: C-1, allergies: ${allergies}, ${patient}}\nprocedures:\n  - site: left cheek\n${remarks === '' ? '' : `    remarks: ${remarks}\n`}`;

  it('flags an allergy that stands under another key', () => {
    flags(code, of('none', 'conditions: [allergic to ⟦lidocaine⟧]'), { severity: 'warning' });
    flags(code, of('[penicillin]', 'skin: [⟦adhesive⟧ allergy]'));
    flags(code, of('none', 'conditions: none', 'says she is allergic to ⟦bacitracin⟧ and ⟦chlorhexidine⟧'));
  });

  it('is silent where it is listed, denied, or no allergy to what is used here', () => {
    silent(code, of('[lidocaine]', 'conditions: [allergic to lidocaine]'));
    silent(code, of('[amides]', 'conditions: [allergy to amides]'));
    for (const conditions of [
      'allergic rhinitis',
      'no allergy to latex',
      'seasonal allergies',
      'allergy to penicillin',
      'bacitracin',
    ])
      silent(code, of('none', `conditions: [${conditions}]`));
  });

  it('reads what a sentence says that somebody reacted to', () => {
    for (const remark of [
      '⟦EKG pads⟧ cause swelling',
      'hives 10 min after ⟦lidocaine⟧',
      'rash from ⟦adhesive⟧',
    ])
      flags(code, of('none', 'conditions: none', `"${remark}"`), { severity: 'warning' });
    flags(code, of('none', 'conditions: none', '"possible ⟦latex⟧ allergy"'), { severity: 'warning' });
    for (const remark of [
      'mother allergic to lidocaine',
      'no metal; mother allergic to lidocaine',
      'no hives after lidocaine',
      'swelling went down, lidocaine 1 mL given',
    ])
      silent(code, of('none', 'conditions: none', `"${remark}"`));
  });

  it('reads the remarks of the visit', () => {
    const note = `${of('none', 'conditions: none')}remarks: [quiet, allergic to ⟦lidocaine⟧]\n`;
    flags(code, note, { severity: 'warning' });
  });
});
