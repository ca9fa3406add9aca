import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/absorbable-removal', () => {
  it('flags a day for stitches that are absorbed', () => {
    flags(
      'closure/absorbable-removal',
      note('closure: {material: chromic catgut}', 'sutures-due: ⟦2026-03-12⟧'),
      {
        severity: 'information',
      },
    );
  });

  it('is silent where any stitch has to come out', () => {
    silent(
      'closure/absorbable-removal',
      note('closure: [{material: polyglactin, layer: deep}, {material: nylon}]', 'sutures-due: 2026-03-12'),
    );
    silent('closure/absorbable-removal', note('closure: {how: suture}', 'sutures-due: 2026-03-12'));
    silent('closure/absorbable-removal', note('closure: {material: polyglactin}'));
  });
});
