import * as vscode from 'vscode';
import { catalogue } from '../../checks/index.ts';
import { checkHead } from '../../documents/check-page.ts';

/** The scheme of what is only read: pages of checks, and help. */
const scheme = 'wheal';
const help = '/editor/walkthrough/help.md';

/** Texts that the extension shows as Markdown, from its own files; nothing comes from elsewhere. */
export class Pages implements vscode.Disposable, vscode.TextDocumentContentProvider {
  private readonly provider: vscode.Disposable;

  constructor(private readonly extension: vscode.Uri) {
    this.provider = vscode.workspace.registerTextDocumentContentProvider(scheme, this);
  }

  /** Only pages that there are: an address may come from anywhere. */
  async provideTextDocumentContent({ path }: vscode.Uri): Promise<string> {
    const code = /^\/checks\/(.+)\.md$/.exec(path)?.[1];
    if (code !== undefined) return await this.page(code);
    return path === help ? await this.own('src', help) : '';
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
    return show(`/checks/${code}.md`);
  }

  /** Shows what helps in the first minute. */
  showHelp(): Thenable<unknown> {
    return show(help);
  }

  dispose(): void {
    this.provider.dispose();
  }
}

/** As a preview where the editor's Markdown is there, as text otherwise. */
async function show(path: string): Promise<void> {
  const uri = vscode.Uri.from({ scheme, path });
  try {
    await vscode.commands.executeCommand('markdown.showPreview', uri);
  } catch {
    await vscode.window.showTextDocument(uri, { preview: true });
  }
}
