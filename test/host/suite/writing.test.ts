/** What shows while a note is being written. */
import * as vscode from 'vscode';
import { closeAll, codes, equal, finding, ok, open, pause, until } from './help.ts';

/** Puts the caret after a text. */
function caretBehind(editor: vscode.TextEditor, text: string): void {
  const { document } = editor;
  const at = document.positionAt(document.getText().indexOf(text) + text.length);
  editor.selection = new vscode.Selection(at, at);
}

/** Types a text, one key after the other. */
async function type(text: string): Promise<void> {
  for (const key of text) await vscode.commands.executeCommand('type', { text: key });
}

const deleteLeft = async (times: number): Promise<void> => {
  for (let time = 0; time < times; time += 1) await vscode.commands.executeCommand('deleteLeft');
};

describe('while a row is typed', () => {
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('nothing shows on it until it is left, and a true fault elsewhere stays', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { uri } = editor.document;
    await finding(uri, 'dose/over-limit');
    caretBehind(editor, 'consent: written');
    await deleteLeft('written'.length);
    await type('writen');
    await pause(1500);
    equal([codes(uri).includes('dose/over-limit'), codes(uri).includes('shape/unknown-word')], [true, false]);
    await vscode.commands.executeCommand('cursorDown');
    await finding(uri, 'shape/unknown-word');
  });

  it('a finished danger shows on it after a second, caret there or not', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { uri } = editor.document;
    await finding(uri, 'dose/over-limit');
    caretBehind(editor, 'volume: 35');
    await deleteLeft(2);
    await until('quiet', () => !codes(uri).includes('dose/over-limit'));
    await type('40');
    await finding(uri, 'dose/over-limit');
    equal(editor.document.lineAt(editor.selection.active).text.trim(), 'volume: 40 mL');
  });

  it('a save by hand ends the quiet', async () => {
    const editor = await open('misspelt.wheal.yaml');
    const { uri } = editor.document;
    await finding(uri, 'shape/unknown-word');
    caretBehind(editor, 'consent: ');
    await type('x');
    await pause(1200);
    const there = codes(uri).length;
    await editor.document.save();
    await until('more to show', () => codes(uri).length > there);
    caretBehind(editor, 'consent: x');
    await deleteLeft(1);
    await editor.document.save();
  });

  it('the part that holds the caret is not asked for what it lacks until the caret leaves it', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { document } = editor;
    await finding(document.uri, 'dose/over-limit');
    const missing = (): number => codes(document.uri).filter((code) => code.includes('missing')).length;
    const before = missing();
    caretBehind(editor, 'medium: formalin}');
    await type('\n');
    await deleteLeft(1);
    await type('- site: right forearm\n');
    ok(
      document.getText().includes('  - site: right forearm\n    '),
      'the row break keeps the column of the list',
    );
    await pause(1500);
    equal(missing(), before);
    await vscode.commands.executeCommand('cursorTop');
    await until('more to be missing', () => missing() > before);
  });
});
