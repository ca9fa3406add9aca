import * as vscode from 'vscode';
import { noteEnding } from '../../note/text/files.ts';

/** The first line of every note. */
const firstRow = /^\uFEFF?wheal:\s*\d/;
/** Kinds of text that a note may be taken for because of its name. */
const mistaken: ReadonlySet<string> = new Set(['yaml', 'plaintext']);

/**
 * A note that was saved under a name that no note has would be taken for any other text, and nothing in it would be
 * checked. It stays a note for as long as it is open, and somebody is told.
 */
export function keepMisnamed(): vscode.Disposable {
  const look = (document: vscode.TextDocument): void => void keep(document);
  for (const document of vscode.workspace.textDocuments) look(document);
  return vscode.workspace.onDidOpenTextDocument(look);
}

async function keep(document: vscode.TextDocument): Promise<void> {
  const { uri, languageId } = document;
  const isWritten = uri.scheme === 'file' || vscode.workspace.getWorkspaceFolder(uri) !== undefined;
  if (!isWritten || !mistaken.has(languageId) || !firstRow.test(document.lineAt(0).text)) return;
  await vscode.languages.setTextDocumentLanguage(document, 'wheal');
  const rename = vscode.l10n.t('Save under Another Name…');
  const answer = await vscode.window.showWarningMessage(
    vscode.l10n.t(
      'The name of this note does not end in {0}. It is checked only while it is open: the list of open items and the command line do not find it.',
      noteEnding,
    ),
    rename,
  );
  if (answer === rename) await vscode.commands.executeCommand('workbench.action.files.saveAs');
}
