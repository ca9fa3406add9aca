import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { draft, type Draft, type Fact } from '../../src/draft/draft.ts';
import { heard } from '../../src/draft/speech/heard.ts';
import { readers } from '../../src/note/values/readers.ts';
import { readSite } from '../../src/note/words/site.ts';
import type { WordTable } from '../../src/note/words/word-table.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import type { WordRow } from '../../src/reference/types.ts';

/** A fact as somebody wrote it down who did not see the code. */
interface Expected {
  readonly path: readonly (string | number)[];
  readonly value: string | number | boolean;
  readonly words: string;
  readonly at?: number;
  readonly or?: readonly (string | number)[];
}

type Words = string | { readonly words: string; readonly at: number };

export interface Text {
  readonly id: string;
  readonly text: string;
  readonly facts: readonly Expected[];
  readonly may?: readonly Expected[];
  readonly conflicts?: readonly { readonly path: readonly (string | number)[] }[];
  readonly 'not-facts'?: readonly Words[];
}

export interface Judged {
  readonly id: string;
  /** Facts that rest on what is not said of this visit, or that decide what the text leaves open. */
  readonly invented: readonly string[];
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
  readonly asked: number;
  readonly placed: number;
  readonly right: number;
}

const keyOf = (path: readonly (string | number)[]): string => path.join('.');
const last = (path: readonly (string | number)[]): string =>
  String(path.findLast((key) => typeof key === 'string'));

const wordTables: Readonly<Record<string, readonly WordTable<WordRow>[]>> = {
  method: [tables.methods],
  depth: [tables.depths],
  relation: [tables.relations],
  preparation: [tables.preparations],
  hemostasis: [tables.hemostasis],
  how: [tables.closures],
  material: [tables.materials],
  technique: [tables.techniques],
  layer: [tables.layers],
  medium: [tables.media],
  tests: [tables.tests],
  dressing: [tables.dressings],
  agent: [tables.agents],
  consent: [tables.consents],
  to: [tables.allergens, tables.agents, tables.otherMedicines, tables.bloodThinners],
  kind: [tables.implants],
  implants: [tables.implants],
  allergies: [tables.allergens],
  reaction: [tables.reactions],
  medications: [tables.bloodThinners, tables.cautions, tables.otherMedicines],
  conditions: [tables.cautions, tables.cardiacConditions, tables.otherConditions, tables.lengthening],
  instrument: [tables.instruments],
};
const readerOf: Readonly<Record<string, string>> = {
  volume: 'volume',
  concentration: 'concentration',
  epinephrine: 'dilution',
  amount: 'mass',
  buffered: 'mixture',
  margin: 'length',
  age: 'age',
  weight: 'mass',
  born: 'date',
  visit: 'moment',
  'sutures-due': 'date',
  'time-out': 'occasion',
  count: 'count',
  weighed: 'weighed',
  photo: 'yesno',
  dry: 'yesno',
  time: 'occasion',
};
const free: ReadonlySet<string> = new Set([
  'lesion',
  'question',
  'landmarks',
  'complications',
  'not-sent',
  'orientation',
]);
const same: Readonly<Record<string, string>> = {
  f: 'female',
  m: 'male',
  woman: 'female',
  man: 'male',
  verbal: 'spoken',
  written: 'printed',
  oral: 'spoken',
  verbally: 'spoken',
};

const plain = (text: string): string =>
  heard(text)
    .words.filter(({ kind }) => kind !== 'mark' && kind !== 'line')
    .map(({ low }) => low)
    .join(' ');

