import { flags, silent } from '../tester.ts';
import { note } from './_specimen.ts';

describe('specimen/no-such-label', () => {
  const code = 'specimen/no-such-label';
  const visit = (sameAs: string, events = ''): string =>
    note(
      ['site: left cheek', 'method: shave', 'specimen: {label: A}'],
      ['site: left cheek', 'method: punch', `same-as: ${sameAs}`, 'specimen: {label: B}'],
    ) + events;

  it('flags `same-as` that names no other specimen', () => {
    flags(code, visit('⟦C⟧'), { severity: 'warning' });
    flags(code, visit('⟦specimen D⟧'));
    flags(code, visit('⟦B⟧'));
    flags(code, visit('⟦A and C⟧'));
    flags(code, visit('⟦3⟧'));
  });

  it('flags an event that concerns what the visit does not have', () => {
    flags(code, visit('A', 'events: [{on: 2026-03-03, kind: bleeding, procedure: ⟦C⟧}]\n'), {
      severity: 'warning',
      today: '2026-03-04',
    });
    flags(
      code,
      `${note(['site: left cheek', 'method: shave'])}events: [{on: 2026-03-03, kind: bleeding, procedure: ⟦B⟧}]\n`,
    );
  });

  it('flags an event that concerns a place where nothing was done', () => {
    for (const place of ['left knee', 'right cheek', 'upper back'])
      flags(code, visit('A', `events: [{on: 2026-03-02, kind: bleeding, procedure: ⟦${place}⟧}]\n`), {
        severity: 'warning',
      });
    flags(code, visit('A', 'events: [{on: 2026-03-02, kind: bleeding, for: ⟦F⟧}]\n'));
    for (const place of ['cheek', 'the left cheek wound', 'face', 'L cheek', 'dressing of the cheek'])
      silent(code, visit('A', `events: [{on: 2026-03-02, kind: bleeding, procedure: ${place}}]\n`));
  });

  it('is silent where a label or a number is named, in any spelling, or a place in words', () => {
    for (const sameAs of [
      'A',
      'a',
      'specimen A',
      'label A',
      '1',
      'procedure 1',
      'procedure #1',
      'the cheek lesion',
    ])
      silent(code, visit(sameAs));
    for (const concerns of ['A', '2', 'procedure 2', 'A and B', 'left cheek', 'both', '??'])
      silent(code, visit('A', `events: [{on: 2026-03-03, kind: bleeding, procedure: ${concerns}}]\n`));
  });

  it('is silent while a label is not known', () => {
    silent(
      code,
      note(
        ['site: left cheek', 'method: shave', 'specimen: {label: ??}'],
        ['site: left cheek', 'method: punch', 'same-as: C', 'specimen: {label: B}'],
      ),
    );
  });
});
