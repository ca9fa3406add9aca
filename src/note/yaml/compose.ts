import { Composer, Lexer, Parser, type CST } from 'yaml';
import type { Range } from '../tree/tree.ts';

/** What the parser, or the look at its result, could make no sense of; a place in the text and a kind. */
export interface Fault extends Range {
  readonly code: string;
}

/** The first document of a text as the parser sees it. */
export interface Composed {
  readonly contents: unknown;
  readonly faults: readonly Fault[];
  /** Lines such as `%YAML 1.1`. */
  readonly directives: readonly Range[];
  /** Where a second document begins. */
  readonly second: number | undefined;
  /** Set where there are so many faults that this can't be a note. */
  readonly hopeless: boolean;
}

/** Every scalar stays the text that was typed; unique keys are ours to check, since the parser's own test is quadratic. */
const options = {
  prettyErrors: false,
  uniqueKeys: false,
  schema: 'failsafe',
  version: '1.2',
} as const;

const mostFaults = 500;

/** What the parser may have open at once: it calls itself for each when it closes them, as below a bracket that stays open. */
const mostOpen = 400;

type Source = number | readonly number[] | { readonly offset: number; readonly source?: string };

/** The lexer's tokens of a text. */
export const lexed = (text: string): readonly string[] => [...new Lexer().lex(text)];

/** Parses and composes tokens of the lexer. A text that nests too deeply for the parser is one fault. Never throws. */
export function composed(tokens: readonly string[], length: number): Composed {
  const parser = new Parser();
  const found = parsed(parser, tokens);
  if (found !== undefined) return compose(found, length);
  const [start, end] = [Math.max(0, Math.min(parser.offset, length) - 1), Math.min(parser.offset, length)];
  const fault = { code: 'RESOURCE_EXHAUSTION', start, end };
  return { contents: null, faults: [fault], directives: [], second: undefined, hopeless: true };
}

/**
 * What the parser makes of tokens, as far as it is needed: up to a second document, or some hundred faults. Undefined
 * where it would have too much open at once.
 */
function parsed(parser: Parser, tokens: readonly string[]): readonly CST.Token[] | undefined {
  const found: CST.Token[] = [];
  let [documents, faults] = [0, 0];
  for (const token of steps(parser, tokens)) {
    if (token === tooDeep) return undefined;
    found.push(token);
    if (token.type === 'document' && ++documents > 1) break;
    if (token.type === 'error' && ++faults > mostFaults) break;
  }
  return found;
}

const tooDeep = Symbol('too deep');

function* steps(parser: Parser, tokens: readonly string[]): Generator<CST.Token | typeof tooDeep, void> {
  for (const token of tokens) {
    yield* parser.next(token);
    if (parser.stack.length > mostOpen) yield tooDeep;
  }
  yield* parser.end();
}

/**
 * Composes YAML 1.2 from the tokens of a text. Gives up after some hundred faults, since the composer needs long for
 * each. Never throws.
 */
function compose(tokens: readonly CST.Token[], length: number): Composed {
  const faults: Fault[] = [];
  const directives: Range[] = [];
  const composer = new Composer(options);
  // The parser would make an exception with a stack of each fault; half a million of them take many seconds.
  Object.assign(composer, {
    onError(source: Source, code: string, _message: string, warning?: boolean) {
      if (warning === true) return;
      faults.push({ code, ...placeOf(source, length) });
      if (faults.length > mostFaults) throw new RangeError('too many faults');
    },
  });
  const result = { contents: null as unknown, second: undefined as number | undefined };
  try {
    read(tokens, length, composer, faults, directives, result);
  } catch {
    return { ...result, faults, directives, hopeless: true };
  }
  return { ...result, faults, directives, hopeless: false };
}

function read(
  tokens: readonly CST.Token[],
  length: number,
  composer: Composer,
  faults: Fault[],
  directives: Range[],
  result: { contents: unknown; second: number | undefined },
): void {
  let documents = 0;
  const take = (found: Iterable<{ readonly contents: unknown }>): void => {
    for (const { contents } of found) result.contents ??= contents;
  };
  for (const token of tokens) {
    if (token.type === 'directive')
      directives.push({ start: token.offset, end: token.offset + token.source.length });
    if (token.type === 'document' && ++documents > 1) {
      result.second = token.offset;
      break;
    }
    if (token.type === 'error') {
      faults.push({ code: 'UNEXPECTED_TOKEN', ...placeOf(token, length) });
      if (faults.length > mostFaults) throw new RangeError('too many faults');
      continue;
    }
    take(composer.next(token));
  }
  take(composer.end(documents === 0, length));
}

function placeOf(source: Source, length: number): Range {
  if (typeof source === 'number')
    return { start: Math.min(source, length), end: Math.min(source + 1, length) };
  if ('offset' in source)
    return { start: source.offset, end: Math.min(length, source.offset + (source.source?.length ?? 1)) };
  const [start = 0, end = start] = source;
  return { start: Math.min(start, length), end: Math.min(Math.max(start, end), length) };
}
