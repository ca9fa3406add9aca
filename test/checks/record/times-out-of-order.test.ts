import { flags, silent } from '../tester.ts';
import { note } from './_time-out.ts';

describe('record/times-out-of-order', () => {
  const code = 'record/times-out-of-order';
  const at = (visit: string, timeOut: string, ...injections: string[]): string =>
    note(timeOut, ...injections).replace('2026-03-02', `2026-03-02${visit}`);

  it('flags a time-out or an injection long before the visit', () => {
    flags(code, at(' 10:05', '⟦09:12⟧', 'agent: lidocaine, time: 10:13'), { severity: 'warning' });
    flags(code, at(' 10:05', 'done', 'agent: lidocaine, time: ⟦09:13⟧'));
    flags(code, at(' 00:10', '⟦23:20⟧'));
  });

  it('is silent within half an hour, over midnight, for a cream, and where no time is known', () => {
    silent(code, at(' 10:05', '09:40', 'agent: lidocaine, time: 09:50'));
    silent(code, at(' 23:50', '23:55', 'agent: lidocaine, time: 00:05'));
    silent(code, at(' 10:05', '10:10', 'agent: lidocaine-prilocaine cream, amount: 1 g, time: 08:30'));
    silent(code, at('', '08:00', 'agent: lidocaine, time: 08:13'));
  });

  it('flags tissue that was taken before its injection or long before the visit', () => {
    const taken = (collected: string, ...injections: string[]): string =>
      `visit: 2026-03-02 10:05\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    anesthetic: [${injections.join(', ')}]\n    specimen: {label: A, collected: ${collected}}\n`;
    const numb = '{agent: lidocaine, time: 10:13}';
    flags(code, taken('⟦10:03⟧', numb), { severity: 'warning' });
    flags(code, taken('⟦09:03⟧'));
    flags(code, taken('⟦09:03⟧', numb));
    silent(code, taken('10:20', numb));
    silent(code, taken('10:20', '{agent: lidocaine}', '{agent: lidocaine, time: 10:25}'));
    silent(code, taken('10:20', numb, '{agent: lidocaine, time: 10:25}'));
    silent(code, taken('done', numb));
    silent(code, taken('??', numb));
    silent(code, taken('09:59'));
  });

  it('says one thing only of an injection before the time-out', () => {
    const both = at(' 10:05', '10:12', 'agent: lidocaine, time: 09:13');
    silent(code, both);
    flags('record/time-out-late', both.replace('10:12', '⟦10:12⟧'));
  });
});
