import type { WordRow } from '../../../reference/types.ts';
import { added, longest, type Match, type Phrases } from '../phrase-index.ts';
import type { Token } from '../phrase-tokens.ts';
import { wordsRead } from '../word-table.ts';
import { cuesOf, add, role, type CueIndex } from './cue-index.ts';
import type { Kind } from './cues.ts';

/** The names of a table of dangers. */
interface Names<Row> {
  readonly rows: readonly Row[];
  /** Whether a row is no danger but says that there is none, or that nobody knows. */
  readonly says?: (row: Row) => 'none' | 'doubt' | undefined;
  /** Whether what is said of the past of a row is still so. */
  readonly lasts: (row: Row) => boolean;
  /** Names of the same kind that are no danger here: a list under one denial may hold them. */
  readonly kin?: readonly WordRow[];
}

/** The names of a kind of danger, by their first words. */
export class Lookup<Row extends WordRow> {
  private readonly terms: Phrases<readonly Row[]> = new Map();
  private readonly kin: Phrases<boolean> = new Map();
  readonly cues: CueIndex;
  readonly lasts: (row: Row) => boolean;

  constructor(
    readonly kind: Kind,
    { rows, says, lasts, kin = [] }: Names<Row>,
  ) {
    this.lasts = lasts;
    this.cues = withOwn(kind, rows, says);
    for (const row of rows) {
      if (says?.(row) !== undefined) continue;
      for (const word of wordsRead(row)) {
        const phrase = added<readonly Row[]>(this.terms, word, []);
        if (!phrase.value.includes(row)) phrase.value = [...phrase.value, row];
      }
    }
    for (const row of kin) for (const word of wordsRead(row)) added(this.kin, word, true);
  }

  /** Whether a name is at one of the tokens. */
  isNamedIn(tokens: readonly Token[]): boolean {
    for (let at = 0; at < tokens.length; at++) if (this.termAt(tokens, at) !== undefined) return true;
    return false;
  }

  termAt(tokens: readonly Token[], at: number): Match<readonly Row[]> | undefined {
    return longest(this.terms, tokens, at);
  }

  kinAt(tokens: readonly Token[], at: number): Match<boolean> | undefined {
    return longest(this.kin, tokens, at);
  }
}

/** The cues of a kind with the answers that its own table knows, such as "no implanted devices". */
function withOwn<Row extends WordRow>(kind: Kind, rows: readonly Row[], says: Names<Row>['says']): CueIndex {
  const shared = cuesOf(kind);
  if (says === undefined) return shared;
  const own: CueIndex = new Map([...shared].map(([first, phrases]) => [first, [...phrases]]));
  for (const row of rows) {
    const said = says(row);
    if (said === undefined) continue;
    for (const word of [row.name, ...row.synonyms])
      if (word.includes(' ')) add(own, word, role[said === 'none' ? 'none' : 'doubt']);
  }
  return own;
}