/** Whether two values are the same for who reads the note; `wanted` may be a part of a free text. */
export function isSame(path: readonly (string | number)[], got: string, wanted: string): boolean {
  const key = last(path);
  if (got.toLowerCase() === wanted.toLowerCase()) return true;
  if (free.has(key)) return plain(got).includes(plain(wanted));
  if (key === 'site' || key === 'where') return isSameSite(got, wanted);
  const rows = (text: string): unknown =>
    wordTables[key]?.map((table) => table.find(text)).find((row) => row !== undefined);
  const row = rows(wanted);
  if (row !== undefined && row === rows(got)) return true;
  const reader = key === 'size' ? (path.includes('closure') ? 'sutureSize' : 'dimensions') : readerOf[key];
  if (reader !== undefined) return isSameValue(reader, key, got, wanted);
  const [one, other] = [plain(got), plain(wanted)];
  return (same[one] ?? one) === (same[other] ?? other);
}

function isSameSite(got: string, wanted: string): boolean {
  const [one, other] = [readSite(got, tables.sites), readSite(wanted, tables.sites)];
  if (one === undefined || other === undefined) return false;
  return one.base === other.base && one.side === other.side && one.digit === other.digit;
}

/** How an amount was typed makes no other amount. */
const typed: ReadonlySet<string> = new Set(['typedAmount', 'typedUnit']);

function isSameValue(reader: string, key: string, got: string, wanted: string): boolean {
  const value = (text: string): string => {
    const read = readers.get(reader)!(text, key).value;
    return JSON.stringify(read ?? text, (name, part: unknown) => (typed.has(name) ? undefined : part));
  };
  return value(got) === value(wanted);
}

/** Judges a draft by the facts that somebody wrote down. */
export function judged(
  { id, text, facts, may = [], conflicts = [], 'not-facts': not = [] }: Text,
  made: Draft = draft(text, tables),
): Judged {
  const open = new Set(conflicts.map(({ path }) => keyOf(path)));
  const barred = not.flatMap((words) => spansOf(text, typeof words === 'string' ? { words } : words));
  const counted = made.facts.filter((fact) => !isNeither(fact, made.facts));
  const matches = (fact: Fact, { path, value, or = [] }: Expected): boolean =>
    keyOf(fact.path) === keyOf(path) && [value, ...or].some((one) => isSame(path, fact.value, String(one)));
  const invented: string[] = [];
  const wrong: string[] = [];
  for (const fact of counted) {
    const named = `${keyOf(fact.path)}: ${fact.value} ⟨${text.slice(fact.from, fact.to)}⟩`;
    const expected = [...facts, ...may].filter((one) => matches(fact, one));
    if (open.has(keyOf(fact.path)) || (expected.length === 0 && barred.some((span) => overlaps(fact, span))))
      invented.push(named);
    else if (expected.length === 0) wrong.push(named);
  }
  const missed = facts.filter((one) => !counted.some((fact) => matches(fact, one)));
  return {
    id,
    invented,
    wrong,
    missed: missed.map(({ path, value, words }) => `${keyOf(path)}: ${value} ⟨${words}⟩`),
    asked: facts.length,
    placed: facts.length - missed.length,
    right: counted.length - invented.length - wrong.length,
  };
}

/** `how: suture` beside a material, and a route, are neither asked for nor wrong. */
function isNeither({ path, value }: Fact, facts: readonly Fact[]): boolean {
  if (last(path) === 'route') return true;
  const material = keyOf([...path.slice(0, -1), 'material']);
  return last(path) === 'how' && value === 'suture' && facts.some((one) => keyOf(one.path) === material);
}

const overlaps = (one: { from: number; to: number }, other: { from: number; to: number }): boolean =>
  one.from < other.to && other.from < one.to;

function spansOf(
  text: string,
  { words, at }: { readonly words: string; readonly at?: number },
): readonly { from: number; to: number }[] {
  if (at !== undefined) return [{ from: at, to: at + words.length }];
  const spans: { from: number; to: number }[] = [];
  for (let from = text.indexOf(words); from >= 0; from = text.indexOf(words, from + 1))
    spans.push({ from, to: from + words.length });
  return spans;
}

export const textsOf = (file: string): readonly Text[] =>
  (parse(readFileSync(file, 'utf8')) as { drafts: readonly Text[] }).drafts;
