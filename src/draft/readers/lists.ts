import { isOtherShort } from '../../checks/device/_electrosurgery.ts';
import { allergyNames, implantNames, medicineNames, thinnerNames } from '../../checks/lookups.ts';
import type { Lookup } from '../../note/words/mentions/lookup.ts';
import { readMentions, type Answer } from '../../note/words/mentions/read.ts';
import type { WordRow } from '../../reference/types.ts';
import type { Found, Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { claimOf, cuesBetween, plainOf, type Term } from '../scan.ts';
import type { SiteNamed } from './site.ts';

const put = (
  gather: Gather,
  key: readonly string[],
  value: string,
  at: number,
  end: number,
  more: Partial<Found> = {},
): void => {
  gather.put({ level: 'visit', key: ['patient', ...key], value, at, end, ...more });
};

/** What the sentence of a term says of it, by the grammar that reads the free words of a note; undefined where that knows it not. */
function answerOf<Row extends WordRow>(gather: Gather, term: Term, lookup: Lookup<Row>): Answer | undefined {
  const sentence = gather.sentenceAt(term.at);
  const { from, to } = sentence.to - sentence.from > longestSentence ? gather.clauseAt(term.at) : sentence;
  if (to - from > longestRead) return 'unclear';
  const plain = plainOf(gather.scan, from, to);
  const start = plainOf(gather.scan, from, term.at + 1).length - gather.word(term.at)!.text.length;
  return readMentions(plain, lookup).find((one) => one.from <= start && one.to > start)?.answer;
}

/** A longer sentence is none, and nothing in it is sure. */
const longestRead = 120;
/** Of a longer sentence, as where no mark was typed, only the clause is read. */
const longestSentence = 40;

const ofAllergy = wordSet('allergic allergies allergy nkda nka reacts');
const nothing = wordSet('none nkda nka denied denies negative no');

/** Reads allergies, each with what was seen, or that there are none. */
export function readAllergies(gather: Gather): void {
  const { scan } = gather;
  const agents = scan.agents.filter(
    ({ at }) => !cuesBetween(scan.terms, at - longestName, at + 1).some((term) => term.end > at),
  );
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
    const place = gather.low(at + 1) === ':' ? at + 2 : gather.low(at + 1) === 'none' ? at + 1 : undefined;
    if (place === undefined || !heads.has(low) || !nothing.has(gather.low(place))) continue;
    const next = gather.word(place + 1);
    if (gather.isTaken(place) || (next?.kind === 'word' && next.low !== 'known')) continue;
    put(gather, [key], 'none', place, place + 1, { rests: [[at, at + 1]], several: true });
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
    put(
      gather,
      ['allergies', '#', 'reaction'],
      plainOf(gather.scan, other.at, other.end),
      other.at,
      other.end,
      { entry: term.at },
    );
    break;
  }
}

const listing = wordSet(
  ', and or to ; : - – ( ) with which causes gives a rash hives severe the includes are is both',
);

/** Whether a name follows "allergic to" in a list, or "allergy" follows it. */
function isAllergen(gather: Gather, { at, end }: Term): boolean {
  if (gather.low(end).startsWith('allerg') || gather.low(end - 1).startsWith('allerg')) return true;
  const { from } = gather.sentenceAt(at);
  for (let place = at - 1; place >= from; place -= 1) {
    if (ofAllergy.has(gather.low(place))) return true;
    if (!listing.has(gather.low(place)) && !isOfList(gather, place)) return false;
  }
  return false;
}

/** Whether a word is part of the name of an allergen, or of what it did. */
const isOfList = (gather: Gather, at: number): boolean =>
  cuesBetween(gather.scan.terms, at - longestName, at + 1).some(
    (term) =>
      term.end > at &&
      term.claims.some(({ table }) => table === 'allergen' || table === 'medicine' || table === 'reaction'),
  );
const longestName = 8;

const ofImplant = wordSet('pacemaker defibrillator icd aicd stimulator implant implants device implanted');
const inPlace = wordSet('in at on');

