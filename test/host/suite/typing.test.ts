/** Every row of the clean samples typed again, key by key, in the real editor. */
import * as vscode from 'vscode';
import { closeAll, codes, diagnostics, equal, finding, inWorkspace, ok, open, until } from './help.ts';

/** The samples, as texts by their names; put here where the suite is bundled. */
declare const SAMPLES: Readonly<Record<string, string>>;

const folder = 'typed';
const clean = Object.entries(SAMPLES)
  .filter(([, text]) => text.includes('\n# Clean: '))
  .map(([name]) => name)
  // The bundle is the same in both hosts; the browser's is slower, and types a part of them.
  .filter((_, at) => 'process' in globalThis || at < 3);
const sutured = 'punch-sutured.wheal.yaml';
const overLimit = (SAMPLES[sutured] ?? '').replace(/volume: .*/, 'volume: 90 mL');
const danger = 'dose/over-limit';
/** In a folder of its own: notes of one patient and day that are together count together. */
const faulty = 'fault/over-limit.wheal.yaml';

/** What shows of a note after a key. */
interface State {
  readonly row: number;
  readonly text: string;
  readonly findings: readonly vscode.Diagnostic[];
}

const write = (name: string, text: string): Thenable<void> =>
  vscode.workspace.fs.writeFile(inWorkspace(`${folder}/${name}`), new TextEncoder().encode(text));

/** Opens a note, and waits until it is judged: then it has lenses. */
async function opened(name: string): Promise<vscode.TextEditor> {
  const editor = await open(`${folder}/${name}`);
  await until(
    'lenses',
    () =>
      vscode.commands.executeCommand<vscode.CodeLens[]>(
        'vscode.executeCodeLensProvider',
        editor.document.uri,
      ),
    (found) => Array.isArray(found) && found.length > 0,
  );
  return editor;
}

/**
 * Takes a row away and types it again. The keys are sent one after the other without a wait, and what shows is read at
 * each change of the text: the extension has judged that change by then, since it was mentioned it first.
 */
async function retype(editor: vscode.TextEditor, row: number): Promise<State[]> {
  const { document } = editor;
  const { range, text } = document.lineAt(row);
  const states: State[] = [];
  const reading = vscode.workspace.onDidChangeTextDocument((change) => {
    if (change.document === document && change.contentChanges.length > 0)
      states.push({ row, text: document.lineAt(row).text, findings: diagnostics(document.uri) });
  });
  const keys = [];
  editor.selection = new vscode.Selection(range.start, range.end);
  keys.push(vscode.commands.executeCommand('deleteLeft'));
  for (const key of text) keys.push(vscode.commands.executeCommand('type', { text: key }));
  await Promise.all(keys);
  await until(
    `row ${row} to be typed`,
    () => document.lineAt(row).text,
    (typed) => typed === text,
  );
  reading.dispose();
  return states;
}

/** The states of a whole note, all of its rows typed again. */
async function retypeAll(editor: vscode.TextEditor, leave: readonly number[] = []): Promise<State[]> {
  const states: State[] = [];
  for (let row = 0; row < editor.document.lineCount; row += 1)
    if (editor.document.lineAt(row).text !== '' && !leave.includes(row))
      states.push(...(await retype(editor, row)));
  return states;
}

const codeOf = ({ code }: vscode.Diagnostic): string => (code as { value: string }).value;

describe('typing every row again', function () {
  this.timeout(900_000);

  before(async () => {
    for (const name of [...clean, 'practice.wheal.yaml']) await write(name, SAMPLES[name] ?? '');
    await write(faulty, overLimit);
  });

  after(() => vscode.workspace.fs.delete(inWorkspace(folder), { recursive: true }));

  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('blames no other row, and hardly ever its own', async () => {
    const noise = { states: 0, elsewhere: 0, anywhere: 0 };
    const blamed = new Set<string>();
    const began = Date.now();
    for (const name of clean) {
      const editor = await opened(name);
      const { uri } = editor.document;
      // What a clean note owes by today stays shown, and is no noise.
      const before = new Set(codes(uri));
      for (const { row, findings } of await retypeAll(editor)) {
        const rows = findings
          .filter((one) => one.severity !== vscode.DiagnosticSeverity.Hint && !before.has(codeOf(one)))
          .map(({ range }) => range.start.line);
        noise.states += 1;
        if (rows.length > 0) noise.anywhere += 1;
        if (rows.some((one) => one !== row)) noise.elsewhere += 1;
        for (const one of findings) if (!before.has(codeOf(one))) blamed.add(`${name}: ${codeOf(one)}`);
      }
      await vscode.commands.executeCommand('workbench.action.files.revert');
      await closeAll();
    }
    const percent = (100 * noise.anywhere) / noise.states;
    const { states } = noise;
    console.log(
      `suite|   ${states} states of ${clean.length} notes in ${Date.now() - began} ms: ${percent}%%`,
    );
    ok(states > clean.length * 800, `${states} states`);
    equal(
      noise.elsewhere,
      0,
      `${noise.elsewhere} of ${states} states blame another row: ${[...blamed].join(', ')}`,
    );
    ok(percent <= 4, `${percent}% of ${states} states blame something`);
  });

  it('goes on showing a true fault on another row, in every state', async () => {
    const editor = await opened(faulty);
    const { range } = await finding(editor.document.uri, danger);
    const states = await retypeAll(editor, [range.start.line]);
    ok(states.length > 500, `${states.length} states`);
    equal(
      states
        .filter(({ findings }) => !findings.some((one) => codeOf(one) === danger))
        .map(({ text }) => text),
      [],
    );
  });

  it('shows a finished over-limit volume on its own row, the caret still there', async () => {
    const editor = await opened(faulty);
    const { range } = await finding(editor.document.uri, danger);
    const states = await retype(editor, range.start.line);
    equal(
      states.filter(({ findings }) => findings.some((one) => one.range.start.line === range.start.line))
        .length,
      0,
    );
    const shown = await finding(editor.document.uri, danger);
    equal([shown.range.start.line, editor.selection.active.line], [range.start.line, range.start.line]);
  });
});
