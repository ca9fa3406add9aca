import * as vscode from 'vscode';
import type { Format } from '../../documents/format.ts';
import { isPractice, writeWhole } from '../host/files.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';

/** The note in front; a practice file is none, and then it is said. */
export async function frontNote(notes: Notes): Promise<OpenNote | undefined> {
  const note = await notes.front();
  if (note !== undefined && !isPractice(note.document.uri)) return note;
  void vscode.window.showInformationMessage(vscode.l10n.t('Open a procedure note first.'));
  return undefined;
}

/** What is asked before a file is written. */
export interface Asked {
  /** Of the dialog. */
  readonly title: string;
  /** What is written, as a file's name says it: put after the name of the note, or alone where it has none. */
  readonly what: string;
  /** The forms that it may have; the first is proposed. */
  readonly formats: readonly Pick<Format<never>, 'ending' | 'title'>[];
}

/** Asks where to write; the dialog itself asks before a file is replaced. Undefined where the user goes back. */
export function askWhere(
  note: vscode.Uri,
  { title, what, formats }: Asked,
): Thenable<vscode.Uri | undefined> {
  const ending = formats[0]?.ending ?? 'txt';
  return vscode.window.showSaveDialog({
    ...beside(note, what, ending),
    title,
    saveLabel: vscode.l10n.t('Export'),
    filters: Object.fromEntries(formats.map((one) => [vscode.l10n.t(one.title), [one.ending]])),
  });
}

/** The ending of a file's name, in small letters and without the dot; empty where it has none. */
export const endingOf = ({ path }: vscode.Uri): string => /\.(\w+)$/.exec(path)?.[1]?.toLowerCase() ?? '';

/**
 * Writes a text where the user said, whole or not at all, and says that it is there.
 * @param alert what has to be known before it is used; undefined where nothing has
 */
export async function deliver(
  uri: vscode.Uri,
  text: string,
  done: string,
  alert: string | undefined,
): Promise<void> {
  try {
    await writeWhole(uri, text);
  } catch {
    const message = vscode.l10n.t('{0} could not be written; nothing was changed.', uri.fsPath);
    return void vscode.window.showErrorMessage(message);
  }
  const open = vscode.l10n.t('Open');
  const answer = await (alert === undefined
    ? vscode.window.showInformationMessage(done, open)
    : vscode.window.showWarningMessage(`${done} ${alert}`, open));
  if (answer === open) await vscode.window.showTextDocument(uri);
}

/** Proposes a file of the note's name beside it. */
function beside(
  note: vscode.Uri,
  what: string,
  ending: string,
): Pick<vscode.SaveDialogOptions, 'defaultUri'> {
  if (note.scheme !== 'untitled') {
    const name = note.path.replace(/(\.wheal)?\.ya?ml$/, '');
    return { defaultUri: note.with({ path: `${name}.${what}.${ending}` }) };
  }
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  return folder === undefined ? {} : { defaultUri: vscode.Uri.joinPath(folder.uri, `${what}.${ending}`) };
}
