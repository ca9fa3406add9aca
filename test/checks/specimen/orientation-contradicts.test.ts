import { flags, silent } from '../tester.ts';
import { note } from './_specimen.ts';

describe('specimen/orientation-contradicts', () => {
  const code = 'specimen/orientation-contradicts';
  const turned = (words: string): string =>
    note(['site: left cheek', 'method: excisional', `specimen: {label: A, orientation: "${words}"}`]);

  it('finds what can not be true at once', () => {
    for (const words of [
      'suture superior and suture ⟦inferior⟧',
      "suture at 12 o'clock, suture at ⟦6 o'clock⟧",
      "sutures at 3 and ⟦9 o'clock⟧",
      'ink medial, inked ⟦lateral⟧',
      'suture at medial ⟦lateral⟧ tip',
      "suture 12 o'clock superior, ink 12 o'clock ⟦inferior⟧",
      "suture 12 o'clock superior, ink 6 o'clock ⟦superior⟧".replace(
        "6 o'clock ⟦superior⟧",
        "⟦6 o'clock⟧ superior",
      ),
      "suture at 12 o'clock (⟦inferior⟧)",
      "suture 6 o'clock, ⟦cephalad⟧",
      "suture at ⟦13 o'clock⟧",
      '⟦not oriented⟧, suture superior',
    ])
      flags(code, turned(words), { severity: 'warning' });
  });

  it('is silent on what can', () => {
    for (const words of [
      "suture at 12 o'clock",
      "suture at 12 o'clock (superior)",
      'suture superior',
      "sutures at 12 and 3 o'clock",
      'short suture superior, long suture inferior',
      'short superior, long lateral',
      'single suture superior, double suture inferior',
      'suture superior, ink inferior',
      'blue ink medial, black ink lateral',
      "12 o'clock = caudal, suture there",
      "suture at 12 o'clock, which is inferior",
      'suture at superior tip of the inferior lesion',
      'ink from superior to inferior',
      'superior-medial suture',
      "superior long suture (12 o'clock), inferior short suture (6 o'clock)",
      "suture at 12 o'clock toward the shoulder",
      'not oriented',
      'none',
      '??',
    ])
      silent(code, turned(words));
  });
});
