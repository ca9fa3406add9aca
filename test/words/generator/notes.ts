import type { Group } from './cues.ts';
import type { Random } from './random.ts';
import type { Exposure } from './things.ts';

/** Where in the note the text is. */
export type Key =
  | 'allergies'
  | 'implants'
  | 'conditions'
  | 'medications'
  | 'remarks'
  | 'procedure remarks'
  | 'complications'
  | 'lesion'
  | 'event action'
  | 'event outcome'
  | 'addendum';

/** The key that asks for each kind of danger. */
export const homes: Readonly<Record<Group, Key>> = {
  allergy: 'allergies',
  implant: 'implants',
  condition: 'conditions',
  medicine: 'medications',
};

/** Keys in which a danger may be told that belongs under another. */
export const aways: readonly Key[] = [
  'conditions',
  'medications',
  'remarks',
  'remarks',
  'procedure remarks',
  'complications',
  'lesion',
  'event action',
  'event outcome',
  'addendum',
];

const plainScalar = /^[A-Za-z][A-Za-z0-9 /()%.;-]*$/;
const otherMeaning = /^(?:y|n|yes|no|on|off|true|false|null)$/i;

/** A text as a YAML value that reads back as the same text. */
export function quoted(text: string, random: Random): string {
  const bare = plainScalar.test(text) && !otherMeaning.test(text) && text.trim() === text;
  if (bare && random.chance(0.5)) return text;
  return random.chance(0.5) ? `'${text.replaceAll("'", "''")}'` : JSON.stringify(text);
}

/** One text, or several in a list. */
export function value(texts: readonly string[], random: Random): string {
  const written = texts.map((text) => quoted(text, random));
  return written.length === 1 && random.chance(0.6) ? written.join('') : `[${written.join(', ')}]`;
}

interface Slots {
  readonly patient: readonly string[];
  readonly procedure: readonly string[];
  readonly note: readonly string[];
}

const nowhere: Slots = { patient: [], procedure: [], note: [] };
const inPatient = (key: Key, written: string): Slots => ({ ...nowhere, patient: [`${key}: ${written}`] });
const inProcedure = (key: string, written: string): Slots => ({
  ...nowhere,
  procedure: [`${key}: ${written}`],
});
const inEvent = (key: string, written: string): Slots => ({
  ...nowhere,
  note: ['events:', '  - on: 2026-03-02', '    kind: call', `    ${key}: ${written}`],
});

const slots: Readonly<Record<Key, (written: string) => Slots>> = {
  allergies: (written) => inPatient('allergies', written),
  implants: (written) => inPatient('implants', written),
  conditions: (written) => inPatient('conditions', written),
  medications: (written) => inPatient('medications', written),
  remarks: (written) => ({ ...nowhere, note: [`remarks: ${written}`] }),
  'procedure remarks': (written) => inProcedure('remarks', written),
  complications: (written) => inProcedure('complications', written),
  lesion: (written) => inProcedure('lesion', written),
  'event action': (written) => inEvent('action', written),
  'event outcome': (written) => inEvent('outcome', written),
  addendum: (written) => ({
    ...nowhere,
    note: ['addenda:', '  - at: 2026-03-02 15:30', '    by: K.O.', `    text: ${written}`],
  }),
};

const indented = (by: string, lines: readonly string[]): readonly string[] =>
  lines.map((line) => `${by}${line}`);

/** A whole note in which the danger matters, with the written value under its key. */
export function noteOf(key: Key, written: string, { site, infant, lines }: Exposure, random: Random): string {
  const { patient, procedure, note } = slots[key](written);
  const asked = (['allergies', 'implants'] as const)
    .filter((one) => one !== key && random.chance(0.7))
    .map((one) => `${one}: none`);
  return [
    'visit: 2026-03-02',
    'patient:',
    '  id: C-20417',
    ...(infant ? ['  born: 2025-06-01', '  weight: 8 kg'] : ['  born: 1961-08-09', '  weight: 62 kg']),
    ...indented('  ', [...asked, ...patient]),
    'procedures:',
    `  - site: ${site}`,
    '    method: punch',
    '    size: 4 mm',
    ...indented('    ', [...lines, ...procedure]),
    ...note,
    '',
  ].join('\n');
}
