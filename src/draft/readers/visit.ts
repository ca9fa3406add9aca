import { addDays } from '../../note/values/days.ts';
import type { Found, Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { claimOf } from '../scan.ts';
import { datesIn, type DateNamed } from './dates.ts';

const ofBirth = wordSet('dob born birth birthdate');
const ofVisit = wordSet('visit service dos seen date today procedure encounter');
const otherwise = wordSet(
  'since last previous prior result results received sent due out removal return returns expires exp until pathology path report told called spoke notified informed',
);
const ofCall = wordSet('telephone phone call called');
const isOther: ReadonlySet<string> = new Set([...otherwise, ...ofCall]);
const near = 5;

const put = (
  gather: Gather,
  key: readonly string[],
  value: string,
  at: number,
  end: number,
  more: Partial<Found> = {},
): void => {
  gather.put({ level: 'visit', key, value, at, end, ...more });
};

/** Reads the day of the visit and the day of birth, and from them when sutures are due. */
export function readDates(gather: Gather): void {
  const dates = datesIn(gather);
  const births: DateNamed[] = [];
  for (const one of dates) {
    if (gather.held(one.at) !== undefined) continue;
    const { from } = gather.sentenceAt(one.at);
    const first = Math.max(from, one.at - near);
    if (gather.has(ofVisit, one.at - 1, one.at) && !gather.has(ofCall, first, one.at)) putVisit(gather, one);
    else if (gather.has(ofBirth, first, one.at)) births.push(one);
    else if (opensVisit(gather, one.at, from, first)) putVisit(gather, one);
  }
  const rest = dates.filter((one) => isOpen(gather, one) && !births.includes(one));
  const isSaid = gather.found.some(({ key }) => key[0] === 'visit');
  if (!isSaid && rest.length === 1) putVisit(gather, rest[0]!);
  for (const one of births) putBirth(gather, one);
  readDue(gather, dates);
}

/** Whether a date is headed as that of the visit, or opens the text, and nothing else is said of it. */
const opensVisit = (gather: Gather, at: number, from: number, first: number): boolean =>
  !gather.has(isOther, first, at) && (gather.has(ofVisit, first, at) || (at <= first + 1 && from === 0));

/**
 * A birth of which the century was not typed: the one that leaves the patient between birth and the oldest age. Without
 * the day of the visit, or where both do, nobody can tell.
 */
function putBirth(gather: Gather, { at, end, date, isShort }: DateNamed): void {
  const visit = gather.found.find(({ key }) => key[0] === 'visit')?.value.slice(0, 10);
  const centuries = isShort === true ? [date, date.replace(/^20/, '19')] : [date];
  const possible =
    isShort === true
      ? centuries.filter(
          (one) =>
            visit !== undefined &&
            one <= visit &&
            Number(visit.slice(0, 4)) - Number(one.slice(0, 4)) < oldest,
        )
      : centuries;
  if (possible.length === 1) put(gather, ['patient', 'born'], possible[0]!, at, end);
}
const oldest = 105;

/** Whether a date is nothing else than that of the visit. */
function isOpen(gather: Gather, { at, end }: DateNamed): boolean {
  const { from, to } = gather.clauseAt(at);
  return (
    !gather.isTaken(at, end) &&
    gather.held(at) === undefined &&
    !gather.has(isOther, from, to) &&
    !gather.has(sutures, from, to)
  );
}

function putVisit(gather: Gather, { at, end, date }: DateNamed): void {
  const place = gather.low(end) === 'at' || gather.low(end) === ',' ? end + 1 : end;
  const time = timeAt(gather, place);
  put(gather, ['visit'], time === undefined ? date : `${date} ${time.value}`, at, time?.end ?? end);
}

/** A clock time at a place, as a day has it; undefined where none is there. */
export function timeAt(
  gather: Gather,
  at: number,
): { readonly value: string; readonly end: number } | undefined {
  const word = gather.word(at);
  if (word?.kind !== 'time') return undefined;
  const half = /^([ap])\.?m\.?$/.exec(gather.low(at + 1))?.[1];
  const [hours = 0, minutes = 0] = word.text.split(':').map(Number);
  const full = half === undefined ? hours : inDay(hours, half);
  if (full > 23) return undefined;
  const value = `${String(full).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`;
  return { value, end: half === undefined ? at + 1 : at + 2 };
}

/** The hour of the day; more than a day has where the clock has no such hour. */
const inDay = (hours: number, half: string): number =>
  hours === 0 || hours > 12 ? 24 : (hours % 12) + (half === 'p' ? 12 : 0);

const sutures = wordSet('suture sutures stitches stitch');
const out = wordSet('removal removed remove out removing s/r');
const daysIn: Readonly<Record<string, number>> = { days: 1, weeks: 7 };

/** "Sutures out in 10 days", as a day where that of the visit is said, or on a day. */
function readDue(gather: Gather, dates: readonly DateNamed[]): void {
  const visit = gather.found.find(({ key }) => key[0] === 'visit');
  for (const [at, { kind, unit, digits }] of gather.scan.words.entries()) {
    if (kind !== 'quantity' || daysIn[unit!] === undefined || !/^\d+$/.test(digits!)) continue;
    if (gather.isTaken(at) || !isDue(gather, at)) continue;
    const value =
      visit === undefined
        ? `in ${digits} ${unit}`
        : addDays(visit.value.slice(0, 10), Number(digits) * daysIn[unit!]!);
    gather.put({
      level: 'procedure',
      key: ['sutures-due'],
      value,
      at,
      end: at + 1,
      rests: visit === undefined ? [] : [[visit.at, visit.end]],
    });
  }
  for (const { at, end, date } of dates)
    if (!gather.isTaken(at, end) && isDue(gather, at))
      gather.put({ level: 'procedure', key: ['sutures-due'], value: date, at, end });
}

const doneBefore = wordSet('done performed excised biopsied placed taken excision biopsy surgery');
const after = wordSet('in at on for after out removed removal due');

function isDue(gather: Gather, at: number): boolean {
  const { from, to } = gather.sentenceAt(at);
  if (!after.has(gather.low(at - 1)) && gather.low(at - 1) !== ':') return false;
  if (gather.held(at) === 'past' || gather.held(at) === 'denied' || gather.held(at) === 'other person')
    return false;
  // "For suture removal of the excision done on February 16": the day is that of the excision.
  if (gather.has(doneBefore, at - 3, at)) return false;
  for (let place = from; place < to; place += 1)
    if (sutures.has(gather.low(place)) && gather.has(out, place - 4, place + 6)) return true;
  return false;
}

const generic: ReadonlySet<string> = new Set(['obtained']);

/** Reads how consent was given: the most precise of the words in its clause. */
export function readConsent(gather: Gather): void {
  const { scan } = gather;
  for (const [at, { low }] of scan.words.entries()) {
    if (!low.startsWith('consent')) continue;
    const clause = gather.clauseAt(at);
    const from = clause.from;
    const to = gather.low(at + 1) === ':' ? gather.sentenceAt(at).to : clause.to;
    const terms = scan.terms.filter(
      (term) => term.at >= from && term.end <= to && claimOf(term, 'consent') !== undefined,
    );
    const free = terms.filter(
      (term) =>
        gather.held(term.at) === undefined ||
        gather.held(term.at) === 'planned' ||
        (gather.held(term.at) === 'other person' && claimOf(term, 'consent')!.row.name === 'guardian'),
    );
    const named = free.map((term) => ({ term, name: claimOf(term, 'consent')!.row.name }));
    const best =
      named.find(({ name }) => name === 'written') ??
      named.find(({ name }) => !generic.has(name) && name !== 'declined') ??
      named[0];
    if (best === undefined || best.name === 'declined') continue;
    put(gather, ['consent'], best.name, best.term.at, best.term.end, { rests: [[at, at + 1]] });
    return;
  }
}

const done = wordSet('performed done completed held called taken observed conducted');

/** Reads that a time-out was held, and when. */
export function readTimeOut(gather: Gather): void {
  for (const at of gather.scan.words.keys()) {
    const end = timeOutEnd(gather, at);
    if (end !== undefined && putTimeOut(gather, at, end)) return;
  }
}

function timeOutEnd(gather: Gather, at: number): number | undefined {
  if (gather.low(at) === 'timeout') return at + 1;
  return gather.low(at) === 'time' && gather.low(at + 1) === 'out' ? at + 2 : undefined;
}

const longestTimeOut = 8;

function putTimeOut(gather: Gather, at: number, end: number): boolean {
  const { to } = gather.sentenceAt(at);
  for (let place = end; place < Math.min(to, end + longestTimeOut); place += 1) {
    if (gather.held(place) !== undefined && gather.held(place) !== 'planned') return false;
    const time = timeAt(gather, place);
    if (time === undefined && !done.has(gather.low(place))) continue;
    const later = time ?? timeAt(gather, gather.low(place + 1) === 'at' ? place + 2 : place + 1);
    put(gather, ['time-out'], later?.value ?? 'done', at, later?.end ?? place + 1);
    return true;
  }
  return false;
}

const care = wordSet('care instructions aftercare');
const given = wordSet('given reviewed discussed provided explained went handed sent printed emailed');
const ways: ReadonlyMap<string, string> = new Map([
  ['verbal', 'spoken'],
  ['verbally', 'spoken'],
  ['oral', 'spoken'],
  ['orally', 'spoken'],
  ['spoken', 'spoken'],
  ['written', 'printed'],
  ['writing', 'printed'],
  ['printed', 'printed'],
  ['handout', 'printed'],
  ['sheet', 'printed'],
  ['leaflet', 'printed'],
  ['email', 'email'],
  ['emailed', 'email'],
]);

/** Reads how instructions for the wound were given. */
export function readAftercare(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    const way = ways.get(low);
    if (way === undefined || gather.isTaken(at) || gather.held(at) !== undefined) continue;
    const { from, to } = gather.sentenceAt(at);
    if (
      !gather.has(care, from, to) ||
      !gather.has(given, from, to) ||
      gather.has(wordSet('consent'), from, to)
    )
      continue;
    put(gather, ['aftercare', 'given'], way, at, at + 1, { several: true });
  }
}

