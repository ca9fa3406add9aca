import { checkOf } from '../../checks/index.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Note, Specimen } from '../../note/generated/types.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { addItem, isCompact, isRefused, type Fields } from '../edits/fields.ts';
import type { PlacedMap } from '../../note/tree/maps.ts';
import type { OfferedFix } from './offered-fix.ts';

/**
 * What to do now where no edit undoes what happened: an event about the specimen with `??` for its day, for what was
 * done and for how it ended, which stays open until somebody has written it. The finding stays. Undefined where such an
 * event is there already.
 */
export function nextStep(
  { note, text }: Analysis,
  finding: Finding,
  [whole]: readonly PlacedMap[],
): OfferedFix | undefined {
  const step = checkOf(finding.code)?.nextStep?.[finding.form];
  if (step === undefined || note === null || whole === undefined) return undefined;
  const names = namesAt(note, finding);
  const [name] = names;
  if (name === undefined || isTold(note, names)) return undefined;
  const fields: Fields = [
    ['on', '??'],
    ['kind', 'call'],
    ['procedure', name],
    ['action', '??'],
    ['outcome', '??'],
  ];
  const edits = addItem(text, whole, 'events', fields, 'list', isCompact(text, whole.node));
  if (isRefused(edits)) return undefined;
  const title = `What to do now: ${step} (adds an event to fill in)`;
  return { title, kind: 'record', sure: false, edits, code: finding.code, finding, does: 'plan' };
}

const plainLabel = /^[A-Za-z0-9][\w.-]*$/;

/** What an event may call the specimen at a place: its label where no other has the same, or its procedure's number. */
function namesAt({ procedures = [] }: Note, { start }: Finding): readonly string[] {
  const at = procedures.findIndex((one) => start >= one.start && start < one.end);
  const own = procedures[at]?.specimen?.find((one) => start >= one.start && start < one.end);
  const label = own?.label?.value?.trim();
  const all = procedures.flatMap(({ specimen = [] }) => specimen);
  const number = at < 0 ? [] : [String(at + 1)];
  return label !== undefined && plainLabel.test(label) && isOnly(label, all) ? [label, ...number] : number;
}

const isOnly = (label: string, specimens: readonly Specimen[]): boolean =>
  specimens.filter((one) => one.label?.value !== undefined && plainWord(one.label.value) === plainWord(label))
    .length === 1;

/** Whether an event about a call names the specimen already. */
const isTold = ({ events = [] }: Note, names: readonly string[]): boolean =>
  events.some(
    ({ kind, procedure }) =>
      kind?.text === 'call' && procedure !== undefined && names.includes(procedure.text.trim()),
  );
