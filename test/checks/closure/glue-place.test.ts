import { flags, silent } from '../tester.ts';
import { note } from './_stitches.ts';

describe('closure/glue-place', () => {
  it('flags mucosa and eyelid as a warning, and what pulls as information', () => {
    const glued = (site: string, how: string): string => note(site, `method: excisional; closure: ${how}`);
    flags('closure/glue-place', glued('lower vermilion lip', '⟦tissue glue⟧'), { severity: 'warning' });
    flags('closure/glue-place', glued('left upper eyelid', '⟦skin glue⟧'), { severity: 'warning' });
    flags('closure/glue-place', glued('buccal mucosa', '⟦glue⟧'), { severity: 'warning' });
    for (const lip of ['lower lip mucosa', 'mucosal lower lip', 'inner upper lip'])
      flags('closure/glue-place', glued(lip, '⟦cyanoacrylate⟧'), { severity: 'warning' });
    flags(
      'closure/glue-place',
      note('left upper eyelid', 'method: punch; closure: none; dressing: ⟦skin glue⟧'),
    );
    silent('closure/glue-place', glued('left eyebrow', 'tissue glue'));
    flags('closure/glue-place', glued('right knee', '⟦cyanoacrylate⟧'), { severity: 'information' });
    silent('closure/glue-place', glued('chin', 'tissue glue'));
    silent('closure/glue-place', glued('right knee', '{material: nylon, size: 4-0}'));
  });
});
