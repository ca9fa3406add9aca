import type { Sourced } from './types.ts';

/** An abbreviation that has been misread, with what it was taken for. */
export interface AbbreviationRow extends Sourced {
  /** As a regular expression, case and all, with what may be around it. */
  readonly pattern: string;
  readonly takenFor: string;
  /** What to write; where it is more than one word, only the writer knows which. */
  readonly instead: readonly string[];
}

const listed = { source: 'ismp-error-prone', mark: 'Q' } as const;
const end = '(?!\\.?[\\p{L}\\p{N}]|-)';
/** A word by itself, and one after a number. */
const word = (pattern: string): string => `(?<![\\p{L}\\p{N}/.-])(?:${pattern})${end}`;
const behindNumber = (pattern: string): string => `(?<=\\d ?)(?:${pattern})${end}`;

/**
 * Abbreviations in free text. AD, AS, HS, MS and SC are on the published list too and left out here: in notes on
 * skin they mean atopic dermatitis, actinic and seborrheic lesions, hidradenitis, multiple sclerosis, systemic disease.
 */
export const abbreviations: readonly AbbreviationRow[] = [
  {
    pattern: word('q\\.?o\\.?d\\.?|QOD|Q\\.O\\.D\\.?'),
    takenFor: 'daily',
    instead: ['every other day'],
    ...listed,
  },
  { pattern: word('q\\.?d\\.?|QD|Q\\.D\\.?'), takenFor: 'four times a day', instead: ['daily'], ...listed },
  { pattern: word('qhs|QHS|q\\.h\\.s\\.'), takenFor: 'every hour', instead: ['at bedtime'], ...listed },
  { pattern: word('TIW|tiw'), takenFor: 'three times a day', instead: ['three times a week'], ...listed },
  {
    pattern: word('D\\/C|d\\/c'),
    takenFor: 'the other of discharge and discontinue',
    instead: ['discontinue', 'discharge'],
    ...listed,
  },
  { pattern: behindNumber('IU'), takenFor: 'IV or 10', instead: ['units'], ...listed },
  { pattern: behindNumber('[uU]'), takenFor: 'a zero', instead: ['units'], ...listed },
  { pattern: behindNumber('cc'), takenFor: 'units', instead: ['mL'], ...listed },
  { pattern: word('[Pp]er os'), takenFor: 'the left eye', instead: ['by mouth'], ...listed },
  { pattern: word('SQ'), takenFor: 'five every', instead: ['subcutaneous'], ...listed },
  {
    pattern: word('OD'),
    takenFor: 'the other of daily and right eye',
    instead: ['right eye', 'daily'],
    ...listed,
  },
  { pattern: word('OS'), takenFor: 'the left ear or by mouth', instead: ['left eye'], ...listed },
  { pattern: word('OU'), takenFor: 'each ear', instead: ['each eye'], ...listed },
  {
    pattern: word('TAC'),
    takenFor: 'tetracaine, adrenaline and cocaine',
    instead: ['triamcinolone'],
    source: 'ismp-drug-names',
    mark: 'M',
  },
];
