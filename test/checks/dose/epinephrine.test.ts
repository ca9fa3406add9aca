import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

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

describe('dose/epinephrine-too-strong', () => {
  it('flags what is stronger than 1:50,000', () => {
    flags('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '⟦"1:10,000"⟧')]), {
      severity: 'error',
    });
    flags('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '⟦1:1000⟧')]));
    silent('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '"1:50,000"')]));
    silent('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', 'none'), lidocaine('1 mL')]));
  });
});

describe('dose/buffered-old', () => {
  const mixed = (day: string, ml = '2 mL'): string =>
    `${withEpinephrine(ml)}, buffered: 9:1, mixed-on: ${day}`;

  it('tells of stock that was mixed more than two weeks before', () => {
    // J Dermatol Surg Oncol 1991;17:411-4: more than 90% of both drugs after two weeks at 0 to 4 °C.
    flags('dose/buffered-old', note([mixed('⟦2026-02-15⟧')]), { severity: 'information' });
    silent('dose/buffered-old', note([mixed('2026-02-16')]));
    silent('dose/buffered-old', note([mixed('??')]));
  });

  it('leaves it to the check of the limit once that matters', () => {
    silent('dose/buffered-old', note([mixed('2026-02-15', '26 mL')]));
  });
});

describe('dose/epinephrine-does-not-unlock', () => {
  it('explains the plain limit once it matters', () => {
    flags('dose/epinephrine-does-not-unlock', note([withEpinephrine('23 mL', '⟦"1:400,000"⟧')]), {
      severity: 'information',
    });
    silent('dose/epinephrine-does-not-unlock', note([withEpinephrine('22 mL', '"1:400,000"')]));
    silent('dose/epinephrine-does-not-unlock', note([withEpinephrine('40 mL', '"1:200,000"')]));
  });

  it('points at the day on which old stock was mixed', () => {
    const mixed = (day: string): string => `${withEpinephrine('26 mL')}, buffered: 9:1, mixed-on: ${day}`;
    flags('dose/epinephrine-does-not-unlock', note([mixed('⟦2026-02-15⟧')]));
    silent('dose/epinephrine-does-not-unlock', note([mixed('2026-02-16')]));
  });

  it('is silent where the limits are the same with and without', () => {
    const ropivacaine = 'agent: ropivacaine, concentration: 0.5%, epinephrine: "1:400,000", volume: 36 mL';
    silent('dose/epinephrine-does-not-unlock', note([ropivacaine]));
  });
});
