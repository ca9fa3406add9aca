/** A file system that is nobody's disk, as virtual workspaces have. */
import * as vscode from 'vscode';

export class Memory implements vscode.FileSystemProvider {
  private readonly changed = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
  readonly onDidChangeFile = this.changed.event;

  constructor(private readonly files: Map<string, Uint8Array>) {}

  stat({ path }: vscode.Uri): vscode.FileStat {
    const file = this.files.get(path);
    if (file !== undefined) return { type: vscode.FileType.File, ctime: 0, mtime: 0, size: file.length };
    if (path === '/') return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
    throw vscode.FileSystemError.FileNotFound();
  }

  readFile(uri: vscode.Uri): Uint8Array {
    const file = this.files.get(uri.path);
    if (file === undefined) throw vscode.FileSystemError.FileNotFound(uri);
    return file;
  }

  writeFile({ path }: vscode.Uri, content: Uint8Array): void {
    this.files.set(path, content);
  }

  readDirectory(): [string, vscode.FileType][] {
    return [...this.files.keys()].map((path) => [path.slice(1), vscode.FileType.File]);
  }

  watch(): vscode.Disposable {
    return new vscode.Disposable(() => undefined);
  }

  createDirectory(): void {
    // There is one folder.
  }

  delete({ path }: vscode.Uri): void {
    this.files.delete(path);
  }

  rename(from: vscode.Uri, to: vscode.Uri): void {
    this.files.set(to.path, this.readFile(from));
    this.files.delete(from.path);
  }
}
