import { flags, silent } from '../tester.ts';

const note = (...lines: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n${lines.map((line) => `    ${line}\n`).join('')}`;

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

describe('closure/removal-before-visit', () => {
  it('flags the date', () => {
    flags('closure/removal-before-visit', note('sutures-due: ⟦2026-03-01⟧'), { severity: 'error' });
    flags('closure/removal-before-visit', note('sutures-out: ⟦2026-02-14⟧'));
    flags('closure/removal-before-visit', note('sutures-out: {on: ⟦2025-03-14⟧, count: 2}'));
  });

  it('is silent from the day of the visit on', () => {
    silent('closure/removal-before-visit', note('sutures-due: 2026-03-02', 'sutures-out: 2026-03-16'));
    silent('closure/removal-before-visit', note('sutures-due: ??'));
  });
});

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
