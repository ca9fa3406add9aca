import type { Args, Problem } from '../note/tree/finding.ts';
import type { Note } from '../note/generated/types.ts';
import { nearestKey, type NearestKey } from '../note/text/nearest.ts';
import { noteIndex, practiceIndex, type Source } from '../note/read.ts';
import type { KeyIndex, KeyShape } from '../note/tree/shape.ts';
import { isBare, type Entry, type MapNode, type Node, type Range } from '../note/tree/tree.ts';
import { plainData } from './data.ts';
import * as validators from './generated/validators.js';
import type { SchemaError, Validator } from './generated/validators.js';
import { placeOf, type Place } from './place.ts';

type Index = ReadonlyMap<string, KeyIndex>;

interface File {
  readonly name: string;
  readonly index: Index;
  readonly validate: Validator;
}

const note: File = { name: 'note', index: noteIndex, validate: validators.note };
const practice: File = { name: 'practice', index: practiceIndex, validate: validators.practice };

/** More than anybody reads; the rest is counted. */
const mostOfAKind = 100;

/** What is wrong with the form of a note: keys that are unknown or missing, a list where a text belongs. */
export function shapeProblems(source: Source<Note>): readonly Problem[] {
  return problemsOf(source, note);
}

/** What is wrong with the form of a practice file. */
export function practiceShapeProblems(source: Source<unknown>): readonly Problem[] {
  return problemsOf(source, practice);
}

function problemsOf(source: Source<unknown>, { name, index, validate }: File): readonly Problem[] {
  const { root, value, respelled, fits } = source;
  // Most notes have nothing wrong with their form, and to hear that from the validator costs a copy of the whole.
  if (root === null || value === null || fits) return [];
  const { data, problems } = plainData(root, name, index, respelled);
  const valid = validate(data);
  if (valid && problems.length === 0 && respelled.size === 0) return [];
  const shapes = new Shape(source, root, name, index);
  return [
    ...firstOf(problems.map((problem) => (): Problem => problem)),
    ...shapes.respelled(),
    ...shapes.errors(validate.errors ?? []),
  ];
}

/** Makes the first hundred of some problems, and one that says how many more there are. */
function firstOf(makers: readonly (() => Problem)[]): readonly Problem[] {
  const made = makers.slice(0, mostOfAKind).map((make) => make());
  const count = makers.length - mostOfAKind;
  const next = makers[mostOfAKind]?.();
  return next === undefined ? made : [...made, { ...next, form: 'more', args: { count } }];
}

/** Puts a validator's errors into words and places. */
class Shape {
  constructor(
    private readonly source: Source<unknown>,
    private readonly root: MapNode,
    private readonly name: string,
    private readonly index: Index,
  ) {}

  respelled(): readonly Problem[] {
    const makers = [...this.source.respelled].map(
      ([entry, key]) =>
        () =>
          respelling(entry, key),
    );
    return firstOf(makers);
  }

  errors(errors: readonly SchemaError[]): readonly Problem[] {
    const groups = new Map<string, { readonly error: SchemaError; readonly place: Place }[]>();
    const guessed = new Set<string>();
    for (const error of errors) {
      const group = groups.get(error.keyword) ?? [];
      groups.set(error.keyword, group);
      // Places cost a walk down the tree; those of errors that are only counted are not needed.
      if (group.length > mostOfAKind) {
        group.push(group[mostOfAKind]!);
        continue;
      }
      const place = placeOf(this.root, this.name, this.index, this.source.respelled, error.instancePath);
      if (place !== undefined && !this.isDoubtful(error, place)) group.push({ error, place });
    }
    const unknown = (groups.get('additionalProperties') ?? []).map(
      ({ error, place }) =>
        () =>
          this.unknownKey(error, place, guessed),
    );
    const made = firstOf(unknown);
    const missing = (groups.get('required') ?? [])
      .filter(
        ({ error, place }) => !guessed.has(`${place.node.start} ${text(error.params['missingProperty'])}`),
      )
      .map(
        ({ error, place }) =>
          () =>
            this.missingKey(error, place),
      );
    const kinds = (groups.get('type') ?? []).map(
      ({ error, place }) =>
        () =>
          this.wrongKind(error, place),
    );
    return [...made, ...firstOf(missing), ...firstOf(kinds)];
  }

  /** After a syntax error, in the maps that hold it, keys may only seem to be missing or to be wrong. */
  private isDoubtful({ keyword, params }: SchemaError, place: Place): boolean {
    const { damage } = this.source;
    if (keyword === 'type' && isPendingOrGarbled(place.node)) return true;
    if (damage.length === 0) return false;
    const holder = keyword === 'type' ? place.holder : place.node;
    const at =
      keyword === 'required'
        ? Infinity
        : keyword === 'type'
          ? place.at.start
          : entryOf(place.node, params)?.start;
    return damage.some((spot) => this.holds(holder, spot) && (at ?? Infinity) >= spot);
  }

  /** Whether a spot is in a part, or beside it with nothing between. */
  private holds({ start, end }: Range, spot: number): boolean {
    const [from, to] = spot < start ? [spot, start] : [end, spot];
    return to <= from || (to < from + 200 && this.source.text.slice(from, to).trim() === '');
  }

