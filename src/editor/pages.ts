import * as vscode from 'vscode';
import { Timer } from './clock.ts';
import type { Notes } from './notes.ts';
import { summaryOfNote } from './summary.ts';

/** The scheme of what is only read: pages of checks, help, summaries. */
const scheme = 'wheal';
/** Milliseconds without a change until a summary beside its note follows. */
const delay = 300;

/** Texts that the extension shows as Markdown, from its own files and from notes; nothing comes from elsewhere. */
export class Pages implements vscode.Disposable, vscode.TextDocumentContentProvider {
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  private readonly timer = new Timer();
  private readonly subscriptions: readonly { dispose: () => unknown }[];
  readonly onDidChange = this.changed.event;

  constructor(
    private readonly extension: vscode.Uri,
    private readonly notes: Notes,
  ) {
    const follow = (): void => {
      this.timer.set(delay, () => {
        for (const { uri } of vscode.workspace.textDocuments) if (isSummary(uri)) this.changed.fire(uri);
      });
    };
    this.subscriptions = [
      this.changed,
      vscode.workspace.registerTextDocumentContentProvider(scheme, this),
      notes.onDidJudge(follow),
      notes.onDidReload(follow),
    ];
  }

  async provideTextDocumentContent(uri: vscode.Uri): Promise<string> {
    if (isSummary(uri)) return await this.summary(vscode.Uri.parse(uri.query, true));
    const bytes = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(this.extension, 'src', uri.path));
    return new TextDecoder().decode(bytes);
  }

  /** Shows the page of a check. */
  showCheck(code: string): Thenable<unknown> {
    return show(vscode.Uri.from({ scheme, path: `/checks/${code}.md` }));
  }

  /** Shows what helps in the first minute. */
  showHelp(): Thenable<unknown> {
    return show(vscode.Uri.from({ scheme, path: '/editor/walkthrough/help.md' }));
  }

  /** Shows the chart summary beside its note; it follows what is typed. */
  showSummary(note: vscode.Uri): Thenable<unknown> {
    const name = note.path.slice(note.path.lastIndexOf('/') + 1).replace(/\.wheal\.yaml$/, '');
    return show(
      vscode.Uri.from({ scheme, path: `/summary/${name}.md`, query: note.toString() }),
      'markdown.showPreviewToSide',
    );
  }

  dispose(): void {
    this.timer.clear();
    vscode.Disposable.from(...this.subscriptions).dispose();
  }

  private async summary(uri: vscode.Uri): Promise<string> {
    const document = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri.toString());
    const note = document && (await this.notes.find(document));
    if (note === undefined) return vscode.l10n.t('The note is closed.');
    const summary = await summaryOfNote(note, this.notes, 'markdown');
    return 'why' in summary ? summary.why : summary.text;
  }
}

const isSummary = (uri: vscode.Uri): boolean => uri.scheme === scheme && uri.path.startsWith('/summary/');

/** As a preview where the editor's Markdown is there, as text otherwise. */
async function show(uri: vscode.Uri, preview = 'markdown.showPreview'): Promise<void> {
  try {
    await vscode.commands.executeCommand(preview, uri);
  } catch {
    const viewColumn =
      preview === 'markdown.showPreview' ? vscode.ViewColumn.Active : vscode.ViewColumn.Beside;
    await vscode.window.showTextDocument(uri, { viewColumn, preview: true });
  }
}
