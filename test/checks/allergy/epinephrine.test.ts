import { flags, silent } from '../tester.ts';
import { note, given, withEpinephrine } from './_agent.ts';

describe('allergy/epinephrine', () => {
  const anesthetic = '{agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: 1 mL}';

  it('is an error, and a warning where it is an intolerance', () => {
    flags('allergy/epinephrine', note('[adrenaline]', anesthetic), { severity: 'error' });
    flags('allergy/epinephrine', note('[{to: epinephrine, reaction: hives}]', anesthetic), {
      severity: 'error',
    });
    for (const entry of [
      '{to: epinephrine, reaction: racing heart}',
      '{to: epinephrine, reaction: my heart was racing}',
      '{to: epinephrine, reaction: rapid heart rate}',
      '{to: epinephrine, reaction: racing pulse and shaky}',
      '{to: epinephrine, reaction: made heart race}',
      '{to: epinephrine, reaction: tachy}',
      '{to: epinephrine, reaction: pulse went up}',
      '{to: epinephrine, reaction: increased HR}',
      '{to: epinephrine, reaction: heart thumping}',
      'epi makes heart race',
      'palpitations from epinephrine',
      '{to: epinephrine, tolerates: dilute epinephrine}',
    ])
      flags('allergy/epinephrine', note(`[${entry}]`, anesthetic), { severity: 'warning' });
  });

  it('stays an error where the reaction was more than that', () => {
    for (const entry of [
      '{to: epinephrine, reaction: "racing heart, hives"}',
      '{to: epinephrine, reaction: racing heart and swelling of the lips}',
    ])
      flags('allergy/epinephrine', note(`[${entry}]`, anesthetic), { severity: 'error' });
  });

  it('counts what is typed and can not be read', () => {
    flags('allergy/epinephrine', note('[epinephrine]', '{agent: lidocaine, epinephrine: ⟦some⟧}'));
  });

  it('is silent on plain solutions and on what is not yet known', () => {
    silent('allergy/epinephrine', note('[epinephrine]', given('lidocaine')));
    silent('allergy/epinephrine', note('[epinephrine]', '{agent: lidocaine, epinephrine: none}'));
    silent('allergy/epinephrine', note('[epinephrine]', '{agent: lidocaine, epinephrine: ??}'));
    silent('allergy/epinephrine', note('[lidocaine]', withEpinephrine('lidocaine')));
  });
});
