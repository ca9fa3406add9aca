import { flags, silent } from '../tester.ts';
import { note } from './_afterwards.ts';

describe('follow-up/sutures-overdue', () => {
  const code = 'follow-up/sutures-overdue';
  const closed = '    ⟦closure⟧: {material: nylon, size: 4-0, technique: simple interrupted, count: 2}\n';
  const plain = closed.replace(/[⟦⟧]/g, '');
  it('speaks when the window of the back, 10 to 14 days, is over', () => {
    silent(code, note(plain), { today: '2026-03-16' });
    flags(code, note(closed), { today: '2026-03-17', severity: 'warning' });
  });
  it('keeps to a later day that the note plans', () => {
    silent(code, note(`${plain}    sutures-due: 2026-03-20\n`), { today: '2026-03-20' });
    flags(code, note(`${plain}    sutures-due: ⟦2026-03-20⟧\n`), { today: '2026-03-21' });
  });
  it('is silent once they are out, by the procedure or by an event', () => {
    silent(code, note(`${plain}    sutures-out: 2026-03-14\n`), { today: '2026-06-21' });
    silent(code, note(`${plain}    sutures-out: {by: N.B.}\n`), { today: '2026-06-21' });
    silent(code, note(`${plain}events:\n  - {on: 2026-03-14, kind: suture removal}\n`), {
      today: '2026-06-21',
    });
  });
  it('asks nothing of absorbable stitches and of wounds without any', () => {
    for (const closure of ['{material: fast-absorbing gut, count: 2}', 'none', 'second intention'])
      silent(code, note(`    closure: ${closure}\n`), { today: '2026-06-21' });
  });
});
