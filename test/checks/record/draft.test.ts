import { flags, silent } from '../tester.ts';

describe('record/draft', () => {
  it('flags a draft until the line is taken out, whatever stands there', () => {
    flags('record/draft', 'wheal: 1\ndraft: ⟦yes⟧\nvisit: 2026-03-02\n', { severity: 'warning' });
    flags('record/draft', 'wheal: 1\ndraft: ⟦perhaps⟧\nvisit: 2026-03-02\n');
  });

  it('is silent where the line is gone, and where it says no', () => {
    silent('record/draft', 'wheal: 1\nvisit: 2026-03-02\n');
    silent('record/draft', 'wheal: 1\ndraft: no\nvisit: 2026-03-02\n');
  });
});
