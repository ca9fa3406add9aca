/** A punch note in which five things are wrong, typed row by row: each is stopped where it is. */
import * as vscode from 'vscode';
import { closeAll, codes, diagnostics, equal, finding, until } from './help.ts';

const { Error, Warning } = vscode.DiagnosticSeverity;

/** What must have been found when a row is left: code, severity, and the text that it is under. */
type Stop = readonly [code: string, severity: vscode.DiagnosticSeverity, under: string];

/** Invented: there is no such patient. */
const rows: readonly (readonly [row: string, stop?: Stop])[] = [
  ['wheal: 1'],
  ['visit: 2026-03-02 10:05'],
  ['clinician: K.O.'],
  ['patient:'],
  ['  id: X-100'],
  ['  born: 1961-08-09'],
  ['  weight: 62 kg'],
  ['  allergies: [lidocaine]'],
  ['  implants: pacemaker'],
  ['  medications: none'],
  ['consent: written'],
  ['time-out: 10:12'],
  ['procedures:'],
  ['  - site: left cheek'],
  ['    landmarks: 4 cm from the ear'],
  ['    lesion: brown papule 5 mm'],
  ['    question: basal cell carcinoma'],
  ['    method: punch'],
  ['    size: 4 mm'],
  ['    depth: subcutis'],
  ['    anesthetic:'],
  ['      - agent: lidocaine', ['allergy/agent', Error, 'lidocaine']],
  ['        concentration: 1%'],
  ['        volume: 35 mL', ['dose/over-limit', Error, '35 mL']],
  ['    hemostasis: electrosurgery', ['device/electrosurgery', Error, 'electrosurgery']],
  ['    specimen:'],
  ['      label: A'],
  ['      medium: formalin'],
  ['      tests: [direct immunofluorescence]', ['specimen/wrong-medium', Error, 'formalin']],
  ['    dressing: petrolatum'],
  ['    complications: none'],
  ['aftercare: {given: spoken, language: en}', ['closure/missing', Warning, 'site']],
];

/** Puts the indentation of the row with the caret right, as a person does, and types it, key by key. */
async function typeRow({ document, selection }: vscode.TextEditor, row: string): Promise<void> {
  const { line } = selection.active;
  const indent = /^ */.exec(row)?.[0] ?? '';
  const type = (text: string): Thenable<unknown> => vscode.commands.executeCommand('type', { text });
  const there = (): number => document.lineAt(line).text.length;
  while (there() > indent.length) await vscode.commands.executeCommand('deleteLeft');
  if (there() < indent.length) await type(indent.slice(there()));
  // One after the other without a wait, as fast fingers do.
  const keys = [];
  for (const key of row.slice(indent.length)) keys.push(type(key));
  await Promise.all(keys);
  await until(row, () => document.lineAt(line).text === row);
}

describe('a wrong punch note', () => {
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('is stopped at dose, allergy, device, specimen and closure while it is typed', async () => {
    const document = await vscode.workspace.openTextDocument({ language: 'wheal' });
    const editor = await vscode.window.showTextDocument(document);
    const { uri } = document;
    const seen = async (stops: readonly Stop[]): Promise<void> => {
      for (const [code, severity, under] of stops) {
        const found = await finding(uri, code);
        equal([document.getText(found.range), found.severity], [under, severity], code);
      }
    };
    const stopsOf = (some: typeof rows): readonly Stop[] =>
      some.flatMap(([, stop]) => (stop === undefined ? [] : [stop]));
    for (const [at, [row]] of rows.entries()) {
      if (at > 0) {
        await vscode.commands.executeCommand('editor.action.insertLineAfter');
        await until('the next row', () => editor.selection.active.line === at);
      }
      await seen(stopsOf(rows.slice(0, at)));
      await typeRow(editor, row);
      const early = stopsOf(rows.slice(at + 1)).map(([code]) => code);
      equal(
        codes(uri).filter((code) => early.includes(code)),
        [],
        row,
      );
    }
    await vscode.commands.executeCommand('cursorTop');
    await seen(stopsOf(rows));
    equal(document.getText(), rows.map(([row]) => row).join('\n'));
    equal(stopsOf(rows).length, 5);
    equal(
      diagnostics(uri).filter(({ severity }) => severity === Error).length,
      stopsOf(rows).filter(([, severity]) => severity === Error).length,
      'more errors than there are faults',
    );
  });
});
