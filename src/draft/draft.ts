import type { Tables } from '../practice/tables.ts';
import { accountOf, type Unplaced } from './account.ts';
import { assembled, type Conflict, type Fact } from './assemble.ts';
import { Gather } from './gather.ts';
import { proceduresOf, type Procedures } from './procedures.ts';
import { readAnesthetics } from './readers/anesthetic.ts';
import { readClosures } from './readers/closure.ts';
import { readAsked, readComplications, readFaints, readLesions, readQuestions } from './readers/free-text.ts';
import { readAllergies, readConditions, readImplants, readMedicines } from './readers/lists.ts';
import { methodsIn } from './readers/method.ts';
import { readCodes } from './readers/codes.ts';
import { readInjected } from './readers/injected.ts';
import { readLandmarks } from './readers/landmarks.ts';
import { readAge, readHeight, readId, readWeight } from './readers/patient.ts';
import { readResults } from './readers/results.ts';
import { sitesIn } from './readers/site.ts';
import { readSizes } from './readers/sizes.ts';
import { readCollected, readLabels, readNotSent, readOrientation } from './readers/specimen.ts';
import { readDepths, readTableWords } from './readers/table-words.ts';
import { readAftercare, readConsent, readDates, readStaff, readTimeOut, readYes } from './readers/visit.ts';
import { scanOf, type Scan } from './scan.ts';
import type { Span } from './speech/word.ts';
import { written, type Placed } from './write.ts';

export type { Conflict, Fact, Placed, Span, Unplaced };

/** A note that was made of a text, and what became of each of its words. */
export interface Draft {
  /** The note in YAML, with `draft: yes`. */
  readonly note: string;
  /** In the order of the text. */
  readonly facts: readonly Fact[];
  readonly conflicts: readonly Conflict[];
  readonly unplaced: readonly Unplaced[];
  /** Words on which a value rests. */
  readonly placed: readonly Span[];
  /** Words that say nothing, and names of persons. */
  readonly passed: readonly Span[];
  /** Names of persons: marked, and kept out of the note. */
  readonly names: readonly Span[];
  /** Where each value is in the note, and the words that say it. */
  readonly places: readonly Placed[];
}

/**
 * Makes a draft note of a text as it was dictated or typed. Every value comes from words of the text, and every word is
 * placed, in conflict, passed over or unplaced. Takes any text, in time linear in it.
 */
export function draft(text: string, tables: Tables): Draft {
  const scan = scanOf(text, tables);
  const gather = new Gather(scan);
  const procedures = read(gather);
  const { facts, conflicts } = assembled(gather, procedures);
  const inOrder = [...facts].sort((one, other) => one.from - other.from || one.to - other.to);
  const account = accountOf(scan, procedures.marks, { facts, conflicts });
  const remarks = account.unplaced.map((one) => ({
    procedure: procedureOf(scan, procedures, one),
    text: one.text,
  }));
  const corrected = scan.corrections.map(({ struck: [at, end], counts }) => ({
    counts: spanOf(scan, counts, counts + 1),
    first: spanOf(scan, at, end),
  }));
  const { note, places } = written({ text, facts: inOrder, conflicts, remarks, corrected, tables });
  return { note, facts: inOrder, conflicts, ...account, names: scan.names, places };
}

const spanOf = ({ words }: Scan, at: number, end: number): Span => ({
  from: words[at]!.from,
  to: words[end - 1]!.to,
});

function read(gather: Gather): Procedures {
  const sites = sitesIn(gather);
  readAllergies(gather);
  readImplants(gather, sites);
  readAnesthetics(gather);
  readResults(gather);
  readDates(gather);
  readAge(gather);
  readWeight(gather);
  readHeight(gather);
  readId(gather);
  readMedicines(gather);
  readStaff(gather);
  readConsent(gather);
  readTimeOut(gather);
  readAftercare(gather);
  readYes(gather);
  readNotSent(gather);
  readLabels(gather);
  readCollected(gather);
  readOrientation(gather);
  readCodes(gather);
  readLandmarks(gather);
  readInjected(gather, sites);
  readSizes(gather);
  readClosures(gather);
  readComplications(gather);
  readFaints(gather);
  readQuestions(gather);
  readAsked(gather, sites);
  readConditions(gather);
  readLesions(gather, sites);
  readDepths(gather);
  readTableWords(gather);
  const methods = methodsIn(gather);
  const procedures = proceduresOf(gather, sites, methods);
  for (const [, { at, end }] of [...procedures.sites, ...procedures.methods]) gather.take(at, end);
  return procedures;
}

/** The procedure that words without a place are of, where a text has several. */
function procedureOf(scan: Scan, procedures: Procedures, { from }: Span): number | undefined {
  if (procedures.count === 1) return undefined;
  const at = scan.words.findIndex((word) => word.from === from);
  const target = procedures.targetOf({ at });
  return target === 'all' ? undefined : target;
}
