import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

const marked = (...lines: readonly string[]): string => note(...lines).replace('site:', '⟦site⟧:');

describe('closure/missing', () => {
  it('flags punch and excision', () => {
    for (const method of ['punch', 'incisional', 'excisional', 'ellipse'])
      flags('closure/missing', marked(`method: ${method}`), { severity: 'warning' });
    flags('closure/missing', marked('method: punch', 'hemostasis: suture'));
    flags('closure/missing', marked('method: punch', 'sutures-due: ??'));
  });

  it('flags the date of stitches of which nothing else is said', () => {
    flags('closure/missing', note('method: punch', 'sutures-due: ⟦2026-03-12⟧'));
  });

  it('is silent on any word of closure, and on methods that leave no gap', () => {
    for (const closure of ['none', 'second intention', '??', '{material: nylon}'])
      silent('closure/missing', note('method: punch', `closure: ${closure}`));
    for (const method of ['shave', 'deep shave', 'scissor', 'curettage', 'whatever'])
      silent('closure/missing', note(`method: ${method}`));
  });
});