const pictures = wordSet('photo photos photograph photographs photographed');
const taken = wordSet('taken obtained done captured photographed uploaded');
const dries = wordSet('dry dried');
const allows = wordSet('allowed let air left permitted to then');

/** Reads that a photograph was taken, and that the skin was left to dry. */
export function readYes(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (gather.isTaken(at) || gather.held(at) !== undefined) continue;
    const { to } = gather.clauseAt(at);
    if (pictures.has(low) && gather.has(taken, at, to))
      gather.put({ level: 'procedure', key: ['photo'], value: 'yes', at, end: at + 1, several: true });
    if (dries.has(low) && gather.has(allows, at - 3, at) && gather.low(at - 1) !== 'and')
      gather.put({ level: 'procedure', key: ['dry'], value: 'yes', at, end: at + 1, several: true });
  }
}

const staff: ReadonlyMap<string, string> = new Map([
  ['clinician', 'clinician'],
  ['surgeon', 'clinician'],
  ['provider', 'clinician'],
  ['physician', 'clinician'],
  ['scribe', 'scribe'],
  ['assistant', 'assistant'],
]);
const initials = /^(?:[a-z]\.){2,3}$/;
const beforeInitials = wordSet(': is was by');

/** Reads initials of the staff; a name goes nowhere. */
export function readStaff(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    const key = staff.get(low);
    if (key === undefined) continue;
    const place = beforeInitials.has(gather.low(at + 1)) ? at + 2 : at + 1;
    if (initials.test(gather.low(place)))
      put(gather, [key], gather.word(place)!.text, place, place + 1, { rests: [[at, at + 1]] });
  }
}