/** Reads devices that a patient carries, and where, or that there are none. */
export function readImplants(gather: Gather, sites: readonly SiteNamed[]): void {
  readHeadedNone(gather, 'implants', wordSet('implants implant devices'));
  const { implants } = gather.scan.tables;
  for (const term of gather.freeTerms) {
    const claim = claimOf(term, 'implant');
    const row = claim === undefined ? undefined : implants.find(claim.row.name);
    if (row?.concern === 'none' && term.end - term.at > 1)
      put(gather, ['implants'], 'none', term.at, term.end, { several: true });
    else if (row !== undefined && !notDevice.has(row.concern) && isDevice(gather, term))
      readDevice(gather, term, row.name, sites);
  }
}

const notDevice: ReadonlySet<string> = new Set(['none', 'unknown']);

function readDevice(gather: Gather, term: Term, name: string, sites: readonly SiteNamed[]): void {
  const { at, end } = term;
  const answer = answerOf(gather, term, implantNames(gather.scan.tables));
  if (answer !== 'said' || gather.held(at) === 'other person') return;
  put(gather, ['implants', '#', 'kind'], name, at, end, { entry: at });
  readDependent(gather, term);
  const where = sites.find((one) => one.at >= end && one.at <= end + 3);
  const isLed =
    inPlace.has(gather.low(end)) || where?.at === end || (where?.at === end + 1 && gather.low(end) === ',');
  if (where !== undefined && isLed)
    put(gather, ['implants', '#', 'where'], where.value, where.at, where.end, { entry: at });
}

const nearDevice = 10;

/** "Not dependent", "pacer dependent". */
function readDependent(gather: Gather, { at, end }: Term): void {
  const { to } = gather.sentenceAt(at);
  for (let place = end; place < Math.min(to, end + nearDevice); place += 1) {
    if (gather.low(place) !== 'dependent' || gather.isTaken(place)) continue;
    const denial = [place - 1, place - 2].find((one) => /^(?:not|non)$/.test(gather.low(one)));
    const from = denial ?? place;
    put(gather, ['implants', '#', 'dependent'], denial === undefined ? 'yes' : 'no', from, place + 1, {
      entry: at,
    });
    return;
  }
}

function isDevice(gather: Gather, { at, end }: Term): boolean {
  const { text, words } = gather.scan;
  const [from, to] = [words[at]!.from, words[end - 1]!.to];
  // "ICD-10" is a code.
  if (isOtherShort(text.slice(from, to).toUpperCase(), text.slice(0, from), text.slice(to))) return false;
  return end - at > 1 || ofImplant.has(gather.low(at)) || gather.low(at).length > 8;
}

const onMedicine = wordSet(
  'on takes taking meds medications medication medicines uses with : anticoagulated continues',
);
const ended = wordSet(
  'start started starting begin began begun prescribed stopped held hold holding off discontinued quit stop avoid restarted',
);

/** Reads medicines that a patient takes. */
export function readMedicines(gather: Gather): void {
  const { tables } = gather.scan;
  for (const term of gather.freeTerms) {
    const claim = claimOf(term, 'medicine');
    const { at, end } = term;
    if (claim === undefined || claim.row.name === 'none' || gather.held(at) !== undefined) continue;
    const { from } = gather.sentenceAt(at);
    const clause = gather.clauseAt(at);
    if (
      (!gather.has(onMedicine, from, at) && !isDosed(gather, term)) ||
      gather.has(ended, clause.from, clause.to) ||
      gather.has(planning, from, at) ||
      isInAllergies(gather, from, at)
    )
      continue;
    const answers = [
      answerOf(gather, term, thinnerNames(tables)),
      answerOf(gather, term, medicineNames(tables)),
    ];
    if (answers.some((answer) => answer !== undefined && answer !== 'said')) continue;
    put(gather, ['medications'], claim.row.name, at, end, { several: true });
  }
  readDeniedAll(gather, 'medications', ofMedicines);
  readHeadedNone(gather, 'medications', wordSet('medications meds medication'));
}

