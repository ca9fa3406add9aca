import type { Entry, Node } from '../note/tree/tree.ts';
import { once } from '../note/text/once.ts';
import { asMeant } from '../note/words/as-meant.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { Tables } from '../practice/tables.ts';

/** What may be hidden under a key that nobody reads. */
export type Hidden = 'dose' | 'allergen' | 'implant';

/** More than one entry of a note says; of more the rest is taken for what may be a dose. */
const longest = 2000;

const volume = /\d\s*(?:m[lL]|cc)\b/;

function textOf(node: Node | null): string {
  if (node === null) return '';
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(textOf).join('; ');
  return node.entries.map(({ key, value }) => `${key}: ${textOf(value)}`).join('; ');
}

const known = once<Tables, WeakMap<Entry, { readonly danger: Hidden | undefined }>>(() => new WeakMap());

/** What could be hidden under an unknown key: an anesthetic or a volume, an allergen, an implant. */
export function dangerUnder(entry: Entry, tables: Tables): Hidden | undefined {
  const own = known(tables);
  let answer = own.get(entry);
  if (answer === undefined) own.set(entry, (answer = { danger: lookUnder(entry, tables) }));
  return answer.danger;
}

function lookUnder({ value }: Entry, tables: Tables): Hidden | undefined {
  const typed = textOf(value);
  if (typed.length > longest || volume.test(typed)) return 'dose';
  const text = asMeant(typed, tables.agents, tables.allergens, tables.implants);
  if (phrasesOf(tables.agents).mentionsIn(text).length > 0) return 'dose';
  const isSubstance = phrasesOf(tables.allergens)
    .mentionsIn(text)
    .some(({ row, standing }) => (row.kind === 'substance' || row.kind === 'class') && standing !== 'denied');
  if (isSubstance) return 'allergen';
  const isDevice = phrasesOf(tables.implants)
    .mentionsIn(text)
    .some(
      ({ row, standing }) => row.concern !== 'none' && row.concern !== 'unknown' && standing !== 'denied',
    );
  return isDevice ? 'implant' : undefined;
}
