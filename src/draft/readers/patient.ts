import type { Found, Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import type { Word } from '../speech/word.ts';

const put = (
  gather: Gather,
  key: string,
  value: string,
  at: number,
  end: number,
  more: Partial<Found> = {},
): void => {
  gather.put({ level: 'visit', key: ['patient', key], value, at, end, ...more });
};

const ageUnits = wordSet('years months weeks days');
const sexes: ReadonlyMap<string, string> = new Map([
  ['female', 'female'],
  ['woman', 'female'],
  ['girl', 'female'],
  ['lady', 'female'],
  ['f', 'female'],
  ['male', 'male'],
  ['man', 'male'],
  ['boy', 'male'],
  ['gentleman', 'male'],
  ['guy', 'male'],
  ['gal', 'female'],
  ['m', 'male'],
]);
const persons = wordSet('patient infant child toddler adult teenager pt individual veteran');
const nearSex = 4;

/** Reads age and sex: "64-year-old woman", `64yo M`, "age 64". */
export function readAge(gather: Gather): void {
  for (const [at, word] of gather.scan.words.entries()) {
    if (gather.held(at) === 'other person') continue;
    if (word.kind === 'quantity') readOld(gather, at);
    else if (/^\d{1,3}$/.test(word.digits ?? '')) readBareAge(gather, at);
    else if (word.low === 'age' || word.low === 'aged') readAged(gather, at);
    else if (isLoneLetter(gather, at)) putSex(gather, at);
    else if (word.low === 'sex' || word.low === 'gender')
      putSex(gather, gather.low(at + 1) === ':' ? at + 2 : at + 1);
  }
}

/** "DOB 8/14/1988, F, 61 kg": a letter between commas after what was said of the patient. */
function isLoneLetter(gather: Gather, at: number): boolean {
  const { from, to } = gather.clauseAt(at);
  const isOnly = from === at && gather.scan.words.slice(at + 1, to).every(({ kind }) => kind !== 'word');
  return (
    isOnly &&
    /^[FM]$/.test(gather.word(at)!.text) &&
    gather.low(at - 1) === ',' &&
    gather.isTaken(at - 2) &&
    gather.clauseAt(at - 1).sentence === gather.clauseAt(at).sentence
  );
}

const subjects = wordSet('she he patient pt himself herself ·');
const oldest = 110;

/** "72 M", "she is 45". */
function readBareAge(gather: Gather, at: number): void {
  const { digits, kind } = gather.word(at)!;
  if (gather.isTaken(at) || Number(digits) > oldest) return;
  const hasSex = kind === 'number' && sexes.has(gather.low(at + 1)) && isSex(gather, at + 1);
  const isSubject = gather.low(at - 1) === 'is' && subjects.has(gather.low(at - 2));
  const ends = gather.word(at + 1)?.kind !== 'word' || gather.low(at + 1) === 'and';
  if (!hasSex && !(isSubject && ends)) return;
  put(gather, 'age', `${digits} years`, at, at + 1);
  if (hasSex) putSex(gather, at + 1);
}

/** Whether a letter or a word after an age is the sex; "66M" is nothing else. */
const isSex = (gather: Gather, at: number): boolean =>
  gather.low(at).length > 1 ||
  (/^[FM]$/.test(gather.word(at)!.text) && gather.word(at)!.from === gather.word(at - 1)!.to) ||
  isEnd(gather, at + 1) ||
  gather.word(at + 1)?.kind !== 'word';

function readOld(gather: Gather, at: number): void {
  const word = gather.word(at)!;
  if (!ageUnits.has(word.unit!)) return;
  const typed = gather.scan.text.slice(word.from, word.to);
  const old = gather.low(at + 1) === 'old' ? at + 2 : at + 1;
  if (old === at + 1 && !/(?:y[/.]?o\.?|y)$/i.test(typed)) return;
  const place = sexAt(gather, old);
  const isPerson =
    place !== undefined ||
    persons.has(gather.low(old)) ||
    persons.has(gather.low(old + 1)) ||
    isEnd(gather, old);
  if (!isPerson) return;
  put(gather, 'age', word.text, at, old);
  if (place !== undefined) putSex(gather, place);
}

const afterAge = wordSet(
  '/ and who with presents presented presenting here is , . ( has was for comes seen with',
);

const isEnd = (gather: Gather, at: number): boolean =>
  gather.word(at) === undefined || gather.word(at)!.kind === 'line' || afterAge.has(gather.low(at));

function sexAt(gather: Gather, at: number): number | undefined {
  for (let place = at; place < at + nearSex; place += 1) {
    const word = gather.word(place);
    if (word?.kind === undefined || word.kind === 'mark' || word.kind === 'line') return undefined;
    if (!sexes.has(word.low)) continue;
    const isLetter = word.low.length === 1;
    return isLetter && place > at ? undefined : place;
  }
  return undefined;
}

function putSex(gather: Gather, at: number): void {
  const sex = sexes.get(gather.low(at));
  if (sex !== undefined) put(gather, 'sex', sex, at, at + 1);
}

function readAged(gather: Gather, at: number): void {
  const place = gather.low(at + 1) === ':' || gather.low(at + 1) === 'is' ? at + 2 : at + 1;
  const word = gather.word(place);
  if (word === undefined || gather.isTaken(place)) return;
  if (word.kind === 'quantity' && ageUnits.has(word.unit!))
    put(gather, 'age', word.text, place, place + 1, { rests: [[at, at + 1]] });
  else if (/^\d{1,3}$/.test(word.digits ?? '') && (word.kind === 'number' || word.kind === 'word'))
    put(gather, 'age', `${word.digits} years`, place, place + 1, { rests: [[at, at + 1]] });
}

const weighing = wordSet('weight wt weighs weighed weighing');
const masses = wordSet('kg lb');
const betweenWeight = wordSet(': is was of at today patient the in clinic');
const waysOfWeighing: readonly (readonly [string, string])[] = [
  ['measured today', 'measured'],
  ['weighed today', 'measured'],
  ['measured in clinic', 'measured'],
  ['weighed in clinic', 'measured'],
  ['on our scale', 'measured'],
  ['measured', 'measured'],
  ['by his own account', 'stated'],
  ['by her own account', 'stated'],
  ['by report', 'stated'],
  ['per patient', 'stated'],
  ['per chart', 'chart'],
  ['from the chart', 'chart'],
  ['from chart', 'chart'],
  ['in the chart', 'chart'],
  ['stated', 'stated'],
  ['self-reported', 'stated'],
  ['reported', 'stated'],
];

/** Reads the weight and how it was learned. */
export function readWeight(gather: Gather): void {
  for (const [at, { kind, unit, text }] of gather.scan.words.entries()) {
    if (kind !== 'quantity' || !masses.has(unit!) || gather.held(at) === 'other person') continue;
    let before = at - 1;
    while (before > at - 5 && betweenWeight.has(gather.low(before))) before -= 1;
    const isHeaded = weighing.has(gather.low(before));
    if (!isHeaded && !standsAlone(gather, at)) continue;
    put(gather, 'weight', text, at, at + 1, isHeaded ? { rests: [[before, before + 1]] } : {});
    const { to } = gather.sentenceAt(at);
    const way = waysOfWeighing.find(([words]) => placeOf(gather, words, at, to) >= 0);
    if (way !== undefined) {
      const place = placeOf(gather, way[0], at, to);
      put(gather, 'weighed', way[1], place, place + way[0].split(/[ -]/).length);
    }
  }
}

const tall = wordSet('height ht tall stands');
const lengths = wordSet('cm in');

/** Reads the height: "height 178 cm". */
export function readHeight(gather: Gather): void {
  for (const [at, { kind, unit, text }] of gather.scan.words.entries()) {
    if (kind !== 'quantity' || !lengths.has(unit!) || gather.isTaken(at) || gather.held(at) !== undefined)
      continue;
    const head = [at - 1, at - 2].find((place) => tall.has(gather.low(place)));
    if (head !== undefined) put(gather, 'height', text, at, at + 1, { rests: [[head, head + 1]] });
  }
}

/** Whether a mass is all that is said between two marks, or follows an age and sex. */
function standsAlone(gather: Gather, at: number): boolean {
  const { from } = gather.clauseAt(at);
  const next = gather.word(at + 1);
  const ends = next?.kind !== 'word' || /^(?:by|per|with|w\/|on|measured|stated|here)$/.test(next.low);
  return ends && (from === at || gather.isTaken(at - 1));
}

function placeOf(gather: Gather, words: string, from: number, to: number): number {
  const parts = words.split(/[ -]/);
  for (let at = from; at + parts.length <= to; at += 1)
    if (parts.every((part, index) => gather.low(at + index) === part)) return at;
  return -1;
}

const betweenId = wordSet(': # is number no id num -');
const longestId = 12;

/** Reads a chart number: what is together without a space, or digits that are spoken one by one. */
export function readId(gather: Gather): void {
  for (const at of gather.scan.words.keys()) {
    if (!isIdHead(gather, at)) continue;
    let from = at + 1;
    while (betweenId.has(gather.low(from))) from += 1;
    if (gather.word(from) === undefined || gather.isTaken(from)) continue;
    const { value, end } = spokenId(gather, from) ?? typedId(gather, from);
    if (/\d/.test(value) && value.length <= longestId) put(gather, 'id', value, from, end);
  }
}

const idHeads = wordSet('chart record patient pt');

const isIdHead = (gather: Gather, at: number): boolean =>
  gather.low(at) === 'mrn' ||
  (idHeads.has(gather.low(at)) && /^(?:number|no|#|id)$/.test(gather.low(at + 1))) ||
  ((gather.low(at) === 'pt' || gather.low(at) === 'chart') && /^0?\d{3,}$/.test(gather.low(at + 1)));

/** All that is together without a space. */
function typedId(gather: Gather, from: number): { readonly value: string; readonly end: number } {
  const { words, text } = gather.scan;
  let end = from + 1;
  while (isGlued(words[end - 1]!, words[end])) end += 1;
  return { value: text.slice(words[from]!.from, words[end - 1]!.to), end };
}

const isGlued = (one: Word, next: Word | undefined): boolean =>
  next !== undefined && next.kind !== 'mark' && next.kind !== 'line' && (next.from === one.to || next.joined);

/** "Two zero four one seven". */
function spokenId(
  gather: Gather,
  from: number,
): { readonly value: string; readonly end: number } | undefined {
  let value = '';
  let end = from;
  for (; ; end += 1) {
    const word = gather.word(end);
    const digit = word?.low === 'oh' ? '0' : word?.kind === 'word' ? word.digits : undefined;
    if (digit?.length !== 1) break;
    value += digit;
  }
  return value.length < 3 ? undefined : { value, end };
}
