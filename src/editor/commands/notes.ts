import * as vscode from 'vscode';
import { localDate } from '../host/clock.ts';
import { noteEnding } from '../../note/text/files.ts';
import { exists } from '../host/files.ts';
import { sampleNote } from './sample-note.ts';
import { fixAll } from '../../service/index.ts';
import { placeCaret } from '../host/caret.ts';
import { workspaceEdit } from '../host/convert.ts';
import { givenUri, type Command } from './command.ts';

/** Opens a new note, in which nothing is filled in, with its first gap selected. */
export const newNote: Command = async () => {
  const name = await freeName();
  const document = await (name === undefined
    ? vscode.workspace.openTextDocument({ language: 'wheal' })
    : vscode.workspace.openTextDocument(name));
  await vscode.window.showTextDocument(document);
  await vscode.commands.executeCommand('editor.action.insertSnippet', {
    langId: 'wheal',
    name: 'Whole visit',
  });
};

/**
 * A name for a new note that no file has, so that saving it asks for none: one that does not end as those of notes do
 * would be no note. Undefined where there is no folder on a disk.
 */
async function freeName(): Promise<vscode.Uri | undefined> {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (folder?.uri.scheme !== 'file') return undefined;
  const begun = new Set(vscode.workspace.textDocuments.map(({ uri }) => uri.path));
  for (let number = 1; number < 1000; number++) {
    const file = vscode.Uri.joinPath(folder.uri, `note-${localDate(new Date())}-${number}${noteEnding}`);
    if (!begun.has(file.path) && !(await exists(file))) return file.with({ scheme: 'untitled' });
  }
  return undefined;
}

/** Opens an invented note with faults in it, to try things on. */
export const openSample: Command = async () => {
  const document = await vscode.workspace.openTextDocument({
    language: 'wheal',
    content: sampleNote(localDate(new Date())),
  });
  await vscode.window.showTextDocument(document);
};

/**
 * Mends what can be fixed without a change of what is said. The edits carry the version of their text, so that a
 * second call that overtakes the first changes nothing.
 */
export const mendAll: Command = async ({ notes }) => {
  const note = await notes.front();
  if (note === undefined) return;
  const edits = fixAll(note.analysis);
  if (edits.length === 0)
    vscode.window.setStatusBarMessage(vscode.l10n.t('Nothing to fix safely here.'), 5000);
  else if (await vscode.workspace.applyEdit(workspaceEdit(note.document, edits))) {
    placeCaret(note.document, undefined);
    note.rest();
  }
};

/** A fix was applied: everything shows again, and the caret goes to the first gap that the fix has left. */
export const afterFix: Command = async ({ notes }, given, from) => {
  const uri = givenUri(given)?.toString();
  const document = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri);
  if (document === undefined) return;
  (await notes.find(document))?.rest();
  placeCaret(document, typeof from === 'number' ? from : undefined);
};
