export const note = (allergies: string, anesthetic: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1, allergies: ${allergies}}\nprocedures:\n  - site: left cheek\n    anesthetic: ${anesthetic}\n`;

export const given = (agent: string): string => `{agent: ${agent}, concentration: 1%, volume: 1 mL}`;

export const withEpinephrine = (agent: string): string =>
  `{agent: ${agent}, concentration: 1%, epinephrine: "1:100,000", volume: 1 mL}`;

/** Classes: references in agents.ts. */
export const amides = [
  'lidocaine',
  'mepivacaine',
  'bupivacaine',
  'ropivacaine',
  'levobupivacaine',
  'prilocaine',
  'articaine',
];

export const esters = ['procaine', 'chloroprocaine', 'tetracaine'];

const neither = ['diphenhydramine', 'bacteriostatic saline', 'vapocoolant spray'];

export const agents: readonly string[] = [...amides, ...esters, ...neither];
