import * as vscode from 'vscode';
import { openHeadings, openText } from '../../documents/open-list/open-list.ts';
import { listOfWords } from '../../documents/list-of-words.ts';
import type { OpenItem } from '../../followup/caseload.ts';
import {
  askingFor,
  doneBy,
  faultIn,
  isRefused,
  openItemsOf,
  sameItem,
  type Answers,
  type Done,
  type Question,
  type Refused,
} from '../../service/follow-up/record-done.ts';
import { rangeIn, workspaceEdit } from '../host/convert.ts';
import { frontNote } from '../papers/export.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';
import type { Command } from './command.ts';

/** What is to be written into which note; without an item it is a call. */
interface Task {
  readonly note: OpenNote;
  readonly item: OpenItem | undefined;
}

/**
 * Asks what was done about an open item, and writes the row that says so. The item is that of the row of the view, or
 * one that is chosen from those of the note in front.
 */
export const recordDone: Command = async ({ notes, open }, given) => {
  // The key in the view gives no row.
  const row = given === 'selected' ? open.selected : given;
  const task = isRow(row) ? await ofRow(notes, row.item) : await chosen(notes);
  if (task !== undefined) await record(task);
};

/** Asks about a call from or to the patient of the note in front, and writes it down. */
export const recordCall: Command = async ({ notes }, given) => {
  const note = isRow(given) ? (await ofRow(notes, given.item))?.note : await frontNote(notes);
  if (note !== undefined) await record({ note, item: undefined });
};

const isRow = (given: unknown): given is { readonly item: OpenItem } =>
  isObject(given) && isObject(given['item']) && typeof given['item']['path'] === 'string';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Shows the note of a line where the line is, so that it can be seen while it is asked about. */
async function ofRow(notes: Notes, item: OpenItem): Promise<Task | undefined> {
  const line = new vscode.Position(item.line, 0);
  const editor = await vscode.window.showTextDocument(vscode.Uri.parse(item.path, true), {
    selection: new vscode.Range(line, line),
  });
  const note = await notes.find(editor.document);
  return note && { note, item };
}

/** One of what is open in the note in front, the nearest to the caret first; or a call. */
async function chosen(notes: Notes): Promise<Task | undefined> {
  const note = await frontNote(notes);
  if (note === undefined) return undefined;
  const caret = caretIn(note.document);
  const open = [...openItemsOf(note.analysis)]
    .filter(({ group }) => group !== 'look')
    .sort((a, b) => Math.abs(a.start - caret) - Math.abs(b.start - caret));
  const items = [
    ...open.map((item) => ({ label: openHeadings[item.group], description: openText(item), item })),
    { label: vscode.l10n.t('A call'), description: '', item: undefined },
  ];
  const placeHolder = vscode.l10n.t('What was done?');
  const picked = await vscode.window.showQuickPick(items, { placeHolder, matchOnDescription: true });
  return picked && { note, item: picked.item };
}

function caretIn(document: vscode.TextDocument): number {
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  return editor === undefined ? 0 : document.offsetAt(editor.selection.active);
}

async function record({ note, item }: Task): Promise<void> {
  const asking = asItIs(note, item, (now) => askingFor(note.analysis, now));
  if (isRefused(asking)) return void vscode.window.showWarningMessage(asking.why);
  const about = item === undefined ? '' : `: ${openText(item)}`;
  const answers = await askAll(asking.questions, `${asking.title}${about}`, note);
  if (answers === undefined) return;
  // The note may have changed while the questions were answered.
  const done = asItIs(note, item, (now) => doneBy(note.analysis, now, answers));
  if (isRefused(done)) return void vscode.window.showWarningMessage(done.why);
  if (done.signedParts.length === 0 || (await mayChangeSigned(done.signedParts))) await write(note, done);
}

/** Does something with an item as the note has it by now. */
function asItIs<T>(
  { analysis }: OpenNote,
  item: OpenItem | undefined,
  work: (now: OpenItem | undefined) => T,
): T | Refused {
  const now = item === undefined || item.group === 'look' ? item : sameItem(analysis, item);
  return item !== undefined && now === undefined
    ? { why: vscode.l10n.t('This is no longer open in the note.') }
    : work(now);
}

/** The answers to all questions; undefined where somebody stops. */
async function askAll(
  questions: readonly Question[],
  title: string,
  { analysis: { context } }: OpenNote,
): Promise<Answers | undefined> {
  const answers = new Map<string, string>();
  for (const [index, question] of questions.entries()) {
    const step = `${index + 1}/${questions.length} ${title}`;
    const answer = await ask(question, step, (text) =>
      faultIn(question, text, { tables: context.tables, today: context.today ?? '' }),
    );
    if (answer === undefined) return undefined;
    answers.set(question.key, answer);
  }
  return answers;
}

type Fault = (text: string) => string | undefined;

async function ask(question: Question, title: string, fault: Fault): Promise<string | undefined> {
  const { choices, prompt, required, kind } = question;
  if (choices.length === 0) return await askInput(question, title, fault);
  const { l10n } = vscode;
  const items = [
    ...choices.map(({ text, detail }) => ({ label: text, description: detail, answer: text })),
    {
      label: kind === 'day' ? l10n.t('Another day…') : l10n.t('Another…'),
      description: '',
      answer: undefined,
    },
    ...(required ? [] : [{ label: l10n.t('Not known yet'), description: '??', answer: '' }]),
  ];
  const picked = await vscode.window.showQuickPick(items, {
    ...{ title, placeHolder: prompt, ignoreFocusOut: true, matchOnDescription: true },
  });
  return picked === undefined ? undefined : (picked.answer ?? (await askInput(question, title, fault)));
}

const askInput = (
  { prompt, example, required }: Question,
  title: string,
  fault: Fault,
): Thenable<string | undefined> =>
  vscode.window.showInputBox({
    title,
    prompt: required
      ? prompt
      : vscode.l10n.t('{0} If left empty, the note has ?? until somebody knows.', prompt),
    placeHolder: example,
    ignoreFocusOut: true,
    validateInput: fault,
  });

/** Of a signed note nothing that the signature covers is changed unasked. */
async function mayChangeSigned(parts: readonly string[]): Promise<boolean> {
  const go = vscode.l10n.t('Write it anyway');
  const answer = await vscode.window.showWarningMessage(
    vscode.l10n.t('The note is signed, and this belongs to what was signed.'),
    {
      modal: true,
      detail: vscode.l10n.t('Once it is written, the signature shows a change: {0}.', listOfWords(parts)),
    },
    go,
  );
  return answer === go;
}

/** Writes into the note and shows what was written, the first gap selected. It is not saved: that is for a person. */
async function write(note: OpenNote, { edits, at, staysOpen }: Done): Promise<void> {
  const { document } = note;
  if (!(await vscode.workspace.applyEdit(workspaceEdit(document, edits))))
    return void vscode.window.showWarningMessage(
      vscode.l10n.t('The note has changed meanwhile; nothing was written.'),
    );
  const editor = await vscode.window.showTextDocument(document);
  const range = rangeIn(document, at);
  editor.selection = new vscode.Selection(range.start, range.end);
  editor.revealRange(range, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  note.rest();
  if (staysOpen)
    void vscode.window.showInformationMessage(
      vscode.l10n.t('Written, but all of this is still open. The note is not saved yet.'),
    );
  else vscode.window.setStatusBarMessage(vscode.l10n.t('Written. The note is not saved yet.'), 8000);
}
