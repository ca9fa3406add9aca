import * as vscode from 'vscode';
import { plain } from '../../documents/one-line.ts';
import { checkBelow, Tally, type CheckedFile } from './folder-check.ts';
import type { Practices } from '../host/practices.ts';

/** Tasks that check all notes of a folder, in the same text form as the command line; they need nothing installed. */
export const checkTasks = (practices: Practices): vscode.Disposable =>
  vscode.tasks.registerTaskProvider('wheal', {
    provideTasks: () =>
      (vscode.workspace.workspaceFolders ?? []).map((folder) => taskOf({ type: 'wheal' }, folder, practices)),
    resolveTask: ({ definition, scope }) =>
      typeof scope === 'object' ? taskOf(definition, scope, practices) : undefined,
  });

function taskOf(
  definition: vscode.TaskDefinition,
  workspace: vscode.WorkspaceFolder,
  practices: Practices,
): vscode.Task {
  const below: unknown = definition['path'];
  const folder = vscode.Uri.joinPath(workspace.uri, typeof below === 'string' ? below : '.');
  const task = new vscode.Task(
    definition,
    workspace,
    vscode.l10n.t('check all notes'),
    'wheal',
    new vscode.CustomExecution(() => Promise.resolve(new CheckTerminal(folder, workspace.uri, practices))),
    '$wheal',
  );
  task.group = vscode.TaskGroup.Test;
  return task;
}

/** A terminal in which a check runs. */
class CheckTerminal implements vscode.Pseudoterminal {
  private readonly written = new vscode.EventEmitter<string>();
  private readonly ended = new vscode.EventEmitter<number>();
  private readonly stop = new vscode.CancellationTokenSource();
  readonly onDidWrite = this.written.event;
  readonly onDidClose = this.ended.event;

  constructor(
    private readonly folder: vscode.Uri,
    private readonly root: vscode.Uri,
    private readonly practices: Practices,
  ) {}

  open(): void {
    void this.run();
  }

  close(): void {
    this.stop.cancel();
  }

  private async run(): Promise<void> {
    const tally = new Tally();
    let errors = false;
    for await (const file of checkBelow([this.folder], this.practices, this.stop.token)) {
      tally.add(file);
      errors ||= file.diagnostics.some(({ severity }) => severity === 'error');
      for (const line of linesOf(file, this.root)) this.written.fire(`${line}\r\n`);
    }
    this.written.fire(`\r\n${tally.words}\r\n`);
    this.ended.fire(errors ? 1 : 0);
  }
}

function linesOf({ uri, diagnostics }: CheckedFile, root: vscode.Uri): readonly string[] {
  const path = uri.path.startsWith(`${root.path}/`) ? uri.path.slice(root.path.length + 1) : uri.fsPath;
  return diagnostics.map(
    ({ range: { start }, severity, message, code }) =>
      `${plain(path)}:${start.line + 1}:${start.character + 1}  ${severity}  ${plain(message)}  [${code}]`,
  );
}
