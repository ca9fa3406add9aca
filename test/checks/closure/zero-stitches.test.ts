import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/zero-stitches', () => {
  const code = 'closure/zero-stitches';

  it('flags a suture of which none was placed', () => {
    flags(code, note('closure: {material: nylon, size: 4-0, count: ⟦0⟧}'), { severity: 'warning' });
    flags(code, note('closure: {how: suture, count: ⟦none⟧}'));
  });

  it('is silent with a number, and where nothing was sewn', () => {
    silent(code, note('closure: {material: nylon, size: 4-0, count: 2}'));
    silent(code, note('closure: {material: nylon, size: 4-0, count: ??}'));
    silent(code, note('closure: {how: tissue glue, count: 0}'));
    silent(code, note('closure: {how: none, count: 0}'));
  });
});
