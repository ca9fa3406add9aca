import type { WordRow } from '../../../reference/types.ts';
import type { Match } from '../phrase-index.ts';
import { tokensOf, type Token } from '../phrase-tokens.ts';
import { cueAt, role, type Roles } from './cue-index.ts';
import type { Lookup } from './lookup.ts';

/** What parts two words: nothing, the comma of a list, an answer ("pacemaker: no"), a bracket, or the end of a statement. */
export type Mark = 'comma' | 'answer' | 'open' | 'close' | 'question' | 'stop';

/** A name, a cue, another word or a mark of a text, at characters `from` to `to`. */
export interface Part<Row> {
  readonly from: number;
  readonly to: number;
  /** What it names, of the table that is looked for; empty where nothing. */
  readonly rows: readonly Row[];
  /** Whether it names something of the same kind, danger or not. */
  readonly name: boolean;
  readonly roles: Roles;
  /** A year or another number. */
  readonly number: 'year' | 'other' | undefined;
  readonly mark: Mark | undefined;
  /** Whether one of its words was typed otherwise. */
  readonly slip?: boolean;
}

const marks: Readonly<Record<string, Mark>> = {
  ',': 'comma',
  ';': 'stop',
  '.': 'stop',
  '!': 'stop',
  '\n': 'stop',
  ':': 'answer',
  '>': 'answer',
  '(': 'open',
  ')': 'close',
  '?': 'question',
};

/** Abbreviations whose full stop ends no statement. */
const stopped: ReadonlySet<string> = new Set(['incl', 'neg', 'pos', 'approx', 'dr', 'vs']);

const year = /^(?:19|20)\d\d$/;
const digit = /^\d/;

/** The names, cues and marks of a text in its order; undefined where the text names nothing of the table. */
export function partsOf<Row extends WordRow>(
  text: string,
  lookup: Lookup<Row>,
  tokens: readonly Token[],
): readonly Part<Row>[] | undefined {
  if (!lookup.isNamedIn(tokens)) return undefined;
  const parts = read(text, tokens, lookup);
  return parts.some(({ rows }) => rows.length > 0) ? parts : undefined;
}

/** The same, of a text that need not name anything of the table. */
export const allPartsOf = <Row extends WordRow>(text: string, lookup: Lookup<Row>): readonly Part<Row>[] =>
  read(text, tokensOf(text), lookup);

function read<Row extends WordRow>(
  text: string,
  tokens: readonly Token[],
  lookup: Lookup<Row>,
): readonly Part<Row>[] {
  const parts: Part<Row>[] = [];
  for (let at = 0; at < tokens.length;) {
    const before = gapMark<Row>(text, tokens, at);
    if (before !== undefined) parts.push(before);
    const { part, end } = partAt(tokens, at, lookup);
    parts.push(part);
    at = end;
  }
  return parts;
}

function partAt<Row extends WordRow>(
  tokens: readonly Token[],
  at: number,
  lookup: Lookup<Row>,
): { readonly part: Part<Row>; readonly end: number } {
  const mark = markAt(tokens, at);
  if (mark !== undefined) return { part: partOf(tokens, at, at + 1, { mark }), end: at + 1 };
  const whole = cueAt(lookup.cues, tokens, at);
  const name = nameAt(tokens, at, lookup, whole?.end ?? at);
  if (name !== undefined) return name;
  const cue = whole === undefined ? undefined : cueBefore(tokens, at, whole, lookup);
  if (cue !== undefined) return { part: partOf(tokens, at, cue.end, { roles: cue.value }), end: cue.end };
  const { text } = tokens[at]!;
  const number = year.test(text) ? 'year' : digit.test(text) ? 'other' : undefined;
  return { part: partOf(tokens, at, at + 1, { number }), end: at + 1 };
}

/** A cue, or what is left of it before a name that begins within it and goes beyond it: "no label" in "had no label". */
function cueBefore<Row extends WordRow>(
  tokens: readonly Token[],
  at: number,
  cue: Match<Roles>,
  lookup: Lookup<Row>,
): Match<Roles> | undefined {
  for (let place = at + 1; place < cue.end; place += 1)
    if ((lookup.termAt(tokens, place)?.end ?? 0) > cue.end)
      return cueAt(lookup.cues, tokens.slice(0, place), at);
  return cue;
}