/** "Sertraline 100 mg daily": a medicine that opens a clause, with how often; not what is prescribed today. */
function isDosed(gather: Gather, { at, end }: Term): boolean {
  const clause = gather.clauseAt(at);
  const sentence = gather.sentenceAt(at);
  return (
    clause.from === at &&
    gather.has(often, end, Math.min(clause.to, end + 4)) &&
    !gather.has(prescribed, sentence.from, sentence.to)
  );
}
const often = wordSet('daily nightly bid tid qd qhs qam prn weekly');
const planning = wordSet('plan rx');
const prescribed = wordSet('prescribed rx start started given sent begin begun x7');

/** Whether a name is in a list of allergies: nothing after the last word of them says that it is taken. */
function isInAllergies(gather: Gather, from: number, at: number): boolean {
  for (let place = at - 1; place >= from; place -= 1) {
    if (ofAllergy.has(gather.low(place))) return true;
    if (isTaking.has(gather.low(place))) return false;
  }
  return false;
}
const isTaking = wordSet(
  'takes taking on meds medications medication medicines uses anticoagulated continues',
);

const ofMedicines = wordSet('medications medicines meds medication drugs');
const ofProblems = wordSet('problems conditions illnesses history');
const general = wordSet('daily current regular known chronic medical significant past other prescription');

/** "No medications", "takes no medicines": a denial of the whole kind. */
function readDeniedAll(gather: Gather, key: string, kinds: ReadonlySet<string>): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (low !== 'no' && low !== 'denies' && low !== 'none') continue;
    let place = at + 1;
    while (general.has(gather.low(place))) place += 1;
    if (
      !kinds.has(gather.low(place)) ||
      (key === 'conditions' && place === at + 1) ||
      gather.isTaken(at, place + 1)
    )
      continue;
    if (/^(?:except|other|but|changes?|allergies)$/.test(gather.low(place + 1))) continue;
    put(gather, [key], 'none', at, place + 1, { several: true });
  }
}

const ofCondition = wordSet('history hx h/o pmh has conditions condition with diabetic');

/** Whether an abbreviation of two or three letters is typed as one. */
function isSpelled(gather: Gather, { at, end }: Term): boolean {
  const { text, low } = gather.word(at)!;
  if (end - at > 1 || low.length > 3) return true;
  return text === text.toUpperCase() && gather.word(end)?.low !== '·';
}

/** Reads lasting conditions of a patient. */
export function readConditions(gather: Gather): void {
  for (const term of gather.freeTerms) {
    const { at, end } = term;
    if (isCondition(gather, term) && isOfPatient(gather, term))
      put(gather, ['conditions'], plainOf(gather.scan, at, end), at, end, { several: true });
  }
  readPregnancy(gather);
  readDeniedAll(gather, 'conditions', ofProblems);
  readHeadedNone(gather, 'conditions', wordSet('conditions pmh'));
}

/** "Currently 22 weeks pregnant". */
function readPregnancy(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (low !== 'pregnant' || gather.held(at) !== undefined || gather.isTaken(at)) continue;
    const from = gather.word(at - 1)?.unit === 'weeks' && !gather.isTaken(at - 1) ? at - 1 : at;
    put(gather, ['conditions'], plainOf(gather.scan, from, at + 1), from, at + 1, { several: true });
  }
}

/** Whether a term is a condition, and not what a sample is taken for. */
function isCondition(gather: Gather, term: Term): boolean {
  const claim = claimOf(term, 'condition');
  const hold = gather.held(term.at);
  if (claim === undefined || claim.row.name === 'none' || (hold !== undefined && hold !== 'past'))
    return false;
  return claimOf(term, 'diagnosis') === undefined && isSpelled(gather, term);
}

/** Whether a condition is mentioned the patient: after "history of" and its like, or all that a clause says. */
function isOfPatient(gather: Gather, { at, end, claims }: Term): boolean {
  const { from, to } = gather.sentenceAt(at);
  if (gather.has(ofQuestion, from, to)) return false;
  const clause = gather.clauseAt(at);
  const isAlone =
    clause.from === at && clause.to - end <= 1 && claims.every(({ table }) => table === 'condition');
  return isAlone || gather.has(ofCondition, from, at);
}

const ofQuestion = wordSet(
  'rule r/o suspect suspicious concern concerning family mother father differential',
);
