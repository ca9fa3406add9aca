import { flags, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/fire', () => {
  const burnt = (preparation: string, dry: string, hemostasis: string, site = 'left cheek'): string =>
    note([
      `site: ${site}`,
      `preparation: ${preparation}`,
      ...(dry === '' ? [] : [`dry: ${dry}`]),
      `hemostasis: ${hemostasis}`,
    ]);

  it('flags heat and sparks beside wet alcohol', () => {
    for (const preparation of ['isopropyl alcohol', 'chlorhexidine in alcohol', '[povidone-iodine, alcohol]'])
      for (const word of ['electrosurgery', 'heat cautery', 'cautery', 'bipolar'])
        flags('hemostasis/fire', burnt(preparation, 'no', `[pressure, ⟦${word}⟧]`), { severity: 'error' });
  });

  it('is silent beside what is free of alcohol', () => {
    for (const preparation of [
      'alcohol-free wipe',
      'alcohol-free antiseptic wipe',
      'chlorhexidine, alcohol-free',
      'non-alcoholic chlorhexidine',
      'nonalcohol wipe',
      'chlorhexidine (contains no alcohol)',
    ])
      silent('hemostasis/fire', burnt(preparation, 'no', '[pressure, electrosurgery]'));
  });

  it('is information in hair, and beside an agent in alcohol', () => {
    flags('hemostasis/fire', burnt('isopropyl alcohol', '', '⟦electrosurgery⟧', 'scalp'), {
      severity: 'information',
    });
    flags(
      'hemostasis/fire',
      burnt('povidone-iodine', '', '[aluminum chloride in alcohol, ⟦electrosurgery⟧]'),
      {
        severity: 'information',
      },
    );
  });

  it('is silent when dry, when nothing is said of drying, without alcohol, without a spark', () => {
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'yes', 'electrosurgery', 'scalp'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', '', 'electrosurgery'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', '??', 'electrosurgery'));
    silent('hemostasis/fire', burnt('chlorhexidine', 'no', 'electrosurgery'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'no', '[aluminum chloride, pressure]'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'no', '[aluminum chloride in alcohol, pressure]'));
  });
});