  private unknownKey(error: SchemaError, place: Place, guessed: Set<string>): Problem {
    const entry = entryOf(place.node, error.params);
    const at: Range = entry ?? place.at;
    const typed = text(error.params['additionalProperty']);
    const known = this.index.get(place.map);
    const owners = [...this.index.values()]
      .filter(({ byName }) => byName.has(typed))
      .map(({ shape }) => shape.title);
    if (known?.byName.has(joinedKey(typed)) === true)
      return {
        code: 'shape/unknown-key',
        form: 'blank',
        at: { start: at.start, end: at.end },
        args: { key: joinedKey(typed) },
      };
    const base = { code: 'shape/unknown-key', at: { start: at.start, end: at.end } };
    const args: Args = { key: shortened(typed), map: this.titleOf(place) };
    const near = nearestKey(typed, this.free(place.node, known));
    if (near !== undefined && (owners.length === 0 || near.sure)) {
      const words = [near.word, ...near.rivals];
      for (const word of words) guessed.add(`${place.node.start} ${canonical(known, word)}`);
      return { ...base, ...guess(near, args) };
    }
    if (owners.length > 0)
      return { ...base, form: 'elsewhere', args: { ...args, owners: owners.slice(0, 3).join(', ') } };
    return { ...base, form: known?.byName.has('remarks') === true ? 'remarks' : 'main', args };
  }

  private titleOf({ map }: Place): string {
    return this.index.get(map)?.shape.title ?? map;
  }

  /** The keys that a map does not have yet, by every spelling. */
  private free(node: Node, known: KeyIndex | undefined): ReadonlyMap<string, KeyShape> {
    if (known === undefined || node.kind !== 'map') return new Map();
    const used = new Set(node.entries.map(({ key }) => known.byName.get(key)?.key));
    return new Map([...known.byName].filter(([, { key }]) => !used.has(key)));
  }

  private missingKey(error: SchemaError, place: Place): Problem {
    const key = text(error.params['missingProperty']);
    const known = this.index.get(place.map);
    return {
      code: 'shape/missing-key',
      at: { start: place.at.start, end: place.at.end },
      args: { key, map: this.titleOf(place), help: known?.byName.get(key)?.description ?? '' },
      data: { key, path: place.path },
    };
  }

  private wrongKind(error: SchemaError, place: Place): Problem {
    const { start, end } = place.at;
    const key = place.key;
    if (isEmpty(place.node)) {
      const form = place.item ? 'item' : place.required ? 'required' : 'main';
      return { code: 'shape/empty-value', form, at: { start, end }, args: { key } };
    }
    const node = place.node;
    const at: Range = node.kind === 'text' ? node : place.at;
    return {
      code: 'shape/wrong-kind',
      at: { start: at.start, end: at.end },
      args: { key, wanted: kindsOf(error.params['type']), found: `a ${node.kind}` },
    };
  }
}

/** The key in `volume:1.5 mL`, where the space is missing after the colon. */
const joinedKey = (typed: string): string => /^([\w-]+):\S/.exec(typed)?.[1] ?? '';

function respelling(entry: Entry, key: KeyShape): Problem {
  const sure = nearestKey(entry.key, spellingsOf(key))?.sure === true;
  return {
    code: 'shape/unknown-key',
    form: 'near',
    at: { start: entry.start, end: entry.end },
    args: { key: shortened(entry.key), near: key.key },
    data: { near: key.key, sure },
  };
}

/** What an unknown key may be, which it was not read as. */
function guess({ word: near, sure, rivals }: NearestKey<KeyShape>, args: Args): Omit<Problem, 'code' | 'at'> {
  const [rival] = rivals;
  return rival === undefined
    ? { form: 'perhaps', args: { ...args, near }, data: { near, sure } }
    : { form: 'either', args: { ...args, near, rival }, data: { near, rival, sure } };
}

const spellingsOf = (key: KeyShape): ReadonlyMap<string, KeyShape> =>
  new Map([key.key, ...key.aliases].map((spelling) => [spelling, key]));

const canonical = (known: KeyIndex | undefined, word: string): string => known?.byName.get(word)?.key ?? word;

const text = (value: unknown): string => (typeof value === 'string' ? value : '');

const shortened = (typed: string): string => (typed.length > 40 ? `${typed.slice(0, 40)}…` : typed);

const isEmpty = (node: Node): boolean => isBare(node) || (node.kind === 'text' && node.text.trim() === '');

const isPendingOrGarbled = (node: Node): boolean =>
  node.kind === 'text' && (node.garbled === true || node.text === '??');

const entryOf = (node: Node, params: SchemaError['params']): Entry | undefined =>
  node.kind === 'map' ? node.entries.find(({ key }) => key === params['additionalProperty']) : undefined;

const kinds: ReadonlyMap<string, string> = new Map([
  ['string', 'a text'],
  ['object', 'a map'],
  ['array', 'a list'],
]);

/** The kinds that a schema allows, as a person calls them: a text or a list. */
function kindsOf(types: unknown): string {
  const list = (Array.isArray(types) ? types : [types]) as unknown[];
  return list.flatMap((type) => kinds.get(text(type)) ?? []).join(' or ');
}
