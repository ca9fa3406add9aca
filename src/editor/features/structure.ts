import * as vscode from 'vscode';
import { foldsOf, outlineOf, selectionsAt, type Symbol } from '../../service/index.ts';
import { rangeIn } from '../host/convert.ts';
import { selector, type Feature } from './feature.ts';

const kinds: Readonly<Record<Symbol['kind'], vscode.SymbolKind>> = {
  visit: vscode.SymbolKind.File,
  patient: vscode.SymbolKind.Object,
  procedure: vscode.SymbolKind.Module,
  injection: vscode.SymbolKind.Field,
  specimen: vscode.SymbolKind.Field,
  event: vscode.SymbolKind.Event,
};

export const outline: Feature = (notes) =>
  vscode.languages.registerDocumentSymbolProvider(
    selector,
    {
      async provideDocumentSymbols(document, token) {
        const analysis = (await notes.find(document))?.analysis;
        if (analysis?.note == null || token.isCancellationRequested) return undefined;
        return outlineOf(analysis.note).map((symbol) => symbolOf(document, symbol));
      },
    },
    { label: 'Wheal' },
  );

function symbolOf(document: vscode.TextDocument, symbol: Symbol): vscode.DocumentSymbol {
  const made = new vscode.DocumentSymbol(
    symbol.name,
    symbol.detail,
    kinds[symbol.kind],
    rangeIn(document, symbol),
    rangeIn(document, symbol.selection),
  );
  made.children = symbol.children.map((child) => symbolOf(document, child));
  return made;
}

export const folding: Feature = (notes) =>
  vscode.languages.registerFoldingRangeProvider(selector, {
    async provideFoldingRanges(document, _context, token) {
      const note = await notes.find(document);
      if (note === undefined || token.isCancellationRequested) return undefined;
      const { text, root } = note.analysis;
      return foldsOf(text, root).map(({ start, end }) => new vscode.FoldingRange(start, end));
    },
  });

export const selections: Feature = (notes) =>
  vscode.languages.registerSelectionRangeProvider(selector, {
    async provideSelectionRanges(document, positions, token) {
      const note = await notes.find(document);
      if (note === undefined || token.isCancellationRequested) return undefined;
      return positions.map((position) => {
        const around = selectionsAt(note.analysis, document.offsetAt(position));
        const whole = new vscode.SelectionRange(new vscode.Range(position, position));
        return (
          around.reduceRight<vscode.SelectionRange | undefined>(
            (parent, range) => new vscode.SelectionRange(rangeIn(document, range), parent),
            undefined,
          ) ?? whole
        );
      });
    },
  });
