/** What the patient takes home, beside its note. */
import * as vscode from 'vscode';
import { closeAll, open, until } from './help.ts';

const run = (command: string): Thenable<unknown> => vscode.commands.executeCommand(command);

describe('the patient handout beside the note', () => {
  afterEach(async () => {
    await run('workbench.action.files.revert');
    await closeAll();
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
