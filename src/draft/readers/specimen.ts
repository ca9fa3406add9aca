import { wordSet, type Gather } from '../gather.ts';
import { plainOf } from '../scan.ts';

const heads = wordSet('specimen specimens jar bottle container vial label labeled labelled cup part');
const between = wordSet('as label letter number # : was is were and it with');
const after = wordSet('was is in were to for sent and : , . ) ; formalin placed submitted from at of');

/** Reads labels of specimens: "specimen A", "labeled as B", "jar 1". */
export function readLabels(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (!heads.has(low) || gather.held(at) !== undefined) continue;
    let place = at + 1;
    while (between.has(gather.low(place)) && place < at + 4) place += 1;
    const label = labelAt(gather, place);
    if (label === undefined || gather.isTaken(place)) continue;
    gather.put({ level: 'procedure', key: ['specimen', '#', 'label'], value: label, at: place, end: place + 1, rests: [[at, at + 1]] });
  }
}

function labelAt(gather: Gather, at: number): string | undefined {
  const word = gather.word(at);
  if (word === undefined) return undefined;
  if (word.kind === 'number' && /^\d$/.test(word.text)) return word.text;
  if (!/^[a-h]$/.test(word.low)) return undefined;
  const next = gather.word(at + 1);
  const isLabel = word.low !== 'a' || next === undefined || next.kind !== 'word' || after.has(next.low);
  const isCapital = word.text !== word.low && gather.scan.text !== gather.scan.text.toUpperCase();
  return isLabel || isCapital ? word.text.toUpperCase() : undefined;
}

const things = wordSet('specimen tissue sample pathology path histology lab');
const notSent: readonly string[] = ['not sent', 'not submitted', 'discarded', 'no specimen', 'no tissue'];

/** Reads that nothing was sent. */
export function readNotSent(gather: Gather): void {
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const said = notSent.find((words) => words.split(' ').every((part, index) => gather.low(at + index) === part));
    if (said === undefined || gather.isTaken(at)) continue;
    const { from, to } = gather.clauseAt(at);
    if (!gather.has(things, from, to)) continue;
    if (gather.held(at) !== undefined && gather.held(at) !== 'denied') continue;
    gather.put({ level: 'procedure', key: ['specimen', '#', 'not-sent'], value: plainOf(gather.scan, from, trimmedEnd(gather, to)), at: from, end: trimmedEnd(gather, to) });
  }
}

const trimmedEnd = (gather: Gather, to: number): number => {
  let end = to;
  while (end > 0 && (gather.word(end - 1)!.kind === 'mark' || gather.word(end - 1)!.kind === 'line' || gather.low(end - 1) === 'and')) end -= 1;
  return end;
};
