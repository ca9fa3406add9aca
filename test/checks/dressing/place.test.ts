import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';

const note = (site: string, dressing: string, rows = 'method: shave'): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    ${rows}\n    dressing: ${dressing}\n`;

describe('dressing/does-not-hold', () => {
  const code = 'dressing/does-not-hold';

  it('flags tape on hair, in a fold and on a wet place', () => {
    for (const site of ['vertex of the scalp', 'left axilla', 'lower vermilion lip', 'left eyebrow'])
      flags(code, note(site, '[petrolatum, ⟦paper tape⟧]'), { severity: 'information' });
  });

  it('is silent without tape, under a wrap, and where tape holds', () => {
    silent(code, note('vertex of the scalp', '[petrolatum, gauze]'));
    silent(code, note('vertex of the scalp', '[gauze, paper tape, elastic wrap]'));
    silent(code, note('left upper back', '[petrolatum, gauze, paper tape]'));
    silent(code, note('vertex of the scalp', 'none'));
    silent(code, note('somewhere', 'paper tape'));
  });
});

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

describe('dressing/ointment-on-glue', () => {
  const code = 'dressing/ointment-on-glue';

  it('flags ointment on glue, and nothing else', () => {
    const glued = 'method: excisional\n    closure: tissue glue';
    flags(code, note('chin', '[⟦petrolatum⟧, gauze]', glued), { severity: 'warning' });
    silent(code, note('chin', 'gauze', glued));
    silent(code, note('chin', 'petrolatum', 'method: excisional\n    closure: {material: nylon, size: 6-0}'));
  });
});

describe('dressing/out-of-reach', () => {
  const code = 'dressing/out-of-reach';
  const helped = (site: string, aftercare: string, rows?: string): string =>
    `${note(site, '[petrolatum, gauze]', rows)}aftercare: {given: spoken, ${aftercare}}\n`;

  it('flags a wound of the back, the buttock or the foot where nobody helps', () => {
    for (const site of ['left upper back', 'right buttock', 'left heel', 'perianal skin'])
      flags(code, helped(site, 'helper: ⟦none⟧'), { severity: 'information' });
    for (const helper of ['nobody', 'no', 'lives alone'])
      flags(code, helped('left upper back', `helper: ⟦${helper}⟧`));
  });

  it('is silent where somebody helps or nothing is said of it, in reach, and without a wound', () => {
    for (const helper of ['wife', 'visiting nurse', '??', 'daughter, none at weekends'])
      silent(code, helped('left upper back', `helper: "${helper}"`));
    silent(code, helped('left upper back', 'to: wife'));
    silent(code, helped('left forearm', 'helper: none'));
    silent(code, helped('left upper back', 'helper: none', 'method: injection'));
    silent(code, note('left upper back', '[petrolatum, gauze]'));
  });
});
