import { flags, silent } from '../tester.ts';
import { note } from './_place.ts';

describe('dressing/out-of-reach', () => {
  const code = 'dressing/out-of-reach';
  const helped = (site: string, aftercare: string, rows?: string): string =>
    `${note(site, '[petrolatum, gauze]', rows)}aftercare: {given: spoken, ${aftercare}}\n`;

  it('flags a wound of the back, the buttock or the foot where nobody helps', () => {
    for (const site of ['left upper back', 'right buttock', 'left heel', 'perianal skin'])
      flags(code, helped(site, 'helper: ⟦none⟧'), { severity: 'information' });
    for (const helper of ['nobody', 'no', 'lives alone'])
      flags(code, helped('left upper back', `helper: ⟦${helper}⟧`));
  });

  it('is silent where somebody helps or nothing is said of it, in reach, and without a wound', () => {
    for (const helper of ['wife', 'visiting nurse', '??', 'daughter, none at weekends'])
      silent(code, helped('left upper back', `helper: "${helper}"`));
    silent(code, helped('left upper back', 'to: wife'));
    silent(code, helped('left forearm', 'helper: none'));
    silent(code, helped('left upper back', 'helper: none', 'method: injection'));
    silent(code, note('left upper back', '[petrolatum, gauze]'));
  });
});
