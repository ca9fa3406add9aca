import { flags, silent } from '../tester.ts';
import { note } from './_electrosurgery.ts';

describe('device/unknown-implant', () => {
  it('flags an implant that no table knows where current is used', () => {
    flags('device/unknown-implant', note('[⟦flux capacitor⟧, ICD]', 'electrosurgery'), {
      severity: 'warning',
    });
  });

  it('flags one whose purpose alone is known', () => {
    flags('device/unknown-implant', note('[⟦deep brain thing for tremor⟧]', 'electrosurgery'), {
      severity: 'warning',
    });
    silent('device/unknown-implant', note('[essential tremor]', 'electrosurgery'));
  });

  it('is silent without current, and on what is known or denied', () => {
    silent('device/unknown-implant', note('[flux capacitor]', 'heat cautery'));
    for (const implants of [
      '[ICD]',
      'none',
      '[no electronic devices]',
      '[flux capacitor removed]',
      '??',
      'none (no pacemaker, no ICD)',
      '"None: no device of any kind"',
      '[mechanical aortic valve]',
      '[bioprosthetic mitral valve, porcine valve]',
      '[total knee arthroplasty]',
      '[hearing aids, navel piercing]',
    ])
      silent('device/unknown-implant', note(implants, 'electrosurgery'));
  });
});
