import type { Note, Procedure } from '../note/generated/types.ts';
import type { Report } from '../note/tree/finding.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Range } from '../note/tree/tree.ts';
import type { Beside, MishapKind, MishapRow } from '../reference/mishaps.ts';
import type { Check, Subject } from './check.ts';
import { mishapNames } from './lookups.ts';
import { patientTexts, type Told } from './patient-texts.ts';
import { shared } from './shared.ts';

/** Something that went wrong by a free text, where the note does not say what was done about it. */
export interface Mishap {
  readonly row: MishapRow;
  readonly at: Range;
  /** As the text calls it. */
  readonly word: string;
  /** The procedure in whose part of the note it is; undefined where it is mentioned the visit or of later. */
  readonly procedure: Procedure | undefined;
}

/** A text that may mention what happened. */
interface Telling {
  readonly procedure: Procedure | undefined;
  /** Whether it mentions nothing else: under remarks much is said of the disease too. */
  readonly ofHarm: boolean;
}

/** The texts of a note that may mention what happened. */
export const tellingsOf = shared(({ note }): ReadonlyMap<Leaf<string>, Telling> => {
  const tellings = new Map<Leaf<string>, Telling>();
  const add = (leaf: Leaf<string> | undefined, telling: Telling): void => {
    if (leaf?.value !== undefined) tellings.set(leaf, telling);
  };
  for (const procedure of note.procedures ?? []) {
    add(procedure.complications, { procedure, ofHarm: true });
    for (const leaf of procedure.remarks ?? []) add(leaf, { procedure, ofHarm: false });
  }
  for (const [leaf, ofHarm] of visitTexts(note)) add(leaf, { procedure: undefined, ofHarm });
  return tellings;
});

function* visitTexts(note: Note): Generator<readonly [Leaf<string> | undefined, boolean]> {
  for (const leaf of note.remarks ?? []) yield [leaf, false];
  for (const { signs, action, outcome } of note.events ?? [])
    for (const leaf of [signs, action, outcome]) yield [leaf, true];
  for (const { text } of note.addenda ?? []) yield [text, true];
}

