import * as vscode from 'vscode';
import { beginningAt, completionsAt, type Beginning, type Completion } from '../../service/index.ts';
import { localDate } from '../host/clock.ts';
import { snippetText } from '../host/snippet.ts';
import { templatesFor, type Template } from './templates.ts';
import { selector, type Feature } from './feature.ts';

const kinds: Readonly<Record<Completion['kind'], vscode.CompletionItemKind>> = {
  key: vscode.CompletionItemKind.Property,
  value: vscode.CompletionItemKind.Value,
};

/** Asks again at once for what can follow a key. */
const again: vscode.Command = { command: 'editor.action.triggerSuggest', title: '' };
/** Goes to the next gap of a snippet that is being filled in, and does nothing else. */
const next: vscode.Command = { command: 'jumpToNextSnippetPlaceholder', title: '' };

export const completions: Feature = (notes) =>
  vscode.languages.registerCompletionItemProvider(
    selector,
    {
      async provideCompletionItems(document, position, token) {
        const note = await notes.find(document);
        if (note === undefined || token.isCancellationRequested) return undefined;
        const { kind, text, shapes, context, judgement } = note.analysis;
        if (judgement.findings.some(({ code }) => code === 'shape/newer-format')) return undefined;
        const writing = { tables: context.tables, today: localDate(new Date()), shapes, root: kind };
        const offset = document.offsetAt(position);
        const beginning = beginningAt(text, offset, writing);
        return [
          ...completionsAt(text, offset, writing).map((one) => itemOf(document, position, one)),
          ...(beginning === undefined
            ? []
            : templatesFor(beginning).map((one) => templateItem(document, position, one, beginning))),
        ];
      },
    },
    ...[' ', ':', '-', '{', '[', ','],
  );

function itemOf(
  document: vscode.TextDocument,
  position: vscode.Position,
  { label, kind, detail, help, start, end, insert, caretBack, filter, sort, again: asks, whole }: Completion,
): vscode.CompletionItem {
  const item = new vscode.CompletionItem(detail === '' ? label : { label, description: detail }, kinds[kind]);
  item.range = rangesOf(document, position, { start, end });
  item.insertText = new vscode.SnippetString(snippetText(insert, caretBack));
  // Its lines have their whole indentation already.
  item.keepWhitespace = true;
  item.filterText = filter;
  item.sortText = sort;
  if (help !== '') item.documentation = new vscode.MarkdownString().appendText(help);
  if (asks) item.command = again;
  if (whole) item.command = next;
  return item;
}

/** Sorts after everything that can be said in a word. */
function templateItem(
  document: vscode.TextDocument,
  position: vscode.Position,
  { label, description, filter, insert }: Template,
  beginning: Beginning,
): vscode.CompletionItem {
  const item = new vscode.CompletionItem({ label, description }, vscode.CompletionItemKind.Struct);
  item.range = rangesOf(document, position, beginning);
  item.insertText = new vscode.SnippetString(insert);
  item.keepWhitespace = true;
  item.filterText = filter;
  item.sortText = `9${label}`;
  return item;
}

function rangesOf(
  document: vscode.TextDocument,
  position: vscode.Position,
  { start, end }: Pick<Beginning, 'start' | 'end'>,
): { inserting: vscode.Range; replacing: vscode.Range } {
  const from = document.positionAt(start);
  return {
    inserting: new vscode.Range(from, position),
    replacing: new vscode.Range(from, document.positionAt(end)),
  };
}
