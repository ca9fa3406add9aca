import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { note } from './_place.ts';

describe('dressing/rubbed', () => {
  const code = 'dressing/rubbed';

  it('flags what is left bare under a waistband, a collar or a shoe', () => {
    for (const site of ['left lower back', 'left lateral neck', 'right dorsal foot'])
      flags(code, note(site, '⟦none⟧'), { severity: 'information' });
  });

  it('is silent under a dressing, elsewhere, without a wound, and where open care is the routine', () => {
    silent(code, note('left lower back', '[petrolatum, gauze, paper tape]'));
    silent(code, note('left forearm', 'none'));
    silent(code, note('left lower back', 'none', 'method: injection'));
    silent(code, note('left lower back', '??'));
    silent(code, note('left lower back', 'none'), {
      tables: tablesOf(readPractice('wound-care: {open: yes}\n').value),
    });
  });
});
