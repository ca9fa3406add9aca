import { flags, silent } from '../tester.ts';

describe('specimen/left-behind', () => {
  const code = 'specimen/left-behind';
  const two = (first: string, second: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    specimen:\n      - {${first}}\n      - {${second}}\n`;

  it('flags the one without a day, as a warning once the day is over', () => {
    const text = two('label: A, sent: 2026-03-02', '⟦label⟧: B');
    flags(code, text, { today: '2026-03-03', severity: 'warning' });
    flags(code, text, { today: '2026-03-02', severity: 'information' });
  });

  it('is silent where none has a day, where all have, and where the result came', () => {
    const today = '2026-03-20';
    silent(code, two('label: A', 'label: B'), { today });
    silent(code, two('label: A, sent: 2026-03-02', 'label: B, sent: 2026-03-04'), { today });
    silent(code, two('label: A, sent: 2026-03-02', 'label: B, sent: ??'), { today });
    silent(code, two('label: A, sent: 2026-03-02', 'label: B, result: {received: 2026-03-09}'), { today });
    silent(code, two('label: A, sent: 2026-03-02', 'not-sent: benign skin tag'), { today });
  });
});
