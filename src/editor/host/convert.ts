import * as vscode from 'vscode';
import { checkOf } from '../../checks/index.ts';
import type { Severity, TextEdit } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Diagnostic, LineRange } from '../../service/index.ts';
import { wrapped } from './wrapped.ts';

const severities: Readonly<Record<Severity, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  information: vscode.DiagnosticSeverity.Information,
  hint: vscode.DiagnosticSeverity.Hint,
};

/** Offsets of a document's present text as its range. */
export const rangeIn = (document: vscode.TextDocument, { start, end }: Range): vscode.Range =>
  new vscode.Range(document.positionAt(start), document.positionAt(end));

const lineRange = ({ start, end }: LineRange): vscode.Range =>
  new vscode.Range(start.line, start.character, end.line, end.character);

export function diagnosticOf(
  uri: vscode.Uri,
  { code, severity, message, range, related }: Diagnostic,
): vscode.Diagnostic {
  const diagnostic = new vscode.Diagnostic(lineRange(range), wrapped(message), severities[severity]);
  diagnostic.code = checkOf(code) === undefined ? code : { value: code, target: pageLink(code) };
  diagnostic.source = 'Wheal';
  diagnostic.relatedInformation = related.map(
    (one) =>
      new vscode.DiagnosticRelatedInformation(new vscode.Location(uri, lineRange(one.range)), one.message),
  );
  return diagnostic;
}

/** A link that opens the page of a check, wherever the editor runs. */
export const pageLink = (code: string): vscode.Uri =>
  vscode.Uri.parse(`command:wheal.aboutCheck?${encodeURIComponent(JSON.stringify([code]))}`);

export function workspaceEdit(
  document: vscode.TextDocument,
  edits: readonly TextEdit[],
): vscode.WorkspaceEdit {
  const edit = new vscode.WorkspaceEdit();
  edit.set(
    document.uri,
    edits.map((one) => new vscode.TextEdit(rangeIn(document, one), one.text)),
  );
  return edit;
}
