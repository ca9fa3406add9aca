import * as vscode from 'vscode';
import { catalogue } from '../../checks/index.ts';
import { checkHead } from '../../documents/check-page.ts';
import type { Language } from '../../documents/handout/index.ts';
import { plain } from '../../documents/one-line.ts';
import { escaped } from '../../documents/summary/markdown.ts';
import { Timer } from '../host/clock.ts';
import { handoutOfNote, handoutPreview } from './handout.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';
import { summaryOfNote } from './summary.ts';

/** The scheme of what is only read: pages of checks, help, and what follows from a note. */
const scheme = 'wheal';
/** Milliseconds without a change until what stands beside a note follows. */
const delay = 300;

type Written = { readonly text: string } | { readonly why: string };

/** What can be shown beside a note, as Markdown, by the first part of its address; the second may say the language. */
const previews: Readonly<
  Record<string, (note: OpenNote, notes: Notes, language: Language | undefined) => Promise<Written>>
> = {
  summary: (note, notes) => summaryOfNote(note, notes, 'markdown'),
  handout: (note, _, language) => {
    const handout = handoutOfNote(note, language);
    const title = vscode.l10n.t('Before it is handed out:');
    return Promise.resolve('why' in handout ? handout : { text: handoutPreview(handout, title) });
  },
};

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
        for (const { uri } of vscode.workspace.textDocuments)
          if (previewIn(uri) !== undefined) this.changed.fire(uri);
      });
    };
    this.subscriptions = [
      this.changed,
      vscode.workspace.registerTextDocumentContentProvider(scheme, this),
      notes.onDidJudge(follow),
      notes.onDidReload(follow),
      vscode.workspace.onDidCloseTextDocument(follow),
    ];
  }

  async provideTextDocumentContent(uri: vscode.Uri): Promise<string> {
    const preview = previewIn(uri);
    if (preview !== undefined) return await this.preview(preview, vscode.Uri.parse(uri.query, true));
    const code = /^\/checks\/(.+)\.md$/.exec(uri.path)?.[1];
    return code === undefined ? await this.own('src', uri.path) : await this.page(code);
  }

  /** The page of a check: what the check says of itself, and the examples, which are all in one file. */
  private async page(code: string): Promise<string> {
    const check = catalogue.find((one) => one.code === code);
    if (check === undefined) return '';
    const examples = JSON.parse(await this.own('dist', 'pages.json')) as Readonly<Record<string, string>>;
    return `${checkHead(check)}\n${examples[code] ?? ''}`;
  }

  /** The text of a file of the extension's own. */
  private async own(...path: readonly string[]): Promise<string> {
    const uri = vscode.Uri.joinPath(this.extension, ...path);
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(uri));
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
    return showBeside(note, 'summary');
  }

  /** Shows what the patient takes home beside the note; it follows what is typed. */
  showHandout(note: vscode.Uri, language: Language | undefined): Thenable<unknown> {
    return showBeside(note, language === undefined ? 'handout' : `handout/${language}`);
  }

  dispose(): void {
    this.timer.clear();
    vscode.Disposable.from(...this.subscriptions).dispose();
  }

  private async preview({ kind, language }: Preview, uri: vscode.Uri): Promise<string> {
    const document = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri.toString());
    const note = document && (await this.notes.find(document));
    if (note === undefined) return vscode.l10n.t('The note is closed.');
    const written = await previews[kind]!(note, this.notes, language);
    return 'why' in written ? escaped(plain(written.why)) : written.text;
  }
}

interface Preview {
  readonly kind: string;
  readonly language: Language | undefined;
}

/** What an address shows beside a note; undefined where it is a page of its own. */
function previewIn(uri: vscode.Uri): Preview | undefined {
  const [, kind = '', language] = uri.path.split('/');
  if (uri.scheme !== scheme || !Object.hasOwn(previews, kind)) return undefined;
  return { kind, language: language === 'en' || language === 'es' ? language : undefined };
}

function showBeside(note: vscode.Uri, kind: string): Thenable<unknown> {
  const name = note.path.slice(note.path.lastIndexOf('/') + 1).replace(/\.wheal\.yaml$/, '');
  const uri = vscode.Uri.from({
    scheme,
    path: `/${kind}/${name} ${kind.split('/')[0] ?? ''}.md`,
    query: note.toString(),
  });
  return show(uri, 'markdown.showPreviewToSide');
}

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
