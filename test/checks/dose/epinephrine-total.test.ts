import { flags, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';

const heavy = 'id: C-1, age: 40 years, weight: 90 kg';

describe('dose/epinephrine-total', () => {
  it('is information past 200 µg', () => {
    silent('dose/epinephrine-total', note([withEpinephrine('20 mL')], heavy));
    flags('dose/epinephrine-total', note([withEpinephrine('20 mL'), withEpinephrine('⟦0.1 mL⟧')], heavy), {
      severity: 'information',
    });
  });

  it('is a warning past 40 µg with cardiac disease, now or in the past', () => {
    for (const condition of ['coronary artery disease', 'history of myocardial infarction', 'heart failure'])
      flags(
        'dose/epinephrine-total',
        note([withEpinephrine('⟦4.1 mL⟧')], `${heavy}, conditions: [${condition}]`),
        {
          severity: 'warning',
        },
      );
    silent(
      'dose/epinephrine-total',
      note([withEpinephrine('4 mL')], `${heavy}, conditions: [heart failure]`),
    );
  });

  it('does not take a denial or heartburn for cardiac disease', () => {
    for (const condition of ['none', 'no heart disease', 'heartburn', 'denies angina'])
      silent(
        'dose/epinephrine-total',
        note([withEpinephrine('5 mL')], `${heavy}, conditions: [${condition}]`),
      );
  });

  it('counts what was drawn of a buffered mixture', () => {
    const buffered = (volume: string): string => `${withEpinephrine(volume)}, buffered: 9:1`;
    silent('dose/epinephrine-total', note([buffered('22 mL')], heavy));
    flags('dose/epinephrine-total', note([buffered('⟦22.3 mL⟧')], heavy));
  });
});
