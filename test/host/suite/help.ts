/** What every test in the editor needs: to wait, to compare, to open a note. */
import * as vscode from 'vscode';

/** Milliseconds; generous, so that a busy machine fails nothing. */
const patience = 60_000;

/** Asks until the answer holds, and answers it. */
export async function until<T>(
  what: string,
  ask: () => T | Thenable<T>,
  holds: (answer: T) => boolean = Boolean,
): Promise<T> {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (holds(answer)) return answer;
    if (Date.now() > end)
      throw new Error(`waited ${patience / 1000} s for ${what}; last: ${JSON.stringify(answer)}`);
    await pause(50);
  }
}

export const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });

/** Compares plain data. Node's own `assert` is not there in a browser. */
export function equal(actual: unknown, expected: unknown, what = 'not equal'): void {
  if (JSON.stringify(actual) === JSON.stringify(expected)) return;
  throw Object.assign(new Error(what), { actual, expected });
}

export function ok(holds: unknown, what: string): asserts holds {
  if (!holds) throw new Error(what);
}

/** The address of a file of the workspace. */
export function inWorkspace(path: string): vscode.Uri {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  ok(folder, 'no folder is open');
  return vscode.Uri.joinPath(folder.uri, path);
}

/**
 * Opens a note of the workspace in an editor, as a person does: it is closed when its tab is, while one
 * that an extension opens stays open for minutes.
 */
export async function open(path: string): Promise<vscode.TextEditor> {
  const uri = inWorkspace(path);
  await vscode.commands.executeCommand('vscode.open', uri, { preview: false });
  const isShown = (editor: vscode.TextEditor | undefined): boolean =>
    editor?.document.uri.toString() === uri.toString();
  return (await until(path, () => vscode.window.activeTextEditor, isShown))!;
}

export const closeAll = (): Thenable<unknown> =>
  vscode.commands.executeCommand('workbench.action.closeAllEditors');

/** What the editor shows of a document, from Wheal alone. */
export const diagnostics = (uri: vscode.Uri): readonly vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'Wheal');

export const codes = (uri: vscode.Uri): readonly string[] =>
  diagnostics(uri).map(({ code }) => (typeof code === 'object' ? String(code.value) : String(code)));

/** Waits until a finding of this code shows, and answers it. */
export async function finding(uri: vscode.Uri, code: string): Promise<vscode.Diagnostic> {
  await until(`${code} in ${uri.toString()}`, () => codes(uri).includes(code));
  return diagnostics(uri)[codes(uri).indexOf(code)]!;
}