/** The name at a token, where no cue that is longer begins there. */
function nameAt<Row extends WordRow>(
  tokens: readonly Token[],
  at: number,
  lookup: Lookup<Row>,
  cueEnd: number,
): { readonly part: Part<Row>; readonly end: number } | undefined {
  const term = lookup.termAt(tokens, at);
  const kin = lookup.kinAt(tokens, at);
  const isKin = (kin?.end ?? 0) > (term?.end ?? 0);
  if (term !== undefined && !isKin && term.end >= cueEnd && !isTwo(tokens, at, term.end, lookup))
    return termPart(tokens, at, term);
  if (kin === undefined || kin.end <= cueEnd) return undefined;
  return { part: partOf(tokens, at, kin.end, { name: true }), end: kin.end };
}

function termPart<Row>(
  tokens: readonly Token[],
  at: number,
  { value, end: last }: Match<readonly Row[]>,
): { readonly part: Part<Row>; readonly end: number } {
  // "Red meat allergy" says what it is.
  const roles = tokens[last - 1]!.text.startsWith('allerg') ? role.tail : 0;
  const slip = tokens.slice(at, last).some((token) => token.slip === true);
  const end = isGroup(tokens, last) ? last + 1 : last;
  return { part: partOf(tokens, at, end, { rows: value, name: true, roles, slip }), end };
}

/** "Caine family" is a group of drugs; "family history" and "family member" are of relatives. */
function isGroup(tokens: readonly Token[], at: number): boolean {
  const [name, family, next] = [tokens[at - 1]!, tokens[at], tokens[at + 1]];
  return family?.text === 'family' && family.from === name.to + 1 && !ofRelatives.has(next?.text ?? '');
}
const ofRelatives: ReadonlySet<string> = new Set(['history', 'hx', 'member', 'members']);

/** Whether a name with a comma in it is none: what is after the comma begins a longer name of its own. */
function isTwo<Row extends WordRow>(
  tokens: readonly Token[],
  at: number,
  end: number,
  lookup: Lookup<Row>,
): boolean {
  const comma = tokens.slice(at, end).findIndex(({ text }) => text === ',') + at;
  return comma > at && (lookup.termAt(tokens, comma + 1)?.end ?? 0) > end;
}

type Told<Row> = Partial<Omit<Part<Row>, 'from' | 'to'>>;

const partOf = <Row>(tokens: readonly Token[], at: number, end: number, told: Told<Row>): Part<Row> => ({
  from: tokens[at]!.from,
  to: tokens[end - 1]!.to,
  rows: told.rows ?? [],
  name: told.name ?? false,
  roles: told.roles ?? 0,
  number: told.number,
  mark: told.mark,
  ...(told.slip === true ? { slip: true } : {}),
});

function markAt(tokens: readonly Token[], at: number): Mark | undefined {
  const { text, from, to } = tokens[at]!;
  const mark = marks[text];
  if (mark === undefined || text !== '.') return mark;
  const before = tokens[at - 1];
  const after = tokens[at + 1];
  if (before === undefined || after === undefined) return mark;
  // "2.5%", "D.C." and "incl." end nothing.
  if (before.to === from && after.from === to && digit.test(after.text)) return undefined;
  return stopped.has(before.text) ? undefined : mark;
}

const dash = /\s-+>?\s|[–—]/;

/** What is between two words and is no token: a slash and a plus join, a dash between spaces and an equals sign answer. */
function gapMark<Row>(text: string, tokens: readonly Token[], at: number): Part<Row> | undefined {
  const from = at === 0 ? 0 : tokens[at - 1]!.to;
  const to = tokens[at]!.from;
  if (to - from < 1 || (to - from === 1 && text[from] === ' ')) return undefined;
  const gap = text.slice(from, to);
  const told: Told<Row> | undefined = /[=→]/.test(gap)
    ? { mark: 'answer' }
    : /[/+&]/.test(gap)
      ? { roles: role.and | role.or }
      : dash.test(gap) && at > 0
        ? { mark: 'answer' }
        : /[[\]{}"]/.test(gap)
          ? { mark: 'comma' }
          : undefined;
  if (told === undefined) return undefined;
  return { from, to, rows: [], name: false, roles: 0, number: undefined, mark: undefined, ...told };
}
