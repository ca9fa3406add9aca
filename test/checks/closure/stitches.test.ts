import { flags, silent } from '../tester.ts';

const note = (site: string, rows: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    ${rows.split('; ').join('\n    ')}\n`;

/** Published sizes: WikEM sutures chart, family practice guide, plastic surgery text; one step beside them is left alone. */
describe('closure/odd-suture-size', () => {
  const code = 'closure/odd-suture-size';
  for (const [site, sizes] of [
    ['left cheek', { '3-0': true, '4-0': false, '5-0': false, '6-0': false, '7-0': false, '8-0': true }],
    ['left upper eyelid', { '4-0': true, '5-0': false, '7-0': false, '8-0': false, '9-0': true }],
    ['left upper back', { '0': true, '2-0': false, '3-0': false, '5-0': false, '6-0': false, '7-0': true }],
    ['left elbow', { '2-0': true, '3-0': false, '5-0': false, '6-0': true }],
  ] as const)
    it(`${site}: ${JSON.stringify(sizes)}`, () => {
      for (const [size, odd] of Object.entries(sizes))
        if (odd)
          flags(code, note(site, `method: excisional; closure: {material: nylon, size: ⟦${size}⟧}`), {
            severity: 'information',
          });
        else silent(code, note(site, `method: excisional; closure: {material: nylon, size: ${size}}`));
    });

  it('does not ask about deep stitches, unknown sites and sites without a published size', () => {
    silent(
      code,
      note('left cheek', 'method: excisional; closure: {layer: deep, material: polyglactin, size: 3-0}'),
    );
    silent(code, note('somewhere', 'method: excisional; closure: {material: nylon, size: 2-0}'));
    silent(code, note('posterior neck', 'method: excisional; closure: {material: nylon, size: 2-0}'));
  });
});

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

describe('closure/glue-place', () => {
  it('flags mucosa as a warning, and what pulls as information', () => {
    const glued = (site: string, how: string): string => note(site, `method: excisional; closure: ${how}`);
    flags('closure/glue-place', glued('lower vermilion lip', '⟦tissue glue⟧'), { severity: 'warning' });
    flags('closure/glue-place', glued('right knee', '⟦cyanoacrylate⟧'), { severity: 'information' });
    silent('closure/glue-place', glued('chin', 'tissue glue'));
    silent('closure/glue-place', glued('right knee', '{material: nylon, size: 4-0}'));
  });
});
