import { allergyNames, implantNames, medicineNames, thinnerNames } from '../../checks/lookups.ts';
import type { Lookup } from '../../note/words/mentions/lookup.ts';
import { readMentions, type Answer } from '../../note/words/mentions/read.ts';
import type { WordRow } from '../../reference/types.ts';
import { wordSet, type Found, type Gather } from '../gather.ts';
import { claimOf, plainOf, type Term } from '../scan.ts';
import type { SiteNamed } from './site.ts';

const put = (gather: Gather, key: readonly string[], value: string, at: number, end: number, more: Partial<Found> = {}): void =>
  gather.put({ level: 'visit', key: ['patient', ...key], value, at, end, ...more });

/** What the sentence of a term says of it, by the grammar that reads the free words of a note; undefined where that knows it not. */
function answerOf<Row extends WordRow>(gather: Gather, term: Term, lookup: Lookup<Row>): Answer | undefined {
  const { from, to } = gather.sentenceAt(term.at);
  if (to - from > longestRead) return 'unclear';
  const plain = plainOf(gather.scan, from, to);
  const start = plainOf(gather.scan, from, term.at + 1).length - gather.word(term.at)!.text.length;
  return readMentions(plain, lookup).find((one) => one.from <= start && one.to > start)?.answer;
}

/** A longer sentence is none, and nothing in it is sure. */
const longestRead = 120;

const ofAllergy = wordSet('allergic allergies allergy nkda nka reacts');
const nothing = wordSet('none nkda nka denied denies negative no');

/** Reads allergies, each with what was seen, or that there are none. */
export function readAllergies(gather: Gather): void {
  const { scan } = gather;
  const agents = scan.agents.filter(({ at }) => !scan.terms.some((term) => term.at <= at && term.end > at));
  for (const term of [...gather.freeTerms, ...agents].sort((one, other) => one.at - other.at)) {
    const { from, to } = gather.sentenceAt(term.at);
    const allergen = claimOf(term, 'allergen') ?? claimOf(term, 'agent') ?? claimOf(term, 'medicine');
    if (allergen === undefined || !gather.has(ofAllergy, from, to)) continue;
    const row = scan.tables.allergens.find(allergen.row.name);
    if (row?.kind === 'none') readNone(gather, term);
    else if (row?.kind !== 'unknown') readAllergy(gather, term, allergen.row.name);
  }
  readHeadedNone(gather, 'allergies', wordSet('allergies allergy'));
}

function readNone(gather: Gather, { at, end }: Term): void {
  const next = gather.low(end);
  if (end - at === 1 && !ofAllergy.has(gather.low(at))) return;
  if (next === 'except' || next === 'other' || next === 'but' || next === 'to') return;
  put(gather, ['allergies'], 'none', at, end, { several: true });
}

function readHeadedNone(gather: Gather, key: string, heads: ReadonlySet<string>): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (!heads.has(low) || gather.low(at + 1) !== ':' || !nothing.has(gather.low(at + 2))) continue;
    const next = gather.word(at + 3);
    if (gather.isTaken(at + 2) || (next !== undefined && next.kind === 'word' && next.low !== 'known')) continue;
    put(gather, [key], 'none', at + 2, at + 3, { rests: [[at, at + 1]], several: true });
  }
}

const longestReaction = 8;

function readAllergy(gather: Gather, term: Term, name: string): void {
  const answer = answerOf(gather, term, allergyNames(gather.scan.tables));
  const held = gather.held(term.at);
  if (answer === undefined ? held !== undefined : answer !== 'said') return;
  if (held === 'other person' || !isAllergen(gather, term)) return;
  put(gather, ['allergies', '#', 'to'], name, term.at, term.end, { entry: term.at });
  const { to } = gather.sentenceAt(term.at);
  for (const other of gather.freeTerms) {
    if (other.at < term.end || other.at >= Math.min(to, term.end + longestReaction)) continue;
    if (claimOf(other, 'allergen') !== undefined || claimOf(other, 'medicine') !== undefined) break;
    if (claimOf(other, 'reaction') === undefined || gather.held(other.at) !== undefined) continue;
    put(gather, ['allergies', '#', 'reaction'], plainOf(gather.scan, other.at, other.end), other.at, other.end, { entry: term.at });
    break;
  }
}

const listing = wordSet(', and or to ; :');

/** Whether a name follows "allergic to" in a list, or "allergy" follows it. */
function isAllergen(gather: Gather, { at, end }: Term): boolean {
  if (/^allerg/.test(gather.low(end)) || /^allerg/.test(gather.low(end - 1))) return true;
  const { from } = gather.sentenceAt(at);
  for (let place = at - 1; place >= from; place -= 1) if (ofAllergy.has(gather.low(place))) return true;
  return listing.has(gather.low(at - 1)) && gather.has(ofAllergy, from, at);
}

