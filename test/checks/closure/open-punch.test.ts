import { flags, silent } from '../tester.ts';
import { note } from './_stitches.ts';

/** 4 mm and 8 mm: Christenson et al., Arch Dermatol 2005;141:1093-1099. 3 mm on the face: common practice, no source. */
describe('closure/open-punch', () => {
  const code = 'closure/open-punch';
  const punch = (site: string, size: string, closure: string, more = 'hemostasis: pressure'): string =>
    note(site, `method: punch; size: ${size}; ${more}; closure: ${closure}`);

  it('flags more than 4 mm, and on the face more than 3 mm', () => {
    flags(code, punch('left upper back', '6 mm', '⟦second intention⟧'), { severity: 'information' });
    flags(code, punch('left upper back', '5 mm', '⟦none⟧'));
    flags(code, punch('nasal tip', '4 mm', '⟦none⟧'));
  });

  it('is silent up to there, where something closes it, and of other methods', () => {
    silent(code, punch('left upper back', '4 mm', 'second intention'));
    silent(code, punch('left cheek', '3 mm', 'none'));
    silent(code, punch('left upper back', '6 mm', '{material: nylon, size: 4-0, count: 1}'));
    silent(code, punch('left upper back', '6 mm', 'adhesive strips'));
    silent(code, punch('left upper back', '6 mm', 'none', 'hemostasis: suture'));
    silent(code, punch('left upper back', '6 mm', '??'));
    silent(code, note('left upper back', 'method: shave; size: 9 mm; closure: none'));
  });
});
