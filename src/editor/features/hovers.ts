import * as vscode from 'vscode';
import { hoverAt } from '../../service/index.ts';
import { rangeIn } from '../host/convert.ts';
import { selector, type Feature } from './feature.ts';

export const hovers: Feature = (notes) =>
  vscode.languages.registerHoverProvider(selector, {
    async provideHover(document, position, token) {
      const note = await notes.find(document);
      if (note === undefined || token.isCancellationRequested) return undefined;
      const hover = hoverAt(note.analysis, document.offsetAt(position));
      // Not trusted: no command works in it, whatever it says.
      return hover && new vscode.Hover(new vscode.MarkdownString(hover.markdown), rangeIn(document, hover));
    },
  });
