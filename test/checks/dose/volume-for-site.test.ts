import { flags, silent } from '../tester.ts';

const code = 'dose/volume-for-site';

const at = (site: string, ...volumes: readonly string[]): string =>
  `  - site: ${site}\n    anesthetic:\n${volumes
    .map((volume) => `      - {agent: lidocaine, concentration: 1%, volume: ${volume}}\n`)
    .join('')}`;

const note = (...procedures: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1, age: 40 years, weight: 70 kg}\nprocedures:\n${procedures.join('')}`;

describe(code, () => {
  it('holds a digit to the greatest volume that a source gives', () => {
    // Emergency Care Institute NSW: 2 to 5 mL for a finger. Family Practice Notebook: 4 mL for a finger, 6 mL for a toe.
    const severity = 'information';
    silent(code, note(at('right index finger', '5 mL')));
    flags(code, note(at('right index finger', '⟦5.1 mL⟧')), { severity });
    flags(code, note(at('right index fingernail', '⟦6 mL⟧')), { severity });
    for (const site of ['left great toe', 'left 3rd toe', 'left great toenail', 'right thumb']) {
      silent(code, note(at(site, '6 mL')));
      flags(code, note(at(site, '⟦6.1 mL⟧')), { severity });
    }
  });

  it('adds what went into one digit, and only that', () => {
    flags(code, note(at('right index finger', '3 mL', '⟦2.5 mL⟧')));
    flags(code, note(at('right 2nd finger', '3 mL'), at('right index fingernail', '⟦2.5 mL⟧')));
    silent(code, note(at('right index finger', '3 mL'), at('left index finger', '3 mL')));
    silent(code, note(at('right index finger', '3 mL'), at('right ring finger', '3 mL')));
    silent(code, note(at('right finger', '3 mL'), at('right finger', '3 mL')));
  });

  it('holds an ear and a penis to the greatest volume that numbs the whole of it', () => {
    // Family Practice Notebook, ear nerve block: 12 mL. Text on adult circumcision: 10 mL, and a ring of 10 mL more.
    const severity = 'information';
    silent(code, note(at('right helix', '12 mL')));
    flags(code, note(at('right helix', '⟦12.1 mL⟧')), { severity });
    flags(code, note(at('right helix', '6 mL'), at('right earlobe', '⟦6.5 mL⟧')));
    silent(code, note(at('right helix', '6 mL'), at('left helix', '6.5 mL')));
    silent(code, note(at('helix', '6 mL'), at('helix', '6.5 mL')));
    silent(code, note(at('right postauricular sulcus', '13 mL')));
    silent(code, note(at('glans penis', '20 mL')));
    flags(code, note(at('glans penis', '12 mL'), at('penile shaft', '⟦8.5 mL⟧')), { severity });
    silent(code, note(at('scrotum', '21 mL')));
  });

  it('says nothing of other sites, nor of what cannot be read', () => {
    for (const site of ['left dorsal hand', 'left palm', 'left sole', 'left upper back', 'nowhere'])
      silent(code, note(at(site, '9 mL')));
    silent(code, note(at('right index finger', '??')));
    silent(code, note('  - site: right index finger\n'));
  });
});
