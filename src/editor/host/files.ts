import * as vscode from 'vscode';
import { isNoteName, isSkipped, largest, practiceName } from '../../note/text/files.ts';
import { Entered } from './entered.ts';

export const isPractice = ({ path }: vscode.Uri): boolean => path.endsWith(`/${practiceName}`);

export const isNoteFile = (uri: vscode.Uri): boolean => isNoteName(uri.path) && !isPractice(uri);

export type Loaded = { readonly text: string } | { readonly code: string; readonly isThere: boolean };

/** The text of a file, or the code of the check that says why there is none. */
export async function load(uri: vscode.Uri): Promise<Loaded> {
  try {
    const { size } = await vscode.workspace.fs.stat(uri);
    if (size > largest) return { code: 'yaml/too-large', isThere: true };
    return decoded(await vscode.workspace.fs.readFile(uri));
  } catch (error) {
    return { code: 'yaml/unreadable', isThere: !isMissing(error) };
  }
}

const isMissing = (error: unknown): boolean =>
  error instanceof vscode.FileSystemError && /^(?:FileNotFound|FileNotADirectory)$/.test(error.code);

/**
 * Every note and practice file below a folder, in the order of names. A folder that can't be read is among them itself. Links
 * to folders are followed, as the command line does, and each folder is entered once.
 */
export async function* filesBelow(folder: vscode.Uri, entered = new Entered()): AsyncGenerator<vscode.Uri> {
  const entries = await vscode.workspace.fs.readDirectory(folder).then(undefined, () => undefined);
  if (entries === undefined) {
    yield folder;
    return;
  }
  const stat = await vscode.workspace.fs.stat(folder).then(undefined, () => undefined);
  if (stat !== undefined && !entered.isNew({ ...stat, names: entries.map(([name]) => name) })) return;
  for (const [name, type] of entries.sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (isSkipped(name)) continue;
    const uri = vscode.Uri.joinPath(folder, name);
    if ((type & vscode.FileType.Directory) !== 0)
      yield* filesBelow(uri, isLink(type) ? entered.linked() : entered);
    else if (isNoteName(name) || mayBeFolder(name, type)) yield uri;
  }
}

const isLink = (type: vscode.FileType): boolean => (type & vscode.FileType.SymbolicLink) !== 0;

/** A link that leads nowhere may be one to a folder. */
const mayBeFolder = (name: string, type: vscode.FileType): boolean =>
  isLink(type) && (type & vscode.FileType.File) === 0 && !/\.\w{1,5}$/.test(name);

/** The notes in a folder itself. One that can't be read holds none. */
export async function notesIn(folder: vscode.Uri): Promise<readonly vscode.Uri[]> {
  const entries = await vscode.workspace.fs.readDirectory(folder).then(undefined, () => []);
  const names = entries.map(([name]) => name).filter((name) => !isSkipped(name));
  return names.map((name) => vscode.Uri.joinPath(folder, name)).filter(isNoteFile);
}

/** Tells of every file with such a name in the workspace that changes, comes or goes. */
export function watched(name: string, tell: (uri: vscode.Uri) => void): readonly vscode.Disposable[] {
  const watcher = vscode.workspace.createFileSystemWatcher(`**/${name}`);
  return [watcher, watcher.onDidChange(tell), watcher.onDidCreate(tell), watcher.onDidDelete(tell)];
}

function decoded(bytes: Uint8Array): Loaded {
  const refused = { code: 'yaml/not-text', isThere: true };
  try {
    return bytes.includes(0) ? refused : { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return refused;
  }
}

/**
 * Writes a file whole or not at all.
 * @throws the file system's own error; then what was there before is there still
 */
export async function writeWhole(uri: vscode.Uri, text: string): Promise<void> {
  const { fs } = vscode.workspace;
  // A name that nobody else uses.
  const part = uri.with({ path: `${uri.path}.${Date.now().toString(36)}.part` });
  try {
    await fs.writeFile(part, new TextEncoder().encode(text));
    await fs.rename(part, uri, { overwrite: true });
  } catch (error) {
    await fs.delete(part).then(undefined, () => undefined);
    throw error;
  }
}

/** Whether there is a file or a folder. */
export const exists = async (uri: vscode.Uri): Promise<boolean> => {
  try {
    await vscode.workspace.fs.stat(uri);
    return true;
  } catch {
    return false;
  }
};
