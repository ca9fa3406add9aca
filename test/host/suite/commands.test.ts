import * as vscode from 'vscode';
import { closeAll, codes, equal, finding, inWorkspace, ok, open, until } from './help.ts';

const run = <T>(command: string, ...given: readonly unknown[]): Thenable<T> =>
  vscode.commands.executeCommand<T>(command, ...given);

/** Tabs of the panel beside the notes. */
const panels = (): readonly vscode.Tab[] =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof vscode.TabInputWebview && input.viewType.endsWith('wheal.panel'));

describe('the commands', () => {
  afterEach(async () => {
    await run('workbench.action.files.revert');
    await closeAll();
  });

  it('are those of the manifest', async () => {
    await open('over-limit.wheal.yaml');
    const extension = vscode.extensions.getExtension('wheal.wheal');
    ok(extension, 'the extension is not there');
    await until('activation', () => extension.isActive);
    const { contributes } = extension.packageJSON as {
      readonly contributes: {
        readonly commands: readonly { readonly command: string; readonly title: string }[];
      };
    };
    const there = (await vscode.commands.getCommands(true)).filter((id) => id.startsWith('wheal.'));
    const named = contributes.commands.map(({ command }) => command);
    equal(
      named.filter((id) => !there.includes(id)),
      [],
    );
    // Each view has some that the editor makes.
    equal(
      there.filter((id) => !named.includes(id) && !id.startsWith('wheal.open.')),
      ['wheal.afterFix'],
    );
    for (const { title } of contributes.commands) ok(!title.includes('%'), `${title} has no words`);
  });

  it('begin a note in which nothing is filled in', async () => {
    await run('wheal.newNote');
    const editor = await until('a note', () => vscode.window.activeTextEditor);
    const text = await until(
      'its text',
      () => editor!.document.getText(),
      (one) => one.includes('visit:'),
    );
    equal(editor!.document.languageId, 'wheal');
    ok(/^visit: \?\?$/m.test(text), text);
  });

  it('copy the chart summary', async () => {
    await open('over-limit.wheal.yaml');
    await vscode.env.clipboard.writeText('');
    await run('wheal.copySummary');
    const text = await until('the clipboard', () => vscode.env.clipboard.readText());
    ok(text.includes('left upper back') || text.includes('Left upper back'), text);
    ok(text.includes('350 mg'), text);
  });

  it('show the panel beside the note, one for all notes', async () => {
    await open('over-limit.wheal.yaml');
    await run('wheal.previewSummary');
    await until('the panel', () => panels().length === 1);
    await open('misspelt.wheal.yaml');
    await run('wheal.previewHandout');
    await until('the panel of the other note', () => panels()[0]?.label === 'Beside misspelt');
    equal(panels().length, 1);
  });

  it('open the page of a check, offline', async () => {
    await open('over-limit.wheal.yaml');
    await run('wheal.aboutCheck', 'dose/over-limit');
    const page = await until('the page', () =>
      vscode.workspace.textDocuments.find(
        ({ uri }) => uri.scheme === 'wheal' && uri.path.endsWith('dose/over-limit.md'),
      ),
    );
    ok(page!.getText().includes('# dose/over-limit'), page!.getText());
  });

  it('check a whole folder, closed notes too', async () => {
    await open('misspelt.wheal.yaml');
    const closed = inWorkspace('over-limit.wheal.yaml');
    equal(codes(closed), []);
    // Its closing message waits for an answer.
    void run('wheal.checkFolder');
    await finding(closed, 'dose/over-limit');
    await finding(inWorkspace('with-practice/above-own-limit.wheal.yaml'), 'dose/over-limit');
  });

  it('have a task that checks all notes', async () => {
    await open('misspelt.wheal.yaml');
    const tasks = await until(
      'the task',
      () => vscode.tasks.fetchTasks({ type: 'wheal' }),
      ({ length }) => length > 0,
    );
    equal(
      tasks.map(({ problemMatchers }) => problemMatchers),
      [['$wheal']],
    );
    const late = inWorkspace('late.wheal.yaml');
    const { fs } = vscode.workspace;
    await fs.copy(inWorkspace('over-limit.wheal.yaml'), late);
    const ended = new Promise<number | undefined>((resolve) => {
      vscode.tasks.onDidEndTaskProcess(({ exitCode }) => {
        resolve(exitCode);
      });
    });
    try {
      await vscode.tasks.executeTask(tasks[0]!);
      equal(await ended, 1, 'there are errors');
      // By way of what the task writes and the problem matcher reads: nothing else looks at a closed note.
      equal((await finding(late, 'dose/over-limit')).severity, vscode.DiagnosticSeverity.Error);
    } finally {
      await fs.delete(late);
    }
  });
});
