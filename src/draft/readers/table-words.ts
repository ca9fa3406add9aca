import type { Gather } from '../gather.ts';
import { lowAt } from '../speech/word.ts';
import { wordSet } from '../word-set.ts';
import { specimensIn } from './specimen.ts';
import type { Frame } from '../cues.ts';
import type { Claim, Table } from '../lexicon.ts';
import { claimOf, cuesBetween, framesIn, plainOf, type Scan, type Term } from '../scan.ts';

/** The tables whose words are values of a procedure, and their keys. */
const keys: Readonly<Partial<Record<Table, readonly string[]>>> = {
  preparation: ['preparation'],
  hemostasis: ['hemostasis'],
  dressing: ['dressing'],
  medium: ['specimen', '#', 'medium'],
  test: ['specimen', '#', 'tests'],
};
const lists: ReadonlySet<Table> = new Set(['preparation', 'hemostasis', 'dressing', 'test']);

const tablesOf: Readonly<Partial<Record<Frame, readonly Table[]>>> = {
  preparation: ['preparation'],
  hemostasis: ['hemostasis'],
  dressing: ['dressing'],
  specimen: ['medium', 'test'],
  closure: ['closure'],
};

/** Words of tables that name their key by themselves are at least so long. */
/** The one entry of a closure without stitches. */
const unstitched = -1;

const longEnough = 5;
const sureShort = wordSet('wrap nbf alcl3 alcl dif h&e chg pvi');

/** Reads words of preparation, hemostasis, dressing, medium, tests and what closes without stitches. */
export function readTableWords(gather: Gather): void {
  const specimenAt = specimensIn(gather);
  for (const term of gather.freeTerms) {
    const claim = claimIn(gather, term);
    if (claim === undefined || isHeld(gather, term, claim) || gather.isUnderAllergies(term.at)) continue;
    const { at, end } = term;
    const name = valueOf(gather, term, claim);
    if (claim.table === 'closure')
      gather.put({
        level: 'procedure',
        key: ['closure', '#', 'how'],
        value: name,
        at,
        end,
        entry: unstitched,
      });
    else
      gather.put({
        level: 'procedure',
        key: keys[claim.table]!,
        value: name,
        at,
        end,
        ...(lists.has(claim.table) ? { several: true as const } : {}),
        ...(keys[claim.table]![0] === 'specimen' ? { entry: specimenAt(at) } : {}),
      });
  }
}

/** The word of the table; of tissue that is only called fresh, its own words, since they do not say what it is in. */
function valueOf({ scan }: Gather, { at, end }: Term, { table, row }: Claim): string {
  const typed = plainOf(scan, at, end);
  return table === 'medium' && /^fresh\b/i.test(typed) && !typed.toLowerCase().includes('saline')
    ? typed
    : row.name;
}

const toDepth = wordSet('to into through depth level down of the : a reaching');
const ofPlace = wordSet('from at of in on including the : biopsy :');
const near = 4;

/** Reads how deep a sample goes, and where it is by the lesion. */
export function readDepths(gather: Gather): void {
  for (const term of gather.freeTerms) {
    const { at, end } = term;
    if (gather.held(at) !== undefined) continue;
    const depth = claimOf(term, 'depth');
    const relation = claimOf(term, 'relation');
    const { from, to } = gather.clauseAt(at);
    if (depth !== undefined && isDeep(gather, term, from, to))
      gather.put({ level: 'procedure', key: ['depth'], value: depth.row.name, at, end });
    else if (relation !== undefined && term.claims.length === 1 && isRelated(gather, term))
      gather.put({ level: 'procedure', key: ['relation'], value: relation.row.name, at, end });
  }
}

const deepLeads = wordSet('to into through depth level');
const stitched = wordSet('suture sutures closed closure sutured stitches repaired layer layers dermal');

function isDeep(gather: Gather, { at, end }: Term, from: number, to: number): boolean {
  if (gather.has(stitched, Math.max(from, at - near), Math.min(to, end))) return false;
  if (isLed(gather, at) || isAlone(gather, at, end, from, to)) return true;
  const first = Math.max(from, at - near);
  for (let place = at - 1; place >= first; place -= 1) {
    if (deepLeads.has(gather.low(place))) return true;
    if (!toDepth.has(gather.low(place))) return false;
  }
  return false;
}

const isLed = (gather: Gather, at: number): boolean =>
  /^(?:to|into|through|down)$/.test(gather.low(at)) || gather.low(at) === 'full';

/** "Subcutis reached", or nothing else between two marks. */
const isAlone = (gather: Gather, at: number, end: number, from: number, to: number): boolean =>
  gather.low(end) === 'reached' ||
  (from === at && (end === to || (end === to - 1 && gather.word(end)!.kind !== 'word')));

const isRelated = (gather: Gather, { at, end }: Term): boolean =>
  /^(?:peri|adjacent|uninvolved)/.test(gather.low(at)) ||
  (gather.low(at) === 'edge' && (end - at > 1 || gather.low(end) === 'of')) ||
  ((end - at > 1 || gather.low(at) === 'edge') &&
    ofPlace.has(gather.low(at - 1)) &&
    gather.low(at) !== 'lesion') ||
  (end - at > 1 && /^(?:ulcer|blister|bulla|wound)$/.test(gather.low(at)));

