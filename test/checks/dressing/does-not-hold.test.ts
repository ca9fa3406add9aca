import { flags, silent } from '../tester.ts';
import { note } from './_place.ts';

describe('dressing/does-not-hold', () => {
  const code = 'dressing/does-not-hold';

  it('flags tape on hair, in a fold and on a wet place', () => {
    for (const site of ['vertex of the scalp', 'left axilla', 'lower vermilion lip', 'left eyebrow'])
      flags(code, note(site, '[petrolatum, ⟦paper tape⟧]'), { severity: 'information' });
  });

  it('is silent without tape, under a wrap, and where tape holds', () => {
    silent(code, note('vertex of the scalp', '[petrolatum, gauze]'));
    silent(code, note('vertex of the scalp', '[gauze, paper tape, elastic wrap]'));
    silent(code, note('left upper back', '[petrolatum, gauze, paper tape]'));
    silent(code, note('vertex of the scalp', 'none'));
    silent(code, note('somewhere', 'paper tape'));
  });
});
