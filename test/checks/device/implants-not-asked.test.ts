import { flags, silent } from '../tester.ts';

describe('device/implants-not-asked', () => {
  const asked = (patient: string, hemostasis: string): string =>
    `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: left cheek\n    hemostasis: ${hemostasis}\n`;

  it('flags the word that says current', () => {
    flags('device/implants-not-asked', asked('id: C-1', '⟦electrodesiccation⟧'), { severity: 'warning' });
    flags('device/implants-not-asked', asked('id: C-1, implants: unknown', '⟦electrosurgery⟧'));
  });

  it('says it once for a visit', () => {
    flags(
      'device/implants-not-asked',
      `${asked('id: C-1', '⟦electrosurgery⟧')}  - site: left ear\n    hemostasis: electrosurgery\n`,
    );
  });

  it('is silent without current, and where implants are said or pending', () => {
    silent('device/implants-not-asked', asked('id: C-1', 'heat cautery'));
    silent('device/implants-not-asked', asked('id: C-1', '[aluminum chloride, bipolar]'));
    for (const implants of ['none', '[ICD]', '??', '[]'])
      silent('device/implants-not-asked', asked(`id: C-1, implants: ${implants}`, 'electrosurgery'));
  });
});
