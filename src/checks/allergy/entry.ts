import type { Fix } from '../../note/finding.ts';
import type { Leaf } from '../../note/leaf.ts';
import { nearest } from '../../note/nearest.ts';
import { phrasesOf } from '../../note/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Report } from '../check.ts';

/** "no latex" may mean that latex must be kept away, or that there is no such allergy. */
const doubtful = /^no\s+(?!known|allerg|history|reaction|drug|problem|sensitiv|issue)/i;
/** How the names of local anesthetics end, so that one in no table is not passed over. */
const caine = /\p{L}caines?(?!\p{L})/iu;
/** Shorter words are too near to too many others. */
const shortest = 6;

function judge(leaf: Leaf<string>, tables: Tables): Report | undefined {
  const text = leaf.value;
  if (text === undefined || tables.allergens.find(text) !== undefined) return undefined;
  const mentions = [
    ...phrasesOf(tables.allergens).mentionsIn(text),
    ...phrasesOf(tables.agents).mentionsIn(text),
  ];
  const [first] = mentions;
  if (first !== undefined) {
    const unsure = doubtful.test(text) && mentions.every(({ standing }) => standing === 'denied');
    return unsure ? { at: leaf, form: 'denied', args: { text, word: first.row.name } } : undefined;
  }
  if (text.length < shortest) return undefined;
  const near = nearest(text, wordsLike(text, tables));
  if (near === undefined) return caine.test(text) ? { at: leaf, form: 'caine', args: { text } } : undefined;
  const args = { text, word: near.word };
  return { at: leaf, args, data: near };
}

/** Words of both tables with the first letter of the text, which slips of the hand seldom change. */
function wordsLike(text: string, tables: Tables): readonly string[] {
  const found: string[] = [];
  const first = text.charAt(0).toLowerCase();
  for (const { words } of [tables.allergens, tables.agents])
    for (const word of words) if (word.charCodeAt(0) === first.charCodeAt(0)) found.push(word);
  return found;
}

export const checks: readonly Check[] = [
  {
    code: 'allergy/unclear-entry',
    severity: 'warning',
    title: 'An allergy that can be misread',
    why: 'A misspelt allergy protects nobody: it is in no table, and every check passes over it. "No latex" is read as an order by one and as an answer by another.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      main: '`{text}` is not a known allergen; did you mean {word}? As it stands nothing is checked against it.',
      caine:
        '`{text}` sounds like a local anesthetic and is in no table here, so nothing is checked against it. Write its generic name, or `local anesthetics`.',
      denied:
        '`{text}` may mean that {word} must be avoided, or that there is no such allergy. Write `{word}`, or `none`.',
    },
    find({ note, tables }) {
      const found: Report[] = [];
      for (const { to } of note.patient?.allergies ?? []) {
        const report = to === undefined ? undefined : judge(to, tables);
        if (report !== undefined) found.push(report);
      }
      return found;
    },
    fix({ text }, { form, data, start, end }) {
      if (form !== 'main') return [];
      const { word, sure } = data as { readonly word: string; readonly sure: boolean };
      const typed = text.slice(start, end);
      if (/^["']/.test(typed)) return [];
      const fix: Fix = {
        title: `Write ${word}`,
        kind: 'spelling',
        sure,
        edits: [{ start, end, text: word }],
      };
      return [fix];
    },
  },
];
