import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';
import { person } from './_caution-findings.ts';

describe('dose/pregnancy', () => {
  const code = 'dose/pregnancy';

  it('flags another anesthetic than lidocaine alone', () => {
    const pregnant = person('conditions: [28 weeks pregnant]');
    flags(code, note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'], pregnant), {
      severity: 'information',
    });
    flags(code, note(['agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g'], pregnant));
    const remarks = (text: string): string =>
      `${note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'])}    remarks: ${text}\n`;
    for (const said of ['expecting', 'Expecting', 'expecting a child'])
      flags(
        code,
        note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'], person(`conditions: [${said}]`)),
      );
    silent(code, remarks('expecting results by Friday').replace(/[⟦⟧]/g, ''));
    for (const said of [
      '20 weeks pregnant',
      'G2P1 at 28 weeks gestation',
      'G2P1 at 31 weeks',
      'expecting a baby in May',
    ])
      flags(code, remarks(said));
    silent(code, remarks('not pregnant').replace(/[⟦⟧]/g, ''));
    silent(code, remarks('G2P2').replace(/[⟦⟧]/g, ''));
    silent(code, note([lidocaine('2 mL'), 'agent: lidocaine cream 4%, amount: 1 g'], pregnant));
    silent(
      code,
      note(['agent: mepivacaine, concentration: 1%, volume: 1 mL'], person('conditions: [not pregnant]')),
    );
  });
});