/** A denial that is part of the words is what they say: "no sutures". */
const isHeld = (gather: Gather, { at, end }: Term, { row }: Claim): boolean =>
  row.name === 'none' && end - at > 1
    ? gather.held(at - 1) !== undefined && gather.held(at - 1) !== 'denied'
    : gather.held(at) !== undefined;

/** What a term names where it is: by what its clause is about, or by itself where only one table has it. */
function claimIn(gather: Gather, term: Term): Claim | undefined {
  const { scan } = gather;
  if (gather.low(term.end).startsWith('allerg') || isMeasured(gather, term)) return undefined;
  const wanted = tablesAt(scan, term);
  for (const table of wanted) {
    const claim = claimOf(term, table);
    if (claim !== undefined) return isWord(claim) ? claim : undefined;
  }
  return preferred(scan, term) ?? alone(scan, term, wanted.length > 0);
}

/** "Blood pressure" stops no bleeding. */
const isMeasured = (gather: Gather, { at }: Term): boolean =>
  gather.low(at) === 'pressure' && gather.low(at - 1) === 'blood';

/** What a term names where only one table has it, whatever is spoken of. */
function alone(scan: Scan, term: Term, isFramed: boolean): Claim | undefined {
  const own = term.claims.filter(({ table }) => table in keys || table === 'closure');
  const [one] = own;
  if (one === undefined || own.length > 1 || !isSure(scan, term) || !isWord(one)) return undefined;
  if (one.row.name === 'none')
    return term.end - term.at > 1 && term.claims.length === own.length ? one : undefined;
  return one.table !== 'test' || isFramed || isOfSpecimen(scan, term) ? one : undefined;
}

const wraps = wordSet('dressing dressings bandage dsg');

/** A word of hemostasis and of another table, where nothing says which is meant: "pressure", "heat cautery". */
function preferred({ words }: Scan, term: Term): Claim | undefined {
  const stops = claimOf(term, 'hemostasis');
  const dressing = claimOf(term, 'dressing');
  const medium = claimOf(term, 'medium');
  if (medium !== undefined && lowAt(words, term.at - 1) === 'in') return medium;
  if (dressing !== undefined && stops !== undefined) {
    const isWrap = wraps.has(lowAt(words, term.end - 1)) || wraps.has(lowAt(words, term.end));
    return isWrap ? dressing : only(stops, 'pressure');
  }
  return only(dressing, 'tape') ?? (claimOf(term, 'method') === undefined ? undefined : notCautery(stops));
}

const only = (claim: Claim | undefined, name: string): Claim | undefined =>
  claim?.row.name === name ? claim : undefined;

/** "Cautery" alone says neither heat nor current, and may be what was done. */
const notCautery = (claim: Claim | undefined): Claim | undefined =>
  claim?.row.name === 'cautery' ? undefined : claim;

/** A bare "none" or "suture" is nothing to take from a frame that something else may be in. */
const isWord = ({ table, row }: Claim): boolean => table !== 'closure' || row.name !== 'suture';

const isSure = ({ words }: Scan, { at, end }: Term): boolean =>
  end - at > 1 || words[at]!.low.length >= longEnough || sureShort.has(words[at]!.low);

/** Whether a test is named beside a medium or in a sentence about specimens, or by a word that means nothing else. */
const isOfSpecimen = (scan: Scan, term: Term): boolean => {
  if (sureShort.has(scan.words[term.at]!.low) || isWanted(scan, term, 'specimen')) return true;
  const sentence = scan.clauses[scan.clauseOf[term.at]!]!.sentence;
  const near = cuesBetween(scan.terms, term.at - nearMedium, term.at + nearMedium);
  return near.some(
    (other) =>
      claimOf(other, 'medium') !== undefined && scan.clauses[scan.clauseOf[other.at]!]!.sentence === sentence,
  );
};
const nearMedium = 12;

const isWanted = (scan: Scan, { at }: Term, frame: Frame): boolean => {
  const number = scan.clauseOf[at]!;
  const { sentence } = scan.clauses[number]!;
  for (let near = number; near >= 0 && scan.clauses[near]!.sentence === sentence; near -= 1)
    if (framesIn(scan, scan.clauses[near]!).some((one) => one.frame === frame)) return true;
  return false;
};

/** The tables of the frame of a term: the last before it in its clause, the first after it, or that of a clause before. */
function tablesAt(scan: Scan, term: Term): readonly Table[] {
  const number = scan.clauseOf[term.at]!;
  const clause = scan.clauses[number]!;
  const frames = framesIn(scan, clause).filter(
    ({ frame, at, end }) => frame in tablesOf && (at < term.at || end > term.end),
  );
  const before = frames.findLast(({ at }) => at < term.at);
  const after = frames.find(({ at }) => at >= term.end);
  const own = [before, after].flatMap((one) => (one === undefined ? [] : tablesOf[one.frame]!));
  if (own.length > 0) return own;
  for (let near = number - 1; near >= 0 && scan.clauses[near]!.sentence === clause.sentence; near -= 1) {
    const last = framesIn(scan, scan.clauses[near]!).findLast(({ frame }) => frame in tablesOf);
    if (last !== undefined) return tablesOf[last.frame]!;
  }
  return [];
}
