import type { Severity } from '../../../src/note/tree/finding.ts';
import { flags, silent } from '../tester.ts';

const note = (method: string, line: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: ${method}\n    ${line}\n`;

const depths = ['epidermis', 'papillary dermis', 'mid dermis', 'deep dermis', 'subcutis'];

/** Shave: rule of the format. The others: what each method reaches, Am Fam Physician 2011;84:995-1002, MSD Manual. */
const odd: Readonly<Record<string, readonly (Severity | '-')[]>> = {
  shave: ['-', '-', '-', 'information', 'warning'],
  'deep shave': ['information', 'information', '-', '-', 'information'],
  scissor: ['-', '-', '-', '-', 'information'],
  curettage: ['-', '-', '-', '-', '-'],
  punch: ['information', 'information', '-', '-', '-'],
  incisional: ['information', 'information', '-', '-', '-'],
  excisional: ['information', 'information', '-', '-', '-'],
};

describe('method/odd-depth', () => {
  for (const [method, severities] of Object.entries(odd))
    for (const [at, severity] of severities.entries())
      it(`${method} to ${depths[at] ?? ''}: ${severity}`, () => {
        const depth = depths[at] ?? '';
        if (severity === '-') silent('method/odd-depth', note(method, `depth: ${depth}`));
        else flags('method/odd-depth', note(method, `depth: ⟦${depth}⟧`), { severity });
      });

  it('is silent where depth or method are not known', () => {
    silent('method/odd-depth', note('shave', 'depth: ??'));
    silent('method/odd-depth', note('whatever', 'depth: subcutis'));
    silent('method/odd-depth', note('shave', 'size: 9 x 8 mm'));
  });
});

describe('method/punch-size', () => {
  it('flags a diameter that is not made, and two numbers', () => {
    flags('method/punch-size', note('punch', 'size: ⟦9 mm⟧'), { severity: 'information' });
    flags('method/punch-size', note('punch', 'size: ⟦40 mm⟧'));
    flags('method/punch-size', note('punch', 'size: ⟦4 x 6 mm⟧'));
  });

  it('is silent on sizes that are made, and on other methods', () => {
    for (const size of [
      '1.5 mm',
      '2 mm',
      '3 mm',
      '3.5 mm',
      '4 mm',
      '6 mm',
      '8 mm',
      '0.4 cm',
      '4 x 4 mm',
      '??',
    ])
      silent('method/punch-size', note('punch', `size: ${size}`));
    silent('method/punch-size', note('shave', 'size: 9 mm'));
  });
});
