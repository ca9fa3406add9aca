import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('an anesthetic that was not given', () => {
  it('is no injection, as a map or as a word', () => {
    for (const none of ['{agent: none}', 'none', '{agent: No anesthetic}', '[{agent: none}]'])
      for (const code of [
        'dose/unknown-agent',
        'dose/concentration-missing',
        'dose/volume-missing',
        'dose/agent-missing',
      ])
        silent(
          code,
          `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    anesthetic: ${none}\n`,
        );
  });
});

describe('what an injection lacks', () => {
  it('flags agent, strength and volume at the entry', () => {
    const severity = 'error';
    flags('dose/agent-missing', note(['⟦concentration⟧: 1%, volume: 1 mL']), { severity });
    flags('dose/concentration-missing', note(['⟦agent⟧: lidocaine, volume: 1 mL']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: lidocaine, concentration: 1%']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: lidocaine-prilocaine cream']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: bacteriostatic saline']), { severity });
  });

  it('is silent where all is written, or not known yet, or not needed', () => {
    const right = [
      lidocaine('1 mL'),
      'agent: ??, concentration: ??, volume: ??',
      'agent: vapocoolant spray',
      'agent: lidocaine-prilocaine cream, amount: 2 g',
      'agent: ??, amount: 2 g',
      'agent: lidocaine, concentration: 4%, amount: 2 g',
      'agent: bacteriostatic saline, volume: 1 mL',
    ];
    for (const code of ['dose/agent-missing', 'dose/concentration-missing', 'dose/volume-missing'])
      for (const injection of right) silent(code, note([injection]));
  });
});
