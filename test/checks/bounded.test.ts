import assert from 'node:assert/strict';
import { findingOf } from '../../src/checks/running/run.ts';
import type { Check } from '../../src/checks/index.ts';
import { severities } from '../../src/note/tree/severity.ts';
import type { Mark } from '../../src/reference/types.ts';
import { flags } from './tester.ts';

const at = { start: 0, end: 1 };
const check: Check = {
  code: 'record/odd',
  severity: 'error',
  title: 'odd',
  why: 'odd',
  sources: [{ source: 'format', mark: 'Q' }],
  messages: { main: 'odd' },
};

describe('a finding that rests on a row', () => {
  const most: Readonly<Record<Mark, string>> = {
    Q: 'error',
    format: 'error',
    Q2: 'warning',
    M: 'information',
    common: 'information',
  };

  for (const mark of ['Q', 'format', 'Q2', 'M', 'common'] as const)
    it(`is ${most[mark]} at most where the row is marked ${mark}, and never louder than the check wants`, () => {
      const rests = { source: 'format', mark };
      assert.equal(findingOf(check, { at, rests }).severity, most[mark]);
      for (const severity of severities) {
        const { severity: bounded } = findingOf(check, { at, severity, rests });
        const ranks = [severity, most[mark]].map((one) => severities.findIndex((other) => other === one));
        assert.equal(bounded, severities[Math.max(...ranks)]);
      }
    });

  it('keeps its danger where the word itself says what it holds', () => {
    const note = (what: string, allergy: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, allergies: [${allergy}]}\nprocedures:\n  - site: left cheek\n    ${what}\n`;
    const error = { severity: 'error' } as const;
    flags('allergy/dressing', note('dressing: [⟦triple antibiotic ointment⟧]', 'neomycin'), error);
    flags('allergy/dressing', note('dressing: [⟦silver sulfadiazine⟧]', 'sulfa drugs'), error);
    flags('allergy/preparation', note('preparation: ⟦chlorhexidine⟧', 'chlorhexidine'), error);
    flags('allergy/closure', note('closure: {material: ⟦chromic gut⟧}', 'chromium'), error);
    flags('allergy/dressing', note('dressing: [⟦elastic wrap⟧]', 'latex'), { severity: 'warning' });
  });
});
