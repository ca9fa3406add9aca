import * as vscode from 'vscode';
import { commands } from './commands/index.ts';
import { features } from './features/index.ts';
import { keepMisnamed } from './folder/misnamed.ts';
import { Notes } from './notes/notes.ts';
import { OpenView } from './open-items/view.ts';
import { NotePanel } from './panel/panel.ts';
import { Pages } from './papers/pages.ts';
import { Practices } from './host/practices.ts';
import { checkTasks } from './folder/tasks.ts';

/** Binds the language service to the editor; the same on the desktop and in a browser. */
export function activate(context: vscode.ExtensionContext): void {
  const log = vscode.window.createOutputChannel('Wheal', { log: true });
  const practices = new Practices();
  const notes = new Notes(practices, log);
  const pages = new Pages(context.extensionUri);
  const panel = new NotePanel(context.extensionUri, notes);
  const open = new OpenView(context, practices);
  context.subscriptions.push(log, practices, notes, pages, panel, open);
  context.subscriptions.push(...features.map((register) => register(notes)));
  context.subscriptions.push(
    ...Object.entries(commands).map(([id, run]) =>
      vscode.commands.registerCommand(id, (...given: unknown[]) =>
        run({ notes, practices, pages, panel, open }, ...given),
      ),
    ),
    checkTasks(practices),
    keepMisnamed(),
  );
}
