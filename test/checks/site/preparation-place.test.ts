import { flags, silent } from '../tester.ts';
import { note } from '../hemostasis/_hemostasis.ts';

describe('site/preparation-place', () => {
  const code = 'site/preparation-place';
  const at = (site: string, what: string, lesion = 'papule 4 mm'): string =>
    note([`site: ${site}`, `lesion: ${lesion}`, `preparation: ${what}`]);
  const of = (age: string, what: string): string =>
    note(['site: left thigh', `preparation: ${what}`], `id: C-1, implants: none, age: ${age}`);

  it('flags chlorhexidine on genital skin, whatever it is dissolved in', () => {
    for (const site of ['scrotum', 'vulva', 'penile shaft', 'left labium majus'])
      for (const what of ['⟦chlorhexidine⟧', '⟦CHG⟧', '⟦chlorhexidine in alcohol⟧'])
        flags(code, at(site, what), { severity: 'warning' });
    for (const what of ['povidone-iodine', 'isopropyl alcohol', 'sterile saline'])
      silent(code, at('scrotum', what));
    for (const site of ['left groin', 'left upper back', 'left buttock'])
      silent(code, at(site, 'chlorhexidine'));
  });

  it('asks about chlorhexidine in the mouth, where the rinse is in order', () => {
    flags(code, at('left buccal mucosa', '⟦chlorhexidine⟧'), { severity: 'information' });
    silent(code, at('left buccal mucosa', 'chlorhexidine 0.12% rinse'));
    silent(code, at('left cheek', 'chlorhexidine'));
  });

  it('says where the lesion is an open wound, and not where that is denied', () => {
    for (const lesion of ['ulcerated nodule 8 mm', 'ulcer 1 cm', 'open wound'])
      flags(code, at('left cheek', '⟦chlorhexidine⟧', lesion), { severity: 'information' });
    for (const lesion of ['nodule 8 mm, no ulceration', 'not ulcerated papule'])
      silent(code, at('left cheek', 'chlorhexidine', lesion));
  });

  it('flags it under 2 months, to the day', () => {
    flags(code, of('7 weeks', '⟦chlorhexidine⟧'), { severity: 'warning' });
    flags(code, of('1 month', '⟦chlorhexidine in alcohol⟧'), { severity: 'warning' });
    silent(code, of('2 months', 'chlorhexidine'));
    silent(code, of('1 month', 'povidone-iodine'));
    silent(code, note(['site: left thigh', 'preparation: chlorhexidine']));
  });
});
