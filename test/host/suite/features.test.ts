/** What the editor offers beside findings. */
import * as vscode from 'vscode';
import { closeAll, codes, equal, finding, inWorkspace, ok, open, until } from './help.ts';

const ask = <T>(command: string, ...given: readonly unknown[]): Thenable<T> =>
  vscode.commands.executeCommand<T>(command, ...given);

const placeOf = ({ document }: vscode.TextEditor, text: string): vscode.Position =>
  document.positionAt(document.getText().indexOf(text) + 1);

describe('a note in the editor', () => {
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('explains a dose when it is pointed at, and the key too', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { uri } = editor.document;
    const said = async (text: string): Promise<string> => {
      const hovers = await ask<vscode.Hover[]>('vscode.executeHoverProvider', uri, placeOf(editor, text));
      return hovers
        .flatMap(({ contents }) => contents)
        .map((one) => (one as vscode.MarkdownString).value)
        .join('\n');
    };
    await until(
      'the sum',
      () => said('35 mL'),
      (text) => text.includes('350') && text.includes('279'),
    );
    await until(
      'the help',
      () => said('hemostasis'),
      (text) => text.length > 20,
    );
  });

  it('has an outline, folds, and a selection that grows', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { uri } = editor.document;
    const symbols = await until(
      'the outline',
      () => ask<vscode.DocumentSymbol[]>('vscode.executeDocumentSymbolProvider', uri),
      (found) => Array.isArray(found) && found.length > 0,
    );
    ok(
      symbols.some(({ name }) => name.includes('left upper back')),
      'the procedure is not in the outline',
    );
    const folds = await until(
      'folds',
      () => ask<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', uri),
      (found) => Array.isArray(found) && found.length > 0,
    );
    equal(
      folds.every(({ start, end }) => end > start),
      true,
    );
    const place = placeOf(editor, '35 mL');
    const [selection] = await ask<vscode.SelectionRange[]>('vscode.executeSelectionRangeProvider', uri, [
      place,
    ]);
    ok(selection?.range.contains(place) === true, 'no selection');
    const grown: string[] = [];
    for (let one: vscode.SelectionRange | undefined = selection; one !== undefined; one = one.parent)
      grown.push(editor.document.getText(one.range));
    for (const text of ['35 mL', 'volume: 35 mL']) ok(grown.includes(text), JSON.stringify(grown));
  });

  it('shows over it and behind its volumes how much of the limit is used', async () => {
    const editor = await open('over-limit.wheal.yaml');
    const { uri, lineCount } = editor.document;
    const lenses = await until(
      'lenses',
      () => ask<vscode.CodeLens[]>('vscode.executeCodeLensProvider', uri, 20),
      (found) => Array.isArray(found) && found.length > 0,
    );
    const commands = new Set(await vscode.commands.getCommands());
    for (const { command } of lenses) {
      ok(command !== undefined && command.title !== '', 'a lens says nothing');
      ok(command.command === '' || commands.has(command.command), command.command);
    }
    ok(
      lenses.some(({ command }) => command?.title.includes('% of the limit')),
      'no share of the limit',
    );
    const whole = new vscode.Range(0, 0, lineCount, 0);
    const hints = await until(
      'hints',
      () => ask<vscode.InlayHint[]>('vscode.executeInlayHintProvider', uri, whole),
      (found) => Array.isArray(found) && found.length > 0,
    );
    ok(
      hints.some(({ label }) => typeof label === 'string' && label.includes('350 mg')),
      JSON.stringify(hints),
    );
    equal(
      hints.every(({ label }) => typeof label === 'string' && label.startsWith(' ')),
      true,
      'a hint sits tight to its value',
    );
  });

  it('offers what fits in an empty file, and writes it', async () => {
    const document = await vscode.workspace.openTextDocument({ language: 'wheal' });
    const editor = await vscode.window.showTextDocument(document);
    const list = await until(
      'completions',
      () =>
        ask<vscode.CompletionList>(
          'vscode.executeCompletionItemProvider',
          document.uri,
          new vscode.Position(0, 0),
        ),
      ({ items }) => items.some(({ sortText }) => sortText?.startsWith('0')),
    );
    ok(
      list.items.some(({ label }) => labelOf(label) === 'visit'),
      'visit is not offered',
    );
    await vscode.commands.executeCommand('type', { text: 'v' });
    await vscode.commands.executeCommand('type', { text: 'i' });
    await until('the suggestion to be written', async () => {
      await vscode.commands.executeCommand('editor.action.triggerSuggest');
      await new Promise((resolve) => setTimeout(resolve, 500));
      await vscode.commands.executeCommand('acceptSelectedSuggestion');
      return editor.document.getText().startsWith('visit: ');
    });
  });

  it('keeps the indentation of a completion that goes over rows', async () => {
    const text = 'visit: 2026-03-02\nprocedures:\n  - site: nose\n    anes';
    const document = await vscode.workspace.openTextDocument({ language: 'wheal', content: text });
    const editor = await vscode.window.showTextDocument(document);
    const end = document.positionAt(text.length);
    editor.selection = new vscode.Selection(end, end);
    await until('the suggestion to be written', async () => {
      await vscode.commands.executeCommand('editor.action.triggerSuggest');
      await new Promise((resolve) => setTimeout(resolve, 500));
      await vscode.commands.executeCommand('acceptSelectedSuggestion');
      return document.getText() !== text;
    });
    equal(document.getText().split('\n').slice(3), ['    anesthetic:', '      - ']);
  });

  it('mends a misspelt word, by a fix that is preferred', async () => {
    const { document } = await open('misspelt.wheal.yaml');
    const { range } = await finding(document.uri, 'shape/unknown-word');
    const actions = await until(
      'a fix',
      () => ask<vscode.CodeAction[]>('vscode.executeCodeActionProvider', document.uri, range, 'quickfix'),
      (found) => found.some(({ isPreferred }) => isPreferred === true),
    );
    const [fix] = actions.filter(({ isPreferred }) => isPreferred === true);
    ok(fix?.edit, 'it changes nothing');
    await vscode.workspace.applyEdit(fix.edit);
    equal(document.getText(range.with({ end: range.end.translate(0, 1) })), 'pressure');
    await ask(fix.command!.command, ...(fix.command!.arguments as unknown[]));
    await until('the finding to go', () => !codes(document.uri).includes('shape/unknown-word'));
  });

  it('mends at once all that is safe, and nothing of the record', async () => {
    const { document } = await open('misspelt.wheal.yaml');
    await finding(document.uri, 'shape/unknown-word');
    const before = document.getText();
    // Twice at once, as an impatient finger does: the second must not fix what is fixed.
    await Promise.all([ask('wheal.fixAll'), ask('wheal.fixAll')]);
    equal(document.getText(), before.replace('presure', 'pressure').replace(' .5 mL', ' 0.5 mL'));
  });

  it('mends what is safe when it is saved, where somebody wants that', async () => {
    const uri = inWorkspace('misspelt.wheal.yaml');
    const before = await vscode.workspace.fs.readFile(uri);
    const settings = vscode.workspace.getConfiguration('editor');
    const set = (value: unknown): Thenable<void> =>
      settings.update('codeActionsOnSave', value, vscode.ConfigurationTarget.Global);
    await set({ 'source.fixAll.wheal': 'explicit' });
    try {
      const editor = await open('misspelt.wheal.yaml');
      const { document } = editor;
      await finding(uri, 'shape/unknown-word');
      await until('it to be mended', async () => {
        await editor.edit((builder) => {
          builder.insert(new vscode.Position(document.lineCount, 0), '# saved\n');
        });
        await document.save();
        return document.getText().includes('hemostasis: pressure');
      });
      ok(document.getText().includes(' 0.5 mL'), document.getText());
      ok(!document.getText().includes('??'), 'a gap was put in');
    } finally {
      await set(undefined);
      await vscode.workspace.fs.writeFile(uri, before);
    }
  });

  it('leads from what is accepted to its finding, and to the page of its check', async () => {
    const content =
      'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left cheek\n    method: punch\n' +
      '    accepted: [{check: closure/missing, reason: left open, by: K.O.}]\n';
    const document = await vscode.workspace.openTextDocument({ language: 'wheal', content });
    const editor = await vscode.window.showTextDocument(document);
    const place = placeOf(editor, 'closure/missing');
    const targets = await until(
      'the finding',
      () => ask<vscode.LocationLink[]>('vscode.executeDefinitionProvider', document.uri, place),
      ({ length }) => length > 0,
    );
    equal(
      targets.map(({ targetRange }) => document.getText(targetRange)),
      ['site'],
    );
    const links = await until(
      'the link',
      () => ask<vscode.DocumentLink[]>('vscode.executeLinkProvider', document.uri),
      ({ length }) => length > 0,
    );
    equal(
      links.map(({ range, target }) => [document.getText(range), target?.toString().split('?')[0]]),
      [['closure/missing', 'command:wheal.aboutCheck']],
    );
  });

  it('corrects the record only by what a person then writes, and prefers nothing of it', async () => {
    const { document, selection } = await open('over-limit.wheal.yaml');
    ok(selection.isEmpty, 'nothing is selected yet');
    const { range } = await finding(document.uri, 'dose/over-limit');
    const actions = await until(
      'corrections',
      () => ask<vscode.CodeAction[]>('vscode.executeCodeActionProvider', document.uri, range, 'quickfix'),
      (found) => found.some(({ title }) => title.startsWith('correct the record')),
    );
    equal(
      actions.map(({ title }) => title).filter((title) => /record|over-limit/.test(title)),
      [
        'correct the record: volume as ??',
        'correct the record: 3.5 mL',
        'Accept this finding, with a reason (dose/over-limit)',
      ],
    );
    equal(
      actions.some(({ isPreferred }) => isPreferred === true),
      false,
    );
    const gap = actions.find(({ title }) => title.endsWith('volume as ??'));
    ok(gap?.edit && gap.command, 'it changes nothing');
    await vscode.workspace.applyEdit(gap.edit);
    await ask(gap.command.command, ...(gap.command.arguments as unknown[]));
    equal(
      await until('the gap to be selected', () =>
        document.getText(vscode.window.activeTextEditor?.selection ?? range),
      ),
      '??',
    );
  });

  it('is judged by the practice file above it', async () => {
    const { document } = await open('with-practice/above-own-limit.wheal.yaml');
    await finding(document.uri, 'dose/over-limit');
    const practice = inWorkspace('with-practice/practice.wheal.yaml');
    const before = await vscode.workspace.fs.readFile(practice);
    const looser = new TextDecoder().decode(before).replace('max-mg: 100', 'max-mg: 200');
    try {
      await vscode.workspace.fs.writeFile(practice, new TextEncoder().encode(looser));
      await until('the finding to go', () => !codes(document.uri).includes('dose/over-limit'));
    } finally {
      await vscode.workspace.fs.writeFile(practice, before);
    }
    await finding(document.uri, 'dose/over-limit');
  });
});

const labelOf = (label: vscode.CompletionItem['label']): string =>
  typeof label === 'string' ? label : label.label;
