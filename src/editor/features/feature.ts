import type * as vscode from 'vscode';
import type { Notes } from '../notes/notes.ts';

/** Registers one thing that the editor can do with notes. */
export type Feature = (notes: Notes) => vscode.Disposable;

/** For which documents the editor asks; which of them hold a note, `Notes` says. */
export const selector: vscode.DocumentSelector = { language: 'wheal' };
