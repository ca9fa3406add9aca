/** What the patient takes home, beside its note. */
import * as vscode from 'vscode';
import { closeAll, equal, ok, open, until } from './help.ts';

const run = (command: string): Thenable<unknown> => vscode.commands.executeCommand(command);

const shown = (kind: string): vscode.TextDocument | undefined =>
  vscode.workspace.textDocuments.find(
    ({ uri }) => uri.scheme === 'wheal' && uri.path.startsWith(`/${kind}/`),
  );

describe('the patient handout beside the note', () => {
  afterEach(async () => {
    await run('workbench.action.files.revert');
    await closeAll();
  });

  it('follows the text, and what stands in the note is only text', async () => {
    const { document } = await open('over-limit.wheal.yaml');
    await run('wheal.previewHandout');
    const handout = await until('the handout', () => shown('handout'));
    await until('its text', () => handout!.getText().includes('# Care at home'));
    equal(handout!.languageId, 'markdown');
    ok(handout!.getText().includes('Left upper back'), handout!.getText());
    const at = document.getText().indexOf('left upper back');
    const edit = new vscode.WorkspaceEdit();
    edit.replace(
      document.uri,
      new vscode.Range(document.positionAt(at), document.positionAt(at + 'left upper back'.length)),
      '"left <img src=x> [chin](http://example.org)"',
    );
    await vscode.workspace.applyEdit(edit);
    await until('it to follow', () => handout!.getText().includes('chin'));
    ok(!/<img|\]\(/.test(handout!.getText().replace(/\\./g, '')), handout!.getText());
    await vscode.window.showTextDocument(document);
  });

  it('has a lens over the visit', async () => {
    const { document } = await open('over-limit.wheal.yaml');
    await until(
      'the lens',
      () =>
        vscode.commands.executeCommand<vscode.CodeLens[]>('vscode.executeCodeLensProvider', document.uri, 20),
      (found) => Array.isArray(found) && found.some(({ command }) => command?.command === 'wheal.handout'),
    );
  });
});
