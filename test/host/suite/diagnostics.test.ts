import * as vscode from 'vscode';
import { closeAll, codes, equal, finding, inWorkspace, ok, open, pause, until } from './help.ts';
import { Memory } from './memory.ts';

const code = 'dose/over-limit';

describe('diagnostics', () => {
  afterEach(closeAll);

  it('begin when a note is opened', async () => {
    const editor = await open('over-limit.wheal.yaml');
    equal(editor.document.languageId, 'wheal');
    const extension = vscode.extensions.getExtension('wheal.wheal');
    ok(extension, 'the extension is not there');
    await until('activation', () => extension.isActive);
  });

  it('stand under the volume that goes over the limit', async () => {
    const { document } = await open('over-limit.wheal.yaml');
    const { range, severity } = await finding(document.uri, code);
    equal(document.getText(range), '35 mL');
    equal(severity, vscode.DiagnosticSeverity.Error);
  });

  it('follow the text', async () => {
    const { document, edit } = await openForEdit('over-limit.wheal.yaml');
    const { range } = await finding(document.uri, code);
    await edit(range, '10 mL');
    await until('the finding to go', () => !codes(document.uri).includes(code));
    await edit(new vscode.Range(range.start, range.end), '36 mL');
    await finding(document.uri, code);
  });

  it('go when the note is closed', async () => {
    const { document } = await open('over-limit.wheal.yaml');
    await finding(document.uri, code);
    await closeAll();
    await until(
      'nothing to be left',
      () => codes(document.uri),
      ({ length }) => length === 0,
    );
  });

  it('lead to the page of their check, and to what counts too', async () => {
    const content =
      'visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg}\nprocedures:\n' +
      ['20 mL', '12 mL']
        .map(
          (volume) =>
            `  - site: nose\n    method: shave\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: ${volume}}\n    specimen: {label: A}\n`,
        )
        .join('');
    const document = await vscode.workspace.openTextDocument({ language: 'wheal', content });
    await vscode.window.showTextDocument(document);
    for (const [wanted, ...others] of [
      [code, '20 mL'],
      ['specimen/duplicate-label', 'A'],
    ] as const) {
      const found = await finding(document.uri, wanted);
      const { target } = found.code as { readonly target: vscode.Uri };
      equal([target.scheme, target.path], ['command', 'wheal.aboutCheck']);
      equal(JSON.parse(target.query), [wanted]);
      equal(
        found.relatedInformation?.map(({ location }) => document.getText(location.range)),
        others,
      );
    }
  });

  it('are as grave as the practice file says, dangers aside', async () => {
    const practice = inWorkspace('with-practice/practice.wheal.yaml');
    const { document } = await open('with-practice/above-own-limit.wheal.yaml');
    await finding(document.uri, code);
    const asked = await finding(document.uri, 'record/not-recorded');
    equal(asked.severity, vscode.DiagnosticSeverity.Information);
    const before = await vscode.workspace.fs.readFile(practice);
    const other = `${new TextDecoder().decode(before)}severities: {record/missing-depth: warning, ${code}: off}\n`;
    try {
      await vscode.workspace.fs.writeFile(practice, new TextEncoder().encode(other));
      const severityOf = async (): Promise<vscode.DiagnosticSeverity> =>
        (await finding(document.uri, 'record/missing-depth')).severity;
      await until('a warning', severityOf, (severity) => severity === vscode.DiagnosticSeverity.Warning);
      equal((await finding(document.uri, code)).severity, vscode.DiagnosticSeverity.Error);
    } finally {
      await vscode.workspace.fs.writeFile(practice, before);
    }
  });

  it('come for a note that is not a file, and not for the old side of a comparison', async () => {
    const content = await vscode.workspace.fs.readFile(inWorkspace('over-limit.wheal.yaml'));
    const text = new TextDecoder().decode(content);
    const path = '/over-limit.wheal.yaml';
    const shown = [
      vscode.workspace.registerFileSystemProvider('elsewhere', new Memory(new Map([[path, content]]))),
      vscode.workspace.registerTextDocumentContentProvider('git', { provideTextDocumentContent: () => text }),
    ];
    const [elsewhere, git] = ['elsewhere', 'git'].map((scheme) => vscode.Uri.from({ scheme, path })) as [
      vscode.Uri,
      vscode.Uri,
    ];
    try {
      // Opened first, so that it would have its findings by the time the other has.
      const old = await vscode.workspace.openTextDocument(git);
      equal([old.languageId, old.getText()], ['wheal', text]);
      await vscode.workspace.openTextDocument(elsewhere);
      await finding(elsewhere, code);
      await pause(1500);
      equal(codes(git), []);
    } finally {
      vscode.Disposable.from(...shown).dispose();
    }
  });
});

/** Opens a note with a way to replace a range of it. */
async function openForEdit(path: string): Promise<{
  readonly document: vscode.TextDocument;
  readonly edit: (range: vscode.Range, text: string) => Promise<void>;
}> {
  const editor = await open(path);
  const edit = async (range: vscode.Range, text: string): Promise<void> => {
    const done = await editor.edit((builder) => {
      builder.replace(range, text);
    });
    ok(done, 'the edit was refused');
  };
  return { document: editor.document, edit };
}
