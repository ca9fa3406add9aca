import { flags, silent } from '../tester.ts';
import { sent } from './_specimen.ts';

describe('specimen/too-long-in-medium', () => {
  const on = (day: string, medium = 'Michel', tests = 'DIF'): string =>
    sent(`{label: A, medium: ${medium}, tests: ${tests}, sent: ${day}}`);

  it('flags the day of sending', () => {
    flags('specimen/too-long-in-medium', on('⟦2026-03-08⟧'), { severity: 'warning' });
    flags('specimen/too-long-in-medium', on('⟦2026-03-05⟧', 'saline'));
  });

  it('is silent within the time, and where it does not matter', () => {
    silent('specimen/too-long-in-medium', on('2026-03-07'));
    silent('specimen/too-long-in-medium', on('2026-03-04', 'saline'));
    silent('specimen/too-long-in-medium', on('2026-03-20', 'formalin', 'H&E'));
    silent('specimen/too-long-in-medium', on('??'));
  });
});
