import * as vscode from 'vscode';
import { sha256 } from '../host/digest.ts';
import { inSlices } from '../../followup/slices.ts';
import { pace } from '../host/clock.ts';
import { writeWhole } from '../host/files.ts';

/** What is kept of one note: a digest of all that its facts follow from, and its facts as a line. */
export interface KeptNote {
  readonly key: string;
  readonly row: string;
}

/**
 * Keeps the facts of notes in a folder of the editor's own storage, so that the list of what is open is there at once
 * the next time. What is not whole is not believed.
 */
export class OpenStore {
  private readonly file: vscode.Uri | undefined;

  /** @param folder where the editor lets an extension keep things; undefined where it does not */
  constructor(private readonly folder: vscode.Uri | undefined) {
    this.file = folder && vscode.Uri.joinPath(folder, 'open-notes.txt');
  }

  /** What was kept, by the addresses of the notes; nothing where nothing was, or it is damaged. */
  async load(): Promise<ReadonlyMap<string, KeptNote>> {
    const kept = new Map<string, KeptNote>();
    if (this.file === undefined) return kept;
    try {
      const text = new TextDecoder().decode(await vscode.workspace.fs.readFile(this.file));
      const end = text.indexOf('\n');
      const body = text.slice(end + 1);
      if (end < 0 || text.slice(0, end) !== (await sha256(body))) return kept;
      const take = (line: string): void => {
        const [key, path] = line.split('\t', 2) as [string, string];
        kept.set(path, { key, row: line.slice(key.length + path.length + 2) });
      };
      await inSlices(linesOf(body), take, pace);
    } catch {
      // The first time there is nothing.
    }
    return kept;
  }

  /** Keeps what is known. That it can't be kept costs only time. */
  async save(notes: ReadonlyMap<string, KeptNote>): Promise<void> {
    if (this.folder === undefined || this.file === undefined) return;
    const lines: string[] = [];
    const add = ([path, { key, row }]: readonly [string, KeptNote]): void => {
      lines.push(`${key}\t${path}\t${row}`);
    };
    await inSlices(notes, add, pace);
    const body = lines.join('\n');
    try {
      await vscode.workspace.fs.createDirectory(this.folder);
      await writeWhole(this.file, `${await sha256(body)}\n${body}`);
    } catch {
      // Then everything is read again the next time.
    }
  }
}

function* linesOf(text: string): Generator<string> {
  for (let at = 0; at < text.length;) {
    const end = text.indexOf('\n', at);
    yield text.slice(at, end < 0 ? text.length : end);
    if (end < 0) return;
    at = end + 1;
  }
}
