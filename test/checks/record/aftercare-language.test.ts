import { flags, silent } from '../tester.ts';

describe('record/aftercare-language', () => {
  const code = 'record/aftercare-language';
  const given = (language: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1}\naftercare: {given: printed, language: ${language}}\n`;

  it('flags a language without a handout', () => {
    flags(code, given('⟦fr⟧'), { severity: 'information' });
    flags(code, given('⟦Vietnamese⟧'));
  });

  it('is silent for English and Spanish in any spelling, and where it is not known', () => {
    for (const language of ['en', 'EN-US', 'English', 'es', 'Spanish', 'español', 'English and Polish', '??'])
      silent(code, given(language));
    silent(code, 'visit: 2026-03-02\npatient: {id: C-1}\naftercare: {given: printed}\n');
  });
});
