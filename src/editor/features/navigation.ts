import * as vscode from 'vscode';
import { definitionAt, linksOf } from '../../service/index.ts';
import { pageLink, rangeIn } from '../host/convert.ts';
import { selector, type Feature } from './feature.ts';

export const links: Feature = (notes) =>
  vscode.languages.registerDocumentLinkProvider(selector, {
    async provideDocumentLinks(document, token) {
      const note = await notes.find(document);
      if (note === undefined || token.isCancellationRequested) return undefined;
      return linksOf(note.analysis).map((one) => {
        const link = new vscode.DocumentLink(rangeIn(document, one), pageLink(one.code));
        link.tooltip = vscode.l10n.t('About this check');
        return link;
      });
    },
  });

export const definitions: Feature = (notes) =>
  vscode.languages.registerDefinitionProvider(selector, {
    async provideDefinition(document, position, token) {
      const note = await notes.find(document);
      if (note === undefined || token.isCancellationRequested) return undefined;
      const definition = definitionAt(note.analysis, document.offsetAt(position));
      return definition?.targets.map((target) => ({
        originSelectionRange: rangeIn(document, definition.origin),
        targetUri: document.uri,
        targetRange: rangeIn(document, target),
      }));
    },
  });
