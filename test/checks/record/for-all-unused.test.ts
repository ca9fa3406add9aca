import { flags, silent } from '../tester.ts';

const note = (all: string, ...procedures: readonly string[]): string =>
  `visit: 2026-03-02\n${all}\nprocedures:\n${procedures.map((one) => `  - ${one}\n`).join('')}`;

const shave = '{site: left ear, method: shave, dressing: gauze, specimen: {label: A, medium: formalin}}';
const frozen = '{site: left ear, method: cryotherapy}';

describe('record/for-all-unused', () => {
  it('flags what holds for nothing, since nothing took tissue', () => {
    flags('record/for-all-unused', note('⟦for-all⟧: {dressing: petrolatum}', frozen), {
      severity: 'warning',
    });
  });

  it('flags a key that each procedure, or each specimen, has itself', () => {
    flags(
      'record/for-all-unused',
      note(
        'for-all: {preparation: chlorhexidine, ⟦dressing⟧: petrolatum, specimen: {⟦medium⟧: saline}}',
        shave,
        frozen,
      ),
      { severity: 'information' },
    );
  });

  it('is silent where one procedure takes it over, or may still', () => {
    const all = 'for-all: {dressing: petrolatum, specimen: {medium: formalin}}';
    silent(
      'record/for-all-unused',
      note(all, shave, '{site: right ear, method: shave, specimen: {label: B}}'),
    );
    silent('record/for-all-unused', note('for-all: {specimen: {tests: H&E}}', '{method: punch}'));
    silent('record/for-all-unused', `visit: 2026-03-02\n${all}\n`);
  });
});
