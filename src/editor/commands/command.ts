import type * as vscode from 'vscode';
import type { Notes } from '../notes/notes.ts';
import type { OpenView } from '../open-items/view.ts';
import type { NotePanel } from '../panel/panel.ts';
import type { Pages } from '../papers/pages.ts';
import type { Practices } from '../host/practices.ts';

/** What commands work with. */
export interface Workshop {
  readonly notes: Notes;
  readonly pages: Pages;
  readonly panel: NotePanel;
  readonly practices: Practices;
  readonly open: OpenView;
}

/** What a command does; what it is given comes from menus, links and other extensions, so it may be anything. */
export type Command = (workshop: Workshop, ...given: readonly unknown[]) => Thenable<unknown>;

/** An address that a command was given, as menus of the explorer do. */
export const givenUri = (given: unknown): vscode.Uri | undefined =>
  typeof given === 'object' && given !== null && 'scheme' in given && 'path' in given
    ? (given as vscode.Uri)
    : undefined;