const besides: Readonly<Record<Beside, RegExp>> = {
  specimen:
    /\b(?:specimens?|samples?|tissue|pieces?|fragments?|halves|half|jars?|bottles?|vials?|containers?|cores?|labels?|slides?|blocks?|lids?|formalin|courier)\b|\b[A-H] (?:and|&|with|or) [A-H]\b/i,
  container:
    /\b(?:jars?|bottles?|vials?|containers?|cups?|tubes?|received|lab|laboratory|pathology|courier)\b/i,
  specimens: /\b(?:specimens|samples|biopsies|lesions|sites|mistake|accident\w*|error|wrong)\b/i,
  test: /\b(?:DIF|IF|[Ii]mmunofluorescence|[Ff]luorescence|[Cc]ultures?|FISH|PCR|[Ff]low|[Pp]ath(?:ology)?|[Ll]ab(?:oratory)?|[Ss]tains?)\b/,
  fuel: /\b(?:alcohol|isopropyl|prep\w*|chlorhexidine|antiseptic)\b/i,
  burning:
    /\b(?:pads?|drapes?|gauze|alcohol|prep|chlorhexidine|cautery|electro\w*|current|hair|ground\w*|sheet|towels?|put out)\b/i,
  drug: /\b(?:lidocaine|\w+caine|anesthetic|local|epinephrine|vials?|lot|bottle|batch|solution|medium|michel'?s?|triamcinolone|sutures?|kit)\b/i,
  lot: /\b(?:lot|batch|maker|manufacturer|vials?|kit|product)\b/i,
  label: /\b(?:labels?|jars?|bottles?|containers?|vials?)\b/i,
};

/** What says before a mishap that it is feared, advised about, or long past. */
const notNow =
  /\b(?:if|risks?|watch(?:ing)? (?:for|out)|look(?:ing)? for|call (?:if|for|us)|return (?:if|for)|in case|prevent\w*|avoid\w*|discussed|warned|counsell?ed|precautions?|would|chronic|baseline|known|history of|hx of|h\/o|childhood|last (?:year|visit)|years ago|previous\w*|prior)\b|\b(?:no|none of the|neither) (?:specimens?|samples?|tissue|pieces?|jars?|labels?)(?: (?:was|were|is|are|got))? $/i;

const longAgo =
  /\b(?:at baseline|as expected|expected|as a child|in childhood|years ago|in the past|remote)\b/i;

const specimenDone =
  /\b(?:re-?biops\w*|biopsy (?:was )?(?:repeated|redone)|repeat(?:ed)? (?:biopsy|sample|specimen|punch|shave|procedure)|re-?sampled?|second sample|(?:patient|pt|family|clinician|provider|dermatologist|doctor) (?:was |were )?(?:told|called|informed|notified|aware)|(?:told|called|informed|notified) (?:the )?(?:patient|pt|clinician|provider|lab|laboratory|courier|pathology)|identity (?:was )?(?:confirmed|verified)|labels? match(?:es)?|matches)\b/i;

/** What says that somebody dealt with it; absent where nothing settles it. */
const settled: Readonly<Partial<Record<MishapKind, RegExp>>> = {
  lost: specimenDone,
  empty: specimenDone,
  label: specimenDone,
  mixed: specimenDone,
  shared: specimenDone,
  harmed: specimenDone,
  kept: specimenDone,
  refused: specimenDone,
  wet: /\b(?:waited|let dry|allowed to dry|dried (?:before|first)|until dry|dry before)\b/i,
  oxygen: /\b(?:off|stopped|paused|removed|disconnected|turned down)\b/i,
  burn: /\b(?:cooled|cool (?:water|compress\w*)|treated|dressed|(?:patient|pt) (?:was )?told|told (?:the )?(?:patient|pt)|informed|reported|clinician|incident)\b/i,
  site: /\b(?:disclos\w*|apologi\w*|(?:patient|pt|family) (?:was |were )?(?:told|informed|aware)|(?:told|informed) (?:the )?(?:patient|pt|family)|re-?biops\w*|biopsy repeated|repeat biopsy|incident report)\b/i,
  sharps:
    /\b(?:employee health|occupational|reported|incident|exposure (?:report|protocol|panel)|washed|source (?:patient |labs?|test\w*)|PEP)\b/i,
  expired: /\b(?:discard\w*|not used|replaced|new (?:vial|lot|bottle)|thrown (?:out|away))\b/i,
  recalled: /\b(?:not used|other lot|different lot|another lot)\b/i,
  injury:
    /\b(?:ED|ER|EMS|911|emergency|CT|examin\w*|exam (?!table)|evaluat\w*|assess\w*|checked|neuro\w*|no injury|unhurt|clinician|dr)\b/i,
  toxicity:
    /\b(?:lipid|EMS|911|emergency|ED|oxygen|monitor\w*|observ\w*|vitals|vital signs|BP|pulse|clinician|dr|stopped (?:injecting|the injection))\b/i,
  reaction:
    /\b(?:epinephrine IM|IM epinephrine|auto-?injector|antihistamines?|diphenhydramine|cetirizine|EMS|911|emergency|ED|observ\w*|monitor\w*|clinician|dr)\b/i,
};

/** What says that a reaction came with the visit, and is not the disease that is sampled. */
const atVisit = /\b(?:after|during|following|immediately|minutes?|min|waiting room|within)\b/i;

const faceRegions: ReadonlySet<string> = new Set(['face', 'mouth', 'nose', 'eye']);

/** Whether one of the sites that a text may be about is on the face or in the mouth. */
const isOnFace = (subject: Subject, procedure: Procedure | undefined): boolean =>
  (procedure === undefined ? (subject.note.procedures ?? []) : [procedure]).some((one) =>
    faceRegions.has(subject.siteOf(one)?.base.region ?? ''),
  );

/** The words around a mention, from stop to stop. */
function sentenceOf({
  leaf: { value = '' },
  from,
  to,
}: Told<MishapRow>): readonly [before: string, all: string] {
  const start = Math.max(...['.', ';', '\n'].map((stop) => value.lastIndexOf(stop, from - 1))) + 1;
  const rest = value.slice(to).search(/[.;\n]/);
  return [value.slice(start, from), value.slice(start, rest < 0 ? value.length : to + rest)];
}

function isMishap(subject: Subject, told: Told<MishapRow>, { procedure, ofHarm }: Telling): boolean {
  const { row, why } = told;
  if (why === 'other person') return false;
  const [before, sentence] = sentenceOf(told);
  if (notNow.test(before) || longAgo.test(sentence)) return false;
  if (row.beside !== undefined && !besides[row.beside].test(sentence)) return false;
  // A bottle of stock that was empty held nobody's tissue.
  if (row.kind === 'empty' && /\b(?:michel|stock|medium)/i.test(sentence)) return false;
  if (row.kind === 'reaction' && !ofHarm && !atVisit.test(sentence)) return false;
  return row.notOnFace !== true || !isOnFace(subject, procedure);
}

/** What went wrong by the texts of a note and is not said to be dealt with; each kind once for a text. */
const mishapsOf = shared((subject): readonly Mishap[] => {
  const found: Mishap[] = [];
  const tellings = tellingsOf(subject);
  let all: string | undefined;
  for (const told of patientTexts(subject).told(mishapNames(subject.tables))) {
    const telling = tellings.get(told.leaf);
    if (telling === undefined || !isMishap(subject, told, telling)) continue;
    all ??= [...tellings.keys()].map(({ value = '' }) => value).join('\n');
    const { row, leaf, at, from, to } = told;
    if (settled[row.kind]?.test(all) === true) continue;
    if (
      found.some((one) => one.row.kind === row.kind && one.at.start >= leaf.start && one.at.end <= leaf.end)
    )
      continue;
    const word = (leaf.value ?? '').slice(from, to);
    found.push({ row, at, word, procedure: telling.procedure });
  }
  return found;
});

/** The finder of a check that reports mishaps of some kinds, each under the form of its kind. */
export const tellsOf =
  (
    kinds: readonly MishapKind[],
    concerns: (subject: Subject, mishap: Mishap) => boolean = () => true,
  ): NonNullable<Check['find']> =>
  (subject) =>
    mishapsOf(subject).flatMap((mishap): readonly Report[] =>
      kinds.includes(mishap.row.kind) && concerns(subject, mishap)
        ? [{ at: mishap.at, form: mishap.row.kind, args: { word: mishap.word }, rests: mishap.row }]
        : [],
    );
