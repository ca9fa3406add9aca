import { flags, silent } from '../tester.ts';
import { note } from './_thinner.ts';

describe('hemostasis/thinner-unheld', () => {
  const code = 'hemostasis/thinner-unheld';

  it('flags a blood thinner where nothing presses, closes or covers', () => {
    for (const medicine of ['[apixaban]', '[warfarin 5 mg]', '[aspirin 81 mg, metformin]'])
      flags(code, note(medicine, '⟦aluminum chloride⟧', 'none'), { severity: 'information' });
    flags(code, note('[apixaban]', '⟦none⟧', '[petrolatum]'));
  });

  it('is silent with pressure, with a stitch alone, and under a dressing', () => {
    silent(code, note('[apixaban]', '[aluminum chloride, pressure]', 'none'));
    silent(code, note('[apixaban]', 'suture', 'none', 'method: punch'));
    silent(
      code,
      note(
        '[apixaban]',
        'heat cautery',
        'none',
        'method: excisional\n    closure: {material: nylon, count: 3}',
      ),
    );
    silent(code, note('[apixaban]', 'aluminum chloride', '[petrolatum, gauze, paper tape]'));
    silent(code, note('[apixaban]', '??', 'none'));
  });

  it('is silent without such a medicine', () => {
    silent(code, note('[metformin]', 'aluminum chloride', 'none'));
    silent(code, note('[stopped: no apixaban]', 'aluminum chloride', 'none'));
    silent(code, note('none', 'aluminum chloride', 'none'));
  });

  it('leaves what is not recorded to its own finding', () => {
    const text = note('[apixaban]', 'aluminum chloride', 'none').replace(/ {4}dressing.*\n/, '');
    silent(code, text);
    flags('record/missing-dressing', text.replace('site', '⟦site⟧'));
  });
});
