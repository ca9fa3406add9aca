import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

const at = (site: string, text: string): string => text.replace('left upper back', site);

describe('dose/cream-place', () => {
  const code = 'dose/cream-place';
  const pair = 'agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g';
  const bare = (text: string): string => text.replace(/[⟦⟧]/g, '');

  it('flags a cream near the eye and in the ear canal', () => {
    for (const site of ['left upper eyelid', 'left ear canal'])
      flags(code, at(site, note([pair])), { severity: 'warning' });
    flags(code, at('left upper eyelid', note(['agent: ⟦tetracaine gel⟧, amount: 1 g'])));
  });

  it('flags tetracaine gel on mucous membrane, where the other cream is in order', () => {
    flags(code, at('lower vermilion lip', note(['agent: ⟦tetracaine gel⟧, amount: 1 g'])));
    silent(code, at('lower vermilion lip', bare(note([pair]))));
  });

  it('is silent elsewhere, and of injections', () => {
    silent(code, bare(note([pair])));
    silent(code, at('left upper eyelid', note([lidocaine('0.5 mL')])));
  });

  it('flags who is too young for it', () => {
    const of = (agent: string, age: string): string =>
      note([`agent: ⟦${agent}⟧, amount: 0.5 g`], `id: C-1, age: ${age}, weight: 4 kg`);
    flags(code, of('tetracaine gel', '20 days'), { severity: 'warning' });
    flags(code, of('lidocaine cream 4%', '20 days'));
    silent(code, bare(of('tetracaine gel', '1 month')));
    flags(code, of('benzocaine', '23 months'));
    silent(code, bare(of('benzocaine', '24 months')));
  });
});
