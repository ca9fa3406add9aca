import { flags, silent } from '../tester.ts';
import { note } from './_stitches.ts';

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
