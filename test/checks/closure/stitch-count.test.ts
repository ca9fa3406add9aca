import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/stitch-count', () => {
  it('flags more and fewer out than in', () => {
    flags('closure/stitch-count', note('closure: {material: nylon, count: 2}', 'sutures-out: {count: ⟦3⟧}'), {
      severity: 'warning',
    });
    flags('closure/stitch-count', note('closure: {material: nylon, count: 4}', 'sutures-out: {count: ⟦3⟧}'));
  });

  it('counts what has to come out: neither deep nor absorbed stitches', () => {
    silent(
      'closure/stitch-count',
      note(
        'closure: [{material: polyglactin, layer: deep, count: 3}, {material: nylon, count: 5}]',
        'sutures-out: {count: 5}',
      ),
    );
    silent(
      'closure/stitch-count',
      note('closure: [{material: nylon, count: 2}, {material: silk, count: 3}]', 'sutures-out: {count: 5}'),
    );
  });

  it('is silent where one of the numbers is not known', () => {
    silent('closure/stitch-count', note('closure: {material: nylon}', 'sutures-out: {count: 3}'));
    silent('closure/stitch-count', note('closure: {material: nylon, count: ??}', 'sutures-out: {count: 3}'));
    silent('closure/stitch-count', note('closure: {material: nylon, count: 3}', 'sutures-out: 2026-03-16'));
  });
});
