import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

const several = 'sutures-out: [{on: 2026-03-12, count: 2}, {on: 2026-03-14, count: ⟦3⟧}]';

describe('closure/stitch-count', () => {
  it('adds up what came out on several days', () => {
    flags('closure/stitch-count', note('closure: {material: nylon, count: 4}', several));
    const all = several.replace(/[⟦⟧]/g, '');
    silent('closure/stitch-count', note('closure: {material: nylon, count: 5}', all));
    silent(
      'closure/stitch-count',
      note('closure: {material: nylon, count: 5}', all.replace('count: 2', 'by: N.B.')),
    );
  });

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
