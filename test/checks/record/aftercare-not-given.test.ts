import { flags, silent } from '../tester.ts';

describe('record/aftercare-not-given', () => {
  const code = 'record/aftercare-not-given';
  const of = (rows: string): string => `visit: 2026-03-02\n${rows}\n`;

  it('asks how aftercare was given', () => {
    flags(code, of('⟦aftercare⟧: {language: en}'), { severity: 'information' });
    flags(code, of('aftercare: {given: ⟦none⟧}'), { severity: 'information' });
  });

  it('is silent once it says so, and where aftercare is missing as a whole', () => {
    for (const rows of [
      'aftercare: {given: printed}',
      'aftercare: {given: [spoken, email]}',
      'aftercare: {given: ??}',
    ])
      silent(code, of(rows));
    silent(code, of('consent: written'));
  });
});
