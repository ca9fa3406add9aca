import * as vscode from 'vscode';
import { check } from '../checks/index.ts';
import type { Severity } from '../note/finding.ts';
import { readNote } from '../note/read.ts';
import { referenceTables } from '../practice/tables.ts';
import { diagnosticsOf, type LineRange } from '../service/diagnostics.ts';

const severities: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  information: vscode.DiagnosticSeverity.Information,
  hint: vscode.DiagnosticSeverity.Hint,
};

/** Shows the findings of open notes, and takes them away when a note is closed. */
export function activate(context: vscode.ExtensionContext): void {
  const collection = vscode.languages.createDiagnosticCollection('wheal');
  const show = (document: vscode.TextDocument): void => {
    if (isNote(document)) collection.set(document.uri, judge(document));
  };
  vscode.workspace.textDocuments.forEach(show);
  context.subscriptions.push(
    collection,
    vscode.workspace.onDidOpenTextDocument(show),
    vscode.workspace.onDidChangeTextDocument(({ document }) => {
      show(document);
    }),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => {
      collection.delete(uri);
    }),
  );
}

// A comparison shows an old text beside the new one; only the new one is anybody's note.
const isNote = ({ languageId, uri }: vscode.TextDocument): boolean =>
  languageId === 'wheal' && uri.scheme !== 'git';

function judge(document: vscode.TextDocument): vscode.Diagnostic[] {
  const text = document.getText();
  const judgement = check(readNote(text), { tables: referenceTables, today: localDate(new Date()) });
  return diagnosticsOf(text, judgement).map(({ code, severity, message, range }) => {
    const diagnostic = new vscode.Diagnostic(rangeOf(range), message, severities[severity]);
    diagnostic.code = code;
    diagnostic.source = 'Wheal';
    return diagnostic;
  });
}

const rangeOf = ({ start, end }: LineRange): vscode.Range =>
  new vscode.Range(start.line, start.character, end.line, end.character);

const localDate = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
