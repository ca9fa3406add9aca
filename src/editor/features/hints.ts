import * as vscode from 'vscode';
import { hintsIn } from '../../service/index.ts';
import { selector, type Feature } from './feature.ts';

export const hints: Feature = (notes) => {
  const changed = new vscode.EventEmitter<void>();
  return vscode.Disposable.from(
    changed,
    notes.onDidReload(() => {
      changed.fire();
    }),
    vscode.languages.registerInlayHintsProvider(selector, {
      onDidChangeInlayHints: changed.event,
      async provideInlayHints(document, range, token) {
        const note = await notes.find(document);
        if (note === undefined || token.isCancellationRequested) return undefined;
        const from = document.offsetAt(range.start);
        return hintsIn(note.analysis, from, document.offsetAt(range.end)).map(({ offset, text, tooltip }) => {
          // The padding alone is a hair’s breadth: 35 mL and 350 mg would read as one number.
          const hint = new vscode.InlayHint(document.positionAt(offset), ` ${text}`);
          hint.paddingLeft = true;
          if (tooltip !== '') hint.tooltip = tooltip;
          return hint;
        });
      },
    }),
  );
};