const ofImplant = wordSet('pacemaker defibrillator icd aicd stimulator implant implants device implanted');
const inPlace = wordSet('in at on');
const denials = wordSet('no denies without not');

/** Reads devices that a patient carries, and where, or the words that deny them. */
export function readImplants(gather: Gather, sites: readonly SiteNamed[]): void {
  const { scan } = gather;
  for (const term of gather.freeTerms) {
    const claim = claimOf(term, 'implant');
    if (claim === undefined) continue;
    const { at, end } = term;
    const row = scan.tables.implants.find(claim.row.name);
    if (row?.concern === 'none' && end - at > 1) {
      put(gather, ['implants'], 'none', at, end, { several: true });
      continue;
    }
    if (row === undefined || row.concern === 'none' || row.concern === 'unknown' || !isDevice(gather, term)) continue;
    const answer = answerOf(gather, term, implantNames(scan.tables));
    if (answer === 'denied') readDeniedDevice(gather, term);
    if (answer !== 'said' || gather.held(at) === 'other person') continue;
    put(gather, ['implants', '#', 'kind'], claim.row.name, at, end, { entry: at });
    const where = sites.find((one) => one.at >= end && one.at <= end + 3);
    if (where !== undefined && (inPlace.has(gather.low(end)) || where.at === end + 1 && gather.low(end) === ','))
      put(gather, ['implants', '#', 'where'], where.value, where.at, where.end, { entry: at });
  }
}

const isDevice = (gather: Gather, { at, end }: Term): boolean =>
  end - at > 1 || ofImplant.has(gather.low(at)) || gather.low(at).length > 8;

/** The words from the denial to the last device of its clause. */
function readDeniedDevice(gather: Gather, { at, end }: Term): void {
  if (gather.isTaken(at)) return;
  const { from } = gather.sentenceAt(at);
  let start = at;
  for (let place = at - 1; place >= Math.max(from, at - 4); place -= 1) if (denials.has(gather.low(place))) start = place;
  if (start === at) return;
  let last = end;
  for (const other of gather.freeTerms)
    if (other.at >= last && other.at <= last + 2 && claimOf(other, 'implant') !== undefined && /^(?:or|and|,|nor)$/.test(gather.low(other.at - 1))) last = other.end;
  put(gather, ['implants'], plainOf(gather.scan, start, last), start, last);
}

const onMedicine = wordSet('on takes taking meds medications medication medicines uses with : anticoagulated continues');
const ended = wordSet('stopped held hold holding off discontinued quit stop avoid restarted');

/** Reads medicines that a patient takes. */
export function readMedicines(gather: Gather): void {
  const { tables } = gather.scan;
  for (const term of gather.freeTerms) {
    const claim = claimOf(term, 'medicine');
    const { at, end } = term;
    if (claim === undefined || gather.held(at) !== undefined) continue;
    const { from } = gather.sentenceAt(at);
    const clause = gather.clauseAt(at);
    if (!gather.has(onMedicine, from, at) || gather.has(ended, clause.from, clause.to) || gather.has(ofAllergy, from, at)) continue;
    const answers = [answerOf(gather, term, thinnerNames(tables)), answerOf(gather, term, medicineNames(tables))];
    if (answers.some((answer) => answer !== undefined && answer !== 'said')) continue;
    put(gather, ['medications'], claim.row.name, at, end, { several: true });
  }
  readHeadedNone(gather, 'medications', wordSet('medications meds medication'));
}

const ofCondition = wordSet('history hx h/o pmh has conditions condition with diabetic');

/** Reads lasting conditions of a patient. */
export function readConditions(gather: Gather): void {
  for (const term of gather.freeTerms) {
    const claim = claimOf(term, 'condition');
    const { at, end } = term;
    if (claim === undefined || (gather.held(at) !== undefined && gather.held(at) !== 'past')) continue;
    if (claimOf(term, 'diagnosis') !== undefined) continue;
    const { from, to } = gather.sentenceAt(at);
    if (!gather.has(ofCondition, from, at) || gather.has(ofQuestion, from, to)) continue;
    put(gather, ['conditions'], claim.row.name, at, end, { several: true });
  }
  readHeadedNone(gather, 'conditions', wordSet('conditions pmh'));
}

const ofQuestion = wordSet('rule r/o suspect suspicious concern concerning family mother father differential');
