import { laboratoryTests } from '../../reference/laboratory-tests.ts';
import { media } from '../../reference/media.ts';
import { withTradeNames } from '../../reference/trade-names.ts';
import type { WordRow } from '../../reference/types.ts';
import type { Problem } from '../tree/finding.ts';
import { problemAt } from '../values/reading.ts';
import type { DictatedField, DictatedLine } from './dictated.ts';
import { WordTable } from './word-table.ts';

const knownMedia = new WordTable<WordRow>(withTradeNames(media));
const knownTests = new WordTable<WordRow>(withTradeNames(laboratoryTests));

const longestLine = 200;

/** What says that no tissue went to a laboratory. */
const notSent =
  /\b(?:not|never|nothing|none|no|nil|un(?:sent|submitted)|without|discard\w*|declin\w*|refus\w*|defer\w*|thrown|waste[d]?|destroyed)\b|\?\?/i;

const joint = /\s*[,;()]\s*|\s+(?:in|for|with|w\/|as|and|labell?ed)\s+|\s+[-–]\s+/gi;
/** Words that say that a specimen went, and no more. */
const going =
  /^(?:(?:sent|submitted|send|to|the|for|path(?:ology)?|pathologist|lab(?:oratory)?|derm(?:ato)?path(?:ology)?|histo(?:logy)?|yes|done|taken|obtained|collected|tissue|specimens?|sample|biopsy|one|1|x ?1|today|all|both)\s*)+$/i;
/** "To pathology" says where it went, "pathology" what is asked for. */
const leads = /^(?:sent|submitted|send|to|yes|done)\b/i;
const label =
  /^(?:(?:labell?ed|label|jar|container|specimen|bottle|cup|vial|#)\s*[:#]?\s*)?([A-Z]\d?|\d{1,2}[A-Z]?)$/i;
const date = /^(?:(?:sent|submitted)(?: on)?\s+)?(\d{4}-\d\d-\d\d)$/i;

/**
 * Reads a specimen that is written as a bare text: `A, formalin`, `sent to pathology in formalin for routine histology`.
 * Undefined where the text says that nothing was sent. Words that are none of it are reported.
 */
export function readSpecimen(text: string): DictatedLine | undefined {
  if (text.trim() === '' || text.length > longestLine || notSent.test(text)) return undefined;
  const fields: DictatedField[] = [];
  const problems: Problem[] = [];
  for (const { words, from } of partsOf(text)) {
    const field = fieldOf(words, from);
    if (field === undefined && going.test(words)) continue;
    if (field !== undefined && isFree(field, fields)) fields.push(field);
    else problems.push(problemAt({ typed: words, from }, 'quantity/not-understood', { form: 'word' }));
  }
  return { fields, problems };
}

const isFree = ({ key }: DictatedField, fields: readonly DictatedField[]): boolean =>
  key === 'tests' || fields.every((one) => one.key !== key);

interface Words {
  readonly words: string;
  readonly from: number;
}

function partsOf(text: string): readonly Words[] {
  const parts: Words[] = [];
  let from = 0;
  for (const match of [...Array.from(text.matchAll(joint)), undefined]) {
    const piece = text.slice(from, match?.index ?? text.length);
    const words = piece.trim();
    if (words !== '') parts.push({ words, from: from + piece.indexOf(words) });
    from = match === undefined ? text.length : match.index + match[0].length;
  }
  return parts;
}

function fieldOf(words: string, from: number): DictatedField | undefined {
  const part = (key: string, inner: string): DictatedField => {
    const start = from + words.lastIndexOf(inner);
    return { key, from: start, to: start + inner.length };
  };
  if (leads.test(words) && going.test(words)) return part('sent', words);
  const day = date.exec(words)?.[1];
  if (day !== undefined) return part('sent', day);
  const name = words === '1' ? undefined : label.exec(words)?.[1];
  if (name !== undefined) return part('label', name);
  const bare = words.replace(/^(?:(?:sent|submitted|to|for|in)\s+)+/i, '');
  if (knownMedia.find(bare) !== undefined) return part('medium', bare);
  return knownTests.find(bare) === undefined ? undefined : part('tests', bare);
}
