import { finding, inWorkspace, ok, open, until } from './help.ts';
import * as vscode from 'vscode';

describe('a note under a name that no note has', () => {
  it('is checked while it is open, and no other text is taken for one', async () => {
    // Somebody who saves a note under such a name has had a note open.
    await finding((await open('over-limit.wheal.yaml')).document.uri, 'dose/over-limit');
    await open('misnamed.yaml');
    const uri = inWorkspace('misnamed.yaml');
    await finding(uri, 'dose/over-limit');
    const note = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri.toString());
    ok(note?.languageId === 'wheal', 'it is no note');
    const other = await vscode.workspace.openTextDocument({ language: 'yaml', content: 'a: 1\n' });
    await until('the other text', () => other.languageId === 'yaml');
  });
});
