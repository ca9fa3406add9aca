import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
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
    gather.put({
      level: 'procedure',
      key: ['specimen', '#', 'label'],
      value: label,
      at: place,
      end: place + 1,
      rests: [[at, at + 1]],
    });
  }
}

function labelAt(gather: Gather, at: number): string | undefined {
  const word = gather.word(at);
  if (word === undefined) return undefined;
  if (word.kind === 'number' && /^\d$/.test(word.text)) return word.text;
  if (!/^[a-h]$/.test(word.low)) return undefined;
  const next = gather.word(at + 1);
  const isLabel = word.low !== 'a' || next?.kind !== 'word' || after.has(next.low);
  const isCapital = word.text !== word.low && gather.scan.text !== gather.scan.text.toUpperCase();
  return isLabel || isCapital ? word.text.toUpperCase() : undefined;
}

const things = wordSet('specimen tissue sample pathology path histology lab');
const tests = wordSet('culture cultures dif immunofluorescence stain stains saline');
const notSent: readonly string[] = ['not sent', 'not submitted', 'discarded', 'no specimen', 'no tissue'];

/** Reads that nothing was sent, with what is said about it to the end of the sentence. */
export function readNotSent(gather: Gather): void {
  for (const at of gather.scan.words.keys()) {
    const isSaid = notSent.some((words) =>
      words.split(' ').every((part, index) => gather.low(at + index) === part),
    );
    if (isSaid && !gather.isTaken(at)) putNotSent(gather, at);
  }
}

function putNotSent(gather: Gather, at: number): void {
  const { from } = gather.clauseAt(at);
  const { to } = gather.sentenceAt(at);
  if (gather.has(tests, from, to) || (from !== at && !gather.has(things, from, to))) return;
  if (gather.held(at) !== undefined && gather.held(at) !== 'denied') return;
  let end = to;
  while (isOutside(gather, end - 1)) end -= 1;
  if (gather.isTaken(from, end)) return;
  const value = plainOf(gather.scan, from, end);
  gather.put({ level: 'procedure', key: ['specimen', '#', 'not-sent'], value, at: from, end });
}

/** Whether a word at the end of a statement is none of it. */
const isOutside = (gather: Gather, at: number): boolean =>
  gather.word(at)!.kind === 'mark' || gather.word(at)!.kind === 'line' || gather.low(at) === 'and';
