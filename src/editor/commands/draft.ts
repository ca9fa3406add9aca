import * as vscode from 'vscode';
import { draft as draftOf } from '../../draft/draft.ts';
import { DraftLink } from '../drafts/draft-link.ts';
import { placeCaret } from '../host/caret.ts';
import type { Command } from './command.ts';
import { tablesWithoutNote } from './dose.ts';

/** In UTF-16 units; longer texts are of more than a visit. */
const longest = 1_000_000;

let link: DraftLink | undefined;

/** Makes a draft note of a text: the selection, the clipboard, or a file. The text stays beside it, and nothing is saved. */
export const draftNote: Command = async ({ practices }) => {
  const text = await textToRead();
  if (text === undefined) return;
  const words = text.getText();
  if (!/[\p{L}\d]/u.test(words))
    return void vscode.window.showInformationMessage(vscode.l10n.t('There are no words in this text.'));
  if (words.length > longest)
    return void vscode.window.showWarningMessage(vscode.l10n.t('This text is too long for one visit.'));
  const made = draftOf(words, await tablesWithoutNote(practices));
  const note = await vscode.workspace.openTextDocument({ language: 'wheal', content: made.note });
  await vscode.window.showTextDocument(text, { viewColumn: vscode.ViewColumn.One, preview: false });
  // A dictated text is one long line; the editor wraps it for this view alone.
  if (vscode.workspace.getConfiguration('editor', text).get('wordWrap') === 'off')
    await vscode.commands.executeCommand('editor.action.toggleWordWrap');
  await vscode.window.showTextDocument(note, { viewColumn: vscode.ViewColumn.Two, preview: false });
  link?.dispose();
  link = new DraftLink(text, note, made);
  placeCaret(note, 0);
  const { length } = made.unplaced;
  const left =
    length === 0
      ? vscode.l10n.t('Every word has its place.')
      : vscode.l10n.t('{0} parts of the text have no place of their own; they are under remarks.', length);
  void vscode.window.showInformationMessage(
    vscode.l10n.t('This is a draft: read it against the text before it is signed. {0}', left),
  );
};

/** The text that is read, in a document that can be shown beside the draft. */
async function textToRead(): Promise<vscode.TextDocument | undefined> {
  const editor = vscode.window.activeTextEditor;
  const isNote = editor?.document.languageId === 'wheal';
  if (editor !== undefined && !editor.selection.isEmpty) {
    const selected = editor.document.getText(editor.selection);
    const isWhole = !isNote && selected.trim() === editor.document.getText().trim();
    return isWhole ? editor.document : await asDocument(selected);
  }
  const sources: readonly (vscode.QuickPickItem & {
    open: () => Thenable<vscode.TextDocument | undefined>;
  })[] = [
    ...(editor === undefined || isNote
      ? []
      : [{ label: vscode.l10n.t('The text in front'), open: () => Promise.resolve(editor.document) }]),
    {
      label: vscode.l10n.t('What is on the clipboard'),
      open: async () => asDocument(await vscode.env.clipboard.readText()),
    },
    { label: vscode.l10n.t('A text file…'), open: chosenFile },
  ];
  const placeHolder = vscode.l10n.t('Which text should become a draft note?');
  return await (await vscode.window.showQuickPick(sources, { placeHolder }))?.open();
}

const asDocument = (content: string): Thenable<vscode.TextDocument> =>
  vscode.workspace.openTextDocument({ language: 'plaintext', content });

async function chosenFile(): Promise<vscode.TextDocument | undefined> {
  const [file] = (await vscode.window.showOpenDialog({ openLabel: vscode.l10n.t('Read') })) ?? [];
  if (file === undefined) return undefined;
  try {
    return await vscode.workspace.openTextDocument(file);
  } catch {
    void vscode.window.showWarningMessage(vscode.l10n.t('This is not a text file.'));
    return undefined;
  }
}
