import * as vscode from 'vscode';
import { lensesOf, type Lens } from '../../service/index.ts';
import { rangeIn } from '../host/convert.ts';
import { selector, type Feature } from './feature.ts';

/** What pressing a lens does; one without a command only tells. */
const commands: Readonly<Partial<Record<NonNullable<Lens['command']>, string>>> = {
  summary: 'wheal.previewSummary',
  handout: 'wheal.handout',
  dose: 'wheal.doseBeforeNeedle',
  findings: 'workbench.actions.view.problems',
};

export const lenses: Feature = (notes) => {
  const changed = new vscode.EventEmitter<void>();
  return vscode.Disposable.from(
    changed,
    notes.onDidReload(() => {
      changed.fire();
    }),
    vscode.languages.registerCodeLensProvider(selector, {
      onDidChangeCodeLenses: changed.event,
      async provideCodeLenses(document, token) {
        const note = await notes.find(document);
        if (note === undefined || token.isCancellationRequested) return undefined;
        return lensesOf(note.analysis).flatMap((lens) => lensOf(document, lens));
      },
    }),
  );
};

function lensOf(document: vscode.TextDocument, { command, title, ...range }: Lens): vscode.CodeLens[] {
  const id = command === undefined ? '' : commands[command];
  // What nothing can be done with yet is not shown.
  return id === undefined ? [] : [new vscode.CodeLens(rangeIn(document, range), { command: id, title })];
}
