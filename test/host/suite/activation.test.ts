/** How long somebody waits for the first findings. Loaded first, while the extension is not yet active. */
import * as vscode from 'vscode';
import { closeAll, codes, inWorkspace, ok, pause } from './help.ts';

describe('the start', () => {
  after(closeAll);

  it('of the extension leads to findings; the time is told, and judged by nobody', async () => {
    const isActive = (): boolean => vscode.extensions.getExtension('wheal.wheal')?.isActive === true;
    ok(!isActive(), 'the extension is active before it is needed');
    const uri = inWorkspace('over-limit.wheal.yaml');
    const began = performance.now();
    const since = (): number => Math.round(performance.now() - began);
    await vscode.commands.executeCommand('vscode.open', uri);
    const opened = since();
    let active: number | undefined;
    while (!codes(uri).includes('dose/over-limit')) {
      await pause(1);
      if (isActive()) active ??= since();
      ok(since() < 60_000, 'no findings within a minute');
    }
    console.log(
      `suite|   from opening a note: ${opened} ms until it is shown, ${active ?? since()} ms until the extension is active, ${since()} ms until its findings show`,
    );
  });
});
