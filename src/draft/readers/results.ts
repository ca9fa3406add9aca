import { wayOf } from '../../followup/telling.ts';
import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { plainOf } from '../scan.ts';
import { datesIn, type DateNamed } from './dates.ts';

const leads = wordSet('showed shows showing revealed reveals demonstrated as : is was found');
const arrived = wordSet('received resulted dated reported pathology path result results report');
const nearDate = 3;
const longestDiagnosis = 30;

/** What was done with a report is no part of it. */
const afterwards = wordSet('reviewed discussed told notified informed called');

const put = (gather: Gather, key: readonly string[], value: string, at: number, end: number): void => {
  gather.put({
    level: 'procedure',
    key: ['specimen', '#', 'results', '0', ...key],
    value,
    at,
    end,
    entry: 0,
  });
};

/** Reads what a laboratory reported, when, and who was mentioned it on which day. */
export function readResults(gather: Gather): void {
  const dates = datesIn(gather);
  let seen = -1;
  for (const at of gather.scan.words.keys()) {
    const sentence = gather.sentenceAt(at);
    if (gather.held(at) !== 'report' || sentence.from === seen) continue;
    seen = sentence.from;
    readReport(gather, at, sentence.to, dates);
  }
  for (const date of dates) if (!gather.isTaken(date.at, date.end)) readTold(gather, date);
}

function readReport(gather: Gather, from: number, to: number, dates: readonly DateNamed[]): void {
  const date = dates.find(
    (one) => one.at >= from && one.at < to && gather.has(arrived, one.at - nearDate, one.at),
  );
  if (date !== undefined && !gather.isTaken(date.at, date.end))
    put(gather, ['received'], date.date, date.at, date.end);
  const lead = gather.scan.words.findIndex(({ low }, at) => at >= from && at < to && leads.has(low));
  if (lead >= 0) readDiagnosis(gather, lead + 1, to);
}

function readDiagnosis(gather: Gather, from: number, to: number): void {
  let [first, end] = [from, to];
  for (let at = first; at < end; at += 1) if (afterwards.has(gather.low(at))) end = at;
  while (end > first && gather.word(end - 1)!.kind !== 'word') end -= 1;
  while (first < end && (gather.word(first)!.kind === 'mark' || gather.low(first) === 'a')) first += 1;
  if (end <= first || end - first > longestDiagnosis || gather.isTaken(first, end)) return;
  put(gather, ['diagnosis'], plainOf(gather.scan, first, end), first, end);
}

const telling = wordSet('told informed notified spoke discussed');
const hearer = wordSet('patient pt');
const ofOther = wordSet('from of dated taken');
const about = wordSet('result results biopsy pathology path report diagnosis');
const ways = wordSet('telephone phone person video portal visit');

/** "Told the patient by phone on March 12, 2026": only where the day is said, and the words say that the patient heard it. */
function readTold(gather: Gather, { at, end, date }: DateNamed): void {
  const { from, to } = gather.sentenceAt(at);
  if (!gather.has(about, from, to) || !gather.has(telling, from, to) || !gather.has(hearer, from, to)) return;
  if (ofOther.has(gather.low(at - 1)) || wayOf(plainOf(gather.scan, from, to), gather.scan.tables) !== 'told')
    return;
  const hold = gather.held(at);
  if (hold !== undefined && hold !== 'report') return;
  put(gather, ['told', '0', 'on'], date, at, end);
  const way = gather.scan.words.findIndex(({ low }, place) => place >= from && place < to && ways.has(low));
  if (way >= 0 && !gather.isTaken(way))
    put(gather, ['told', '0', 'how'], gather.word(way)!.text, way, way + 1);
}
