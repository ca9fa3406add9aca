import { flags, silent } from '../tester.ts';
import { note } from './_afterwards.ts';

describe('follow-up/infection-details', () => {
  const code = 'follow-up/infection-details';
  const event = (rest: string): string =>
    note(`    closure: none\nevents:\n  - {on: 2026-03-05, kind: ⟦infection⟧, outcome: healed${rest}}\n`);
  it('asks for signs and for what was done, also where no day is known', () => {
    flags(code, event(''), { severity: 'information' });
    flags(code, event(', signs: pus'));
    flags(code, event(', action: culture taken'));
  });
  it('is silent where both are there', () => {
    silent(code, event(', signs: pus, action: culture taken').replace(/[⟦⟧]/g, ''));
  });
});
