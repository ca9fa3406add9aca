import { flags, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/near-eye', () => {
  const at = (site: string, line: string): string => note([`site: ${site}`, line]);

  it('flags chemicals near the eye', () => {
    for (const word of ['aluminum chloride', 'ferric subsulfate', 'silver nitrate', 'trichloroacetic acid'])
      flags('hemostasis/near-eye', at('left upper eyelid', `hemostasis: [⟦${word}⟧, pressure]`), {
        severity: 'warning',
      });
    flags('hemostasis/near-eye', at('right lower eyelid', 'preparation: [⟦chlorhexidine in alcohol⟧]'), {
      severity: 'warning',
    });
  });

  it('is silent on what does no harm there, and elsewhere', () => {
    silent('hemostasis/near-eye', at('left upper eyelid', 'hemostasis: [heat cautery, pressure]'));
    silent('hemostasis/near-eye', at('left upper eyelid', 'preparation: povidone-iodine'));
    silent('hemostasis/near-eye', at('left cheek', 'hemostasis: aluminum chloride'));
    silent('hemostasis/near-eye', at('left upper back', 'preparation: chlorhexidine'));
    silent('hemostasis/near-eye', at('nowhere known', 'hemostasis: aluminum chloride'));
  });

  it('flags chlorhexidine in the ear canal, but no hemostatic', () => {
    flags('hemostasis/near-eye', at('left ear canal', 'preparation: ⟦chlorhexidine⟧'));
    silent('hemostasis/near-eye', at('left ear canal', 'hemostasis: aluminum chloride'));
    silent('hemostasis/near-eye', at('left earlobe', 'preparation: chlorhexidine'));
  });
});
