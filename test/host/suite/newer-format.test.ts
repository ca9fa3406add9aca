/** A note of a format that does not exist yet: it says so, and guesses nothing. */
import * as vscode from 'vscode';
import { closeAll, codes, diagnostics, equal, finding } from './help.ts';

const text = `wheal: 2
visit: next week
patient: {id: C-1, weight: heavy, allergies: none}
procedures:
  - place: the nose
    anesthetic: [{agent: lidocaine, concentration: 1%, volume: 350 mL}]
`;

describe('a note of a newer format', () => {
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('gets one warning and nothing else', async () => {
    const document = await vscode.workspace.openTextDocument({ language: 'wheal', content: text });
    await vscode.window.showTextDocument(document);
    const { uri } = document;
    await finding(uri, 'shape/newer-format');
    equal(codes(uri), ['shape/newer-format']);
    equal(diagnostics(uri)[0]?.severity, vscode.DiagnosticSeverity.Warning);
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
      'vscode.executeInlayHintProvider',
      uri,
      whole,
    );
    equal(hints, []);
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      uri,
      document.positionAt(text.indexOf('place')),
    );
    // The snippets of the manifest are the editor's own, and it is told not to show them.
    equal(
      items.filter(({ kind }) => kind !== vscode.CompletionItemKind.Snippet).map(({ label }) => label),
      [],
    );
  });
});
