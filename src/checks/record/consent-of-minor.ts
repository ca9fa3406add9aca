import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';

/** Below this age a guardian consents nearly everywhere, in months. */
const alone = 16 * 12;

const own: ReadonlySet<string | undefined> = new Set(['written', 'verbal', 'obtained', 'assent']);

export const check: Check = {
  code: 'record/consent-of-minor',
  severity: 'information',
  title: 'Consent of a child, and no guardian',
  why: 'A child agrees, and a guardian consents. The age from which patients consent alone differs by country, and in some no age is fixed; under 16 years the note should say who did.',
  sources: [{ source: 'common', mark: 'common' }],
  messages: {
    main: 'The patient is {age} years old, and consent is recorded as {consent}. If a guardian gave it, write `guardian`.',
  },
  sourcesDiffer: {
    how: 'The age from which patients consent alone differs by country. Under 16 years it is asked who did.',
    settings: ['severities'],
  },
  find({ note: { consent }, tables, dose }) {
    const { months } = dose.facts;
    if (consent?.value === undefined || months === undefined || months >= alone) return [];
    const rows = rowsIn(tables.consents, consent);
    if (rows.length === 0 || !rows.every(({ name }) => own.has(name))) return [];
    return [{ at: consent, args: { age: Math.floor(months / 12), consent: consent.text } }];
  },
};
