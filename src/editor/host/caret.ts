import * as vscode from 'vscode';

/**
 * Leaves nothing selected after an edit, since a selection that has grown over new text would be typed away.
 * Where the edit has left a gap (`??`) at or after an offset, the gap is selected, so that it can be typed over.
 */
export function placeCaret(document: vscode.TextDocument, from: number | undefined): void {
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  if (editor === undefined) return;
  const gap = from === undefined ? -1 : document.getText().indexOf('??', from);
  const { start } = editor.selection;
  editor.selection =
    gap < 0
      ? new vscode.Selection(start, start)
      : new vscode.Selection(document.positionAt(gap), document.positionAt(gap + 2));
}
