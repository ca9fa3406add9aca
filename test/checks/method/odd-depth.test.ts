import type { Severity } from '../../../src/note/tree/finding.ts';
import { flags, silent } from '../tester.ts';
import { note } from './_method.ts';

const depths = ['epidermis', 'papillary dermis', 'mid dermis', 'deep dermis', 'subcutis'];

/** Shave, and how grave each is: rule of the format. The others: what each method reaches, Am Fam Physician 2011;84:995-1002, MSD Manual. */
const odd: Readonly<Record<string, readonly (Severity | '-')[]>> = {
  shave: ['-', '-', '-', 'information', 'warning'],
  'deep shave': ['information', 'information', '-', '-', 'information'],
  scissor: ['-', '-', '-', '-', 'information'],
  curettage: ['-', '-', '-', '-', '-'],
  punch: ['warning', 'information', '-', '-', '-'],
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
