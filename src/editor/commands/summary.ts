import * as vscode from 'vscode';
import type { SummaryFormat } from '../../documents/index.ts';
import { isPractice, writeWhole } from '../files.ts';
import type { Notes } from '../notes.ts';
import type { OpenNote } from '../open-note.ts';
import { summaryOfNote } from '../summary.ts';
import type { Command } from './command.ts';

/** Puts the chart summary of the note in front on the clipboard. */
export const copySummary: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  const summary = note && (await summaryOfNote(note, notes, 'text'));
  if (summary === undefined) return;
  if ('why' in summary) return void vscode.window.showWarningMessage(noSummary(summary.why));
  await vscode.env.clipboard.writeText(summary.text);
  if (summary.unfit)
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The chart summary is copied. The note has errors, and the summary says so at its top.'),
    );
  else vscode.window.setStatusBarMessage(vscode.l10n.t('The chart summary is copied.'), 5000);
};

/** Shows the chart summary beside the note. */
export const previewSummary: Command = async ({ notes, pages }) => {
  const note = await frontNote(notes);
  if (note !== undefined) await pages.showSummary(note.document.uri);
};

const endings: Readonly<Record<string, SummaryFormat>> = {
  txt: 'text',
  md: 'markdown',
  html: 'html',
  json: 'json',
};

/** Writes the chart summary where the user says; the dialog asks before a file is replaced. */
export const exportSummary: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  if (note === undefined) return;
  const uri = await vscode.window.showSaveDialog({
    ...besideOf(note.document.uri),
    title: vscode.l10n.t('Export the chart summary'),
    saveLabel: vscode.l10n.t('Export'),
    filters: {
      [vscode.l10n.t('Text')]: ['txt'],
      Markdown: ['md'],
      HTML: ['html'],
      JSON: ['json'],
    },
  });
  if (uri === undefined) return;
  const ending = /\.(\w+)$/.exec(uri.path)?.[1]?.toLowerCase() ?? '';
  const summary = await summaryOfNote(note, notes, endings[ending] ?? 'text');
  if ('why' in summary) return void vscode.window.showWarningMessage(noSummary(summary.why));
  try {
    await writeWhole(uri, summary.text);
  } catch {
    const message = vscode.l10n.t('{0} could not be written; nothing was changed.', uri.fsPath);
    return void vscode.window.showErrorMessage(message);
  }
  const open = vscode.l10n.t('Open');
  const message = summary.unfit
    ? vscode.l10n.t('The chart summary is written. The note has errors, and the summary says so at its top.')
    : vscode.l10n.t('The chart summary is written.');
  const answer = await (summary.unfit
    ? vscode.window.showWarningMessage(message, open)
    : vscode.window.showInformationMessage(message, open));
  if (answer === open) await vscode.window.showTextDocument(uri);
};

const noSummary = (why: string): string => vscode.l10n.t('There is no summary: {0}', why);

/** The note in front; a practice file is none. */
async function frontNote(notes: Notes): Promise<OpenNote | undefined> {
  const note = await notes.front();
  if (note !== undefined && !isPractice(note.document.uri)) return note;
  void vscode.window.showInformationMessage(vscode.l10n.t('Open a procedure note first.'));
  return undefined;
}

/** Proposes a text file of the note's name beside it. */
function besideOf(note: vscode.Uri): Pick<vscode.SaveDialogOptions, 'defaultUri'> {
  if (note.scheme !== 'untitled')
    return { defaultUri: note.with({ path: `${note.path.replace(/(\.wheal)?\.ya?ml$/, '')}.txt` }) };
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  return folder === undefined ? {} : { defaultUri: vscode.Uri.joinPath(folder.uri, 'summary.txt') };
}
