import * as vscode from 'vscode';
import { panelOf, procedureAt, type PanelView } from '../../service/index.ts';
import { Timer } from '../host/clock.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';
import { askedIn, rememberedIn, type Asked, type Remembered, type Shown } from './messages.ts';

const type = 'wheal.panel';
/** Milliseconds without a change until the panel follows. */
const delay = 150;

/** The one panel beside the notes: it shows the note that was last in front, and follows what is typed. */
export class NotePanel implements vscode.Disposable, vscode.WebviewPanelSerializer {
  private panel: vscode.WebviewPanel | undefined;
  private shown: Remembered | undefined;
  private readonly timer = new Timer();
  private readonly subscriptions: readonly vscode.Disposable[];

  constructor(
    private readonly extension: vscode.Uri,
    private readonly notes: Notes,
  ) {
    const { window } = vscode;
    this.subscriptions = [
      window.registerWebviewPanelSerializer(type, this),
      notes.onDidJudge(({ document }) => {
        if (document.uri.toString() === this.shown?.note) this.follow();
      }),
      notes.onDidReload(() => {
        this.follow();
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        if (editor !== undefined) void this.turnTo(editor.document);
      }),
      window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        const caret = selections[0]?.active;
        if (caret !== undefined) void this.markCaret(textEditor.document, caret);
      }),
    ];
  }

  /** Shows a note beside its text, the handout in a language where one is named. */
  show(note: OpenNote, view: PanelView, language?: Remembered['language']): void {
    this.shown = { note: note.document.uri.toString(), view, language };
    if (this.panel === undefined) {
      const beside = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      this.adopt(vscode.window.createWebviewPanel(type, vscode.l10n.t('Beside the note'), beside));
    } else this.panel.reveal(undefined, true);
    this.follow();
  }

  /** Takes over the panel of an earlier window. */
  deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Thenable<void> {
    this.shown = rememberedIn(state);
    if (this.shown === undefined || this.panel !== undefined) panel.dispose();
    else this.adopt(panel);
    return Promise.resolve();
  }

  dispose(): void {
    this.timer.clear();
    vscode.Disposable.from(...this.subscriptions).dispose();
    this.panel?.dispose();
  }

  private adopt(panel: vscode.WebviewPanel): void {
    this.panel = panel;
    const dist = vscode.Uri.joinPath(this.extension, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [dist] };
    panel.webview.html = pageOf(panel.webview, dist);
    panel.webview.onDidReceiveMessage((message) => void this.answer(askedIn(message)));
    panel.onDidDispose(() => {
      this.panel = undefined;
      this.timer.clear();
    });
  }

  private follow(): void {
    if (this.panel !== undefined) this.timer.set(delay, () => void this.draw());
  }

  /** Another note is in front. */
  private async turnTo(document: vscode.TextDocument): Promise<void> {
    if (this.panel === undefined || this.shown === undefined) return;
    const note = await this.notes.find(document);
    if (note === undefined || note.document.uri.toString() === this.shown.note) return;
    this.shown = { ...this.shown, note: note.document.uri.toString() };
    this.follow();
  }

  private async note(): Promise<OpenNote | undefined> {
    const address = this.shown?.note;
    const document = vscode.workspace.textDocuments.find(({ uri }) => uri.toString() === address);
    return document === undefined ? undefined : await this.notes.find(document);
  }

  private async draw(): Promise<void> {
    const note = await this.note();
    const { panel, shown } = this;
    if (panel === undefined || shown === undefined) return;
    panel.title = titleOf(shown.note);
    const practice = note && (await this.notes.practiceOf(note.document.uri));
    const sections =
      note === undefined
        ? []
        : panelOf(note.analysis, note.diagnostics, {
            view: shown.view,
            language: shown.language,
            practice: practice === undefined ? undefined : vscode.workspace.asRelativePath(practice),
          });
    await this.post({ kind: 'show', sections, remembered: shown });
    const editor = vscode.window.visibleTextEditors.find(({ document }) => document === note?.document);
    if (editor !== undefined) await this.markCaret(editor.document, editor.selection.active);
  }

  private async markCaret(document: vscode.TextDocument, caret: vscode.Position): Promise<void> {
    if (this.panel === undefined || document.uri.toString() !== this.shown?.note) return;
    const note = await this.notes.find(document);
    if (note !== undefined)
      await this.post({ kind: 'caret', procedure: procedureAt(note.analysis, document.offsetAt(caret)) });
  }

  private async post(message: Shown): Promise<void> {
    await this.panel?.webview.postMessage(message);
  }

  private async answer(asked: Asked | undefined): Promise<void> {
    if (asked === undefined || this.shown === undefined) return;
    if (asked.kind === 'ready') await this.draw();
    else if (asked.kind === 'view') {
      this.shown = { ...this.shown, view: asked.view };
      await this.draw();
    } else await this.go(asked);
  }

  /** Puts the caret where something of the panel was activated. */
  private async go(asked: Exclude<Asked, { kind: 'ready' | 'view' }>): Promise<void> {
    const document = (await this.note())?.document;
    if (document === undefined) return;
    const at =
      asked.kind === 'go'
        ? document.positionAt(asked.start)
        : document.validatePosition(new vscode.Position(asked.line, asked.character));
    const open = vscode.window.visibleTextEditors.find((one) => one.document === document);
    await vscode.window.showTextDocument(document, {
      viewColumn: open?.viewColumn ?? vscode.ViewColumn.One,
      selection: new vscode.Range(at, at),
    });
  }
}

function titleOf(address: string): string {
  const path = vscode.Uri.parse(address).path;
  return vscode.l10n.t('Beside {0}', path.slice(path.lastIndexOf('/') + 1).replace(/\.wheal\.yaml$/, ''));
}

/** The frame of the panel: its own script and style, and nothing from anywhere else. */
function pageOf(webview: vscode.Webview, dist: vscode.Uri): string {
  const nonce = Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
  const address = (name: string): string => webview.asWebviewUri(vscode.Uri.joinPath(dist, name)).toString();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  const button = (view: PanelView, label: string): string =>
    `<button type="button" data-view="${view}" aria-pressed="false">${label}</button>`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${address('panel.css')}">
<title>Wheal</title>
</head>
<body>
<nav aria-label="${vscode.l10n.t('What is shown')}">
${button('summary', vscode.l10n.t('Pictures and summary'))}
${button('handout', vscode.l10n.t('Patient handout'))}
</nav>
<main></main>
<script nonce="${nonce}" src="${address('client.js')}"></script>
</body>
</html>
`;
}
