import * as vscode from 'vscode';
import { quoted } from '../../note/text/quote.ts';
import { fixesAt, type OfferedFix } from '../../service/index.ts';
import { placeCaret } from '../host/caret.ts';
import { rangeIn, workspaceEdit } from '../host/convert.ts';
import type { OpenNote } from '../notes/open-note.ts';
import { givenUri, type Command } from './command.ts';

/** Which finding is meant: its code, and where it is. */
interface Meant {
  readonly code: string;
  readonly start: number;
}

/** Writes into the note that a finding was considered, with the reason and who says so. */
export const acceptFinding: Command = async ({ notes }, given, wanted) => {
  const uri = givenUri(given)?.toString();
  const document = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri);
  const note = document === undefined ? await notes.front() : await notes.find(document);
  if (note === undefined) return;
  const fix = isMeant(wanted) ? acceptanceOf(note, wanted) : await chosen(note);
  if (fix === undefined)
    return void vscode.window.showInformationMessage(
      vscode.l10n.t('There is no finding here that can be accepted.'),
    );
  const reason = await asked(vscode.l10n.t('Why is this acceptable? The reason is written into the note.'));
  if (reason === undefined) return;
  const by = await asked(vscode.l10n.t('Who says so? Initials or name.'));
  if (by === undefined) return;
  // The note may have changed while the questions were answered.
  const now = acceptanceOf(note, { code: fix.code, start: fix.finding.start });
  if (now === undefined)
    return void vscode.window.showInformationMessage(
      vscode.l10n.t('The note has changed meanwhile; nothing was accepted.'),
    );
  const edits = now.edits.map((edit) => ({
    ...edit,
    text: edit.text
      .replace(/(reason: )\?\?/, (_, key: string) => `${key}${quoted(reason)}`)
      .replace(/(by: )\?\?/, (_, key: string) => `${key}${quoted(by)}`),
  }));
  if (!(await vscode.workspace.applyEdit(workspaceEdit(note.document, edits)))) return;
  placeCaret(note.document, undefined);
  note.rest();
};

const isMeant = (wanted: unknown): wanted is Meant =>
  typeof wanted === 'object' && wanted !== null && 'code' in wanted && 'start' in wanted;

const acceptanceOf = (note: OpenNote, { code, start }: Meant): OfferedFix | undefined =>
  fixesAt(note.analysis, start, start).find(
    (fix) => fix.does === 'accept' && fix.code === code && fix.finding.start === start,
  );

/** The one that can be accepted on the line of the caret; where there are several, the one that is chosen. */
async function chosen(note: OpenNote): Promise<OfferedFix | undefined> {
  const { document } = note;
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  const row = document.lineAt(editor?.selection.active.line ?? 0).range;
  const offered = fixesAt(note.analysis, document.offsetAt(row.start), document.offsetAt(row.end));
  const items = offered
    .filter(({ does }) => does === 'accept')
    .map((fix) => ({ label: fix.code, description: document.getText(rangeIn(document, fix.finding)), fix }));
  if (items.length <= 1) return items[0]?.fix;
  const placeHolder = vscode.l10n.t('Which finding is accepted?');
  return (await vscode.window.showQuickPick(items, { placeHolder }))?.fix;
}

async function asked(prompt: string): Promise<string | undefined> {
  const answer = await vscode.window.showInputBox({
    prompt,
    ignoreFocusOut: true,
    validateInput: (text) => (text.trim() === '' ? vscode.l10n.t('This can’t be left empty.') : undefined),
  });
  return answer?.trim();
}
