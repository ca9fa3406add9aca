import { quoted } from '../note/text/quote.ts';
import type { Tables } from '../practice/tables.ts';
import type { Conflict, Fact, Path } from './assemble.ts';
import type { Span } from './speech/word.ts';

/** A value of the draft: where it is in the note. */
export interface Placed {
  readonly path: Path;
  /** Of the note. */
  readonly at: Span;
  /** Of the text. */
  readonly words: readonly Span[];
}

export interface Written {
  readonly note: string;
  readonly places: readonly Placed[];
}

/** What a note is written from. */
export interface Content {
  readonly text: string;
  readonly facts: readonly Fact[];
  readonly conflicts: readonly Conflict[];
  readonly remarks: readonly { readonly procedure: number | undefined; readonly text: string }[];
  /** Words that count after a correction, and what was said first. */
  readonly corrected: readonly { readonly counts: Span; readonly first: Span }[];
  readonly tables: Tables;
}

type Value = Scalar | Scalar[] | Branch;
type Branch = Map<string | number, Value>;

interface Scalar {
  readonly text: string;
  readonly path: Path;
  readonly words: readonly Span[];
  readonly comment?: string;
}

/** The keys of a note in the order in which they are written; what is not here comes after them. */
const order = (
  'wheal draft note-id visit clinician scribe assistant patient consent time-out for-all ' +
  'id initials born age sex weight weighed height allergies implants medications conditions skin ' +
  'site landmarks photo lesion question method size margin depth relation same-as instrument preparation dry anesthetic hemostasis closure sutures-due sutures-out specimen dressing complications codes ' +
  'procedures aftercare events ' +
  'to reaction kind where dependent agent concentration epinephrine volume amount buffered preservative-free route lot time how material technique count layer not-sent label medium tests orientation collected sent results received diagnosis told on how given language helper remarks'
).split(' ');
const rank: ReadonlyMap<string, number> = new Map(order.map((key, at) => [key, at]));

const waiting = '??';

/** Writes a draft note: each value of the facts, `??` where a careful record has more, and what was not placed under remarks. */
export function written(content: Content): Written {
  const root: Branch = new Map<string | number, Value>([
    ['wheal', own('1')],
    ['draft', own('yes')],
  ]);
  for (const { path, value, rests, ...span } of content.facts)
    put(root, path, { text: value, path, words: [span, ...rests], ...corrected(content, [span, ...rests]) });
  for (const { path, words } of content.conflicts)
    put(root, path, { text: waiting, path, words, comment: said(content.text, words) });
  fillGaps(root, content.tables);
  for (const { procedure, text } of content.remarks) remark(root, procedure, text);
  const writer = new Writer();
  writer.branch(root, '');
  return { note: writer.text, places: writer.places };
}

/** A value that was said otherwise first stays marked until somebody has confirmed it. */
function corrected({ text, corrected: all }: Content, words: readonly Span[]): { readonly comment?: string } {
  const one = all.find(({ counts }) => words.some(({ from, to }) => from <= counts.from && to >= counts.to));
  if (one === undefined) return {};
  const first = quoted(text.slice(one.first.from, one.first.to).replace(/\s+/g, ' '));
  return { comment: `corrected: the text first says ${first}` };
}

const own = (text: string): Scalar => ({ text, path: [], words: [] });

/** Both wordings, on one line. */
const said = (text: string, words: readonly Span[]): string =>
  `the text says ${words.map(({ from, to }) => quoted(text.slice(from, to).replace(/\s+/g, ' '))).join(' and ')}`;

/** The keys that hold a list of plain words. */
const lists: ReadonlySet<string> = new Set(
  'preparation hemostasis dressing tests medications conditions given remarks codes'.split(' '),
);

function put(root: Branch, path: Path, scalar: Scalar): void {
  let branch = root;
  for (const key of path.slice(0, -1)) {
    const next = branch.get(key);
    if (next instanceof Map) branch = next;
    else {
      const made: Branch = new Map();
      branch.set(key, made);
      branch = made;
    }
  }
  const key = path.at(-1)!;
  const before = branch.get(key);
  if (lists.has(String(key))) branch.set(key, Array.isArray(before) ? [...before, scalar] : [scalar]);
  else if (!(before instanceof Map)) branch.set(key, scalar);
}

const branchAt = (parent: Branch | undefined, key: string | number): Branch | undefined => {
  const value = parent?.get(key);
  return value instanceof Map ? value : undefined;
};

const gapsOfVisit: readonly (readonly string[])[] = [
  ['visit'],
  ['clinician'],
  ['consent'],
  ['patient', 'id'],
  ['patient', 'allergies'],
];

/** Puts `??` where a careful record has a value that the text does not say. */
function fillGaps(root: Branch, tables: Tables): void {
  for (const path of gapsOfVisit) gap(root, path);
  const patient = branchAt(root, 'patient');
  if (patient?.has('age') !== true && patient?.has('born') !== true) gap(root, ['patient', 'age']);
  const all = branchAt(root, 'for-all');
  const procedures = branchAt(root, 'procedures');
  if (procedures === undefined) return;
  for (const key of [...procedures.keys()].sort()) fillProcedure(procedures.get(key) as Branch, all, tables);
}

