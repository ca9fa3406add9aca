import * as vscode from 'vscode';
import { diagnosticOf } from '../host/convert.ts';
import { checkBelow, Tally } from '../folder/folder-check.ts';
import { givenUri, type Command } from './command.ts';

/** Checks every note of a folder, or of the workspace, and shows what is found in those that are closed too. */
export const checkFolder: Command = async ({ notes, practices }, given) => {
  const uri = givenUri(given);
  const folders = uri === undefined ? (vscode.workspace.workspaceFolders ?? []).map((one) => one.uri) : [uri];
  if (folders.length === 0)
    return void vscode.window.showInformationMessage(vscode.l10n.t('Open a folder with notes first.'));
  const tally = new Tally();
  const title = vscode.l10n.t('Checking notes');
  const ended = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Notification, cancellable: true, title },
    async (progress, token) => {
      for await (const file of checkBelow(folders, practices, token)) {
        tally.add(file);
        notes.setClosed(
          file.uri,
          file.diagnostics.map((one) => diagnosticOf(file.uri, one)),
        );
        progress.report({ message: vscode.workspace.asRelativePath(file.uri) });
      }
      return !token.isCancellationRequested;
    },
  );
  const show = vscode.l10n.t('Show problems');
  const words = ended ? tally.words : vscode.l10n.t('Stopped. So far {0}', tally.words);
  if ((await vscode.window.showInformationMessage(words, show)) === show)
    await vscode.commands.executeCommand('workbench.actions.view.problems');
};
