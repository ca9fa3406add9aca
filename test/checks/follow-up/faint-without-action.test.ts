import { flags, silent } from '../tester.ts';

describe('follow-up/faint-without-action', () => {
  const code = 'follow-up/faint-without-action';
  const event = (words: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1}\nevents: [{on: 2026-03-02, ${words}}]\n`;

  it('flags a faint of which nobody wrote what was done', () => {
    flags(code, event('kind: ⟦faint⟧'), { severity: 'information' });
    flags(code, event('kind: ⟦syncope⟧, outcome: went home well'));
  });

  it('is silent where it is written or open, and for other events', () => {
    silent(code, event('kind: faint, action: laid flat'));
    silent(code, event('kind: faint, action: ??'));
    silent(code, event('kind: wound check'));
  });
});