function fillProcedure(procedure: Branch, all: Branch | undefined, tables: Tables): void {
  for (const key of ['site', 'method']) gap(procedure, [key]);
  const method = tables.methods.find(textAt(procedure, 'method'));
  if (method?.wound !== false) gap(procedure, ['hemostasis']);
  if (method?.wantsClosure === true) gap(procedure, ['closure']);
  for (const injection of branchesIn(procedure, 'anesthetic')) fillInjection(injection, tables);
  if (method?.takesTissue === true && branchAt(all, 'specimen')?.has('medium') !== true)
    fillSpecimens(procedure);
}

function fillSpecimens(procedure: Branch): void {
  if (!procedure.has('specimen')) gap(procedure, ['specimen', 0]);
  for (const one of branchesIn(procedure, 'specimen')) if (!one.has('not-sent')) gap(one, ['medium']);
}

const textAt = (branch: Branch, key: string): string => {
  const value = branch.get(key);
  return value === undefined || value instanceof Map || Array.isArray(value) ? '' : value.text;
};

/** The entries of a list. */
const branchesIn = (branch: Branch, key: string): readonly Branch[] =>
  [...(branchAt(branch, key)?.values() ?? [])].flatMap((one) => (one instanceof Map ? [one] : []));

function fillInjection(injection: Branch, tables: Tables): void {
  gap(injection, ['agent']);
  const form = tables.agents.find(textAt(injection, 'agent'))?.form ?? 'injected';
  if (form === 'other') return;
  if (form === 'injected') gap(injection, ['concentration']);
  if (!injection.has('amount') && !injection.has('volume'))
    gap(injection, [form === 'injected' ? 'volume' : 'amount']);
}

function gap(branch: Branch, path: Path): void {
  const [key, ...rest] = path;
  const before = branch.get(key!);
  const isEntry = typeof path.at(-1) === 'number' && rest.length === 0;
  if (rest.length === 0) {
    if (before === undefined) branch.set(key!, isEntry ? new Map<string | number, Value>() : own(waiting));
  } else if (before === undefined || before instanceof Map) {
    const next: Branch = before ?? new Map<string | number, Value>();
    branch.set(key!, next);
    gap(next, rest);
  }
}

function remark(root: Branch, procedure: number | undefined, text: string): void {
  const path = procedure === undefined ? ['remarks'] : ['procedures', procedure, 'remarks'];
  put(root, path, own(text.replace(/\s+/g, ' ')));
}

/** What needs no quotes where it is the whole value of a line. */
const bare = /^[A-Za-z0-9][A-Za-z0-9 .%/()+'&;:,-]*$/;
const odd = /: |:$|^(?:yes|no|true|false|null|~)$|^[\d.]+$|^0/i;
/** Values that are read from the characters that were typed are as right without quotes. */
const plainKeys: ReadonlySet<string> = new Set(
  'visit born age sutures-due count epinephrine time-out volume wheal draft photo dry label id dependent received on collected codes'.split(
    ' ',
  ),
);

class Writer {
  text = '';
  readonly places: Placed[] = [];

  /** The entries of a map, each on a line of its own. */
  branch(branch: Branch, indent: string, first = indent): void {
    let lead = first;
    for (const [key, value] of sorted(branch)) {
      this.text += `${lead}${key}:`;
      lead = indent;
      if (Array.isArray(value)) this.list(value, indent);
      else if (!(value instanceof Map)) {
        this.text += ' ';
        this.scalar(value, String(key));
        this.text += `${value.comment === undefined ? '' : ` # ${value.comment}`}\n`;
      } else if (typeof [...value.keys()][0] === 'number') this.items(value, indent);
      else {
        this.text += '\n';
        this.branch(value, `${indent}  `);
      }
    }
  }

  private items(value: Branch, indent: string): void {
    this.text += '\n';
    for (const [, item] of [...value].sort(([one], [other]) => Number(one) - Number(other)))
      if (item instanceof Map) this.branch(item, `${indent}    `, `${indent}  - `);
  }

  private list(values: readonly Scalar[], indent: string): void {
    this.text += '\n';
    for (const value of values) {
      this.text += `${indent}  - `;
      this.scalar(value, '');
      this.text += '\n';
    }
  }

  private scalar({ text, path, words }: Scalar, key: string): void {
    const from = this.text.length;
    const isBare = bare.test(text) && (plainKeys.has(key) || !odd.test(text)) && text === text.trim();
    this.text += isBare || text === waiting ? text : quoted(text);
    if (path.length > 0) this.places.push({ path, at: { from, to: this.text.length }, words });
  }
}

function sorted(branch: Branch): readonly (readonly [string | number, Value])[] {
  const placeOf = (key: string | number): number => rank.get(String(key)) ?? order.length;
  return [...branch].sort(([one], [other]) => placeOf(one) - placeOf(other));
}
