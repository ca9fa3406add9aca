import snippets from '../../../snippets/wheal.json' with { type: 'json' };
import type { Beginning } from '../../service/index.ts';

interface Snippet {
  readonly prefix: readonly string[];
  readonly description: string;
  readonly body: readonly string[];
}

/** A snippet that fits a place, written for that place. */
export interface Template {
  readonly label: string;
  readonly description: string;
  readonly filter: string;
  /** In the editor's language of snippets, with its whole indentation. */
  readonly insert: string;
}

/** The first key of a snippet tells which part it begins. */
const parts: ReadonlyMap<string, string> = new Map([
  ['wheal', 'note'],
  ['site', 'procedure'],
  ['agent', 'injection'],
  ['on', 'event'],
]);

/** The snippets that begin a part: only where that part can begin, so that none is taken by mistake within a value. */
export function templatesFor({ part, lead, column }: Beginning): readonly Template[] {
  return Object.values<Snippet>(snippets)
    .filter(({ body }) => parts.get(/^(?:- )?([\w-]+):/.exec(body[0] ?? '')?.[1] ?? '') === part)
    .map(({ prefix, description, body }) => ({
      label: prefix[0] ?? '',
      description,
      filter: prefix.join(' '),
      insert: rowsAt(body, lead, column).join('\n'),
    }));
}

function rowsAt([first = '', ...others]: readonly string[], lead: string, column: number): readonly string[] {
  const isItem = first.startsWith('- ');
  const pad = ' '.repeat(isItem ? column - 2 : column);
  return [`${lead}${isItem ? first.slice(2) : first}`, ...others.map((row) => `${pad}${row}`)];
}
