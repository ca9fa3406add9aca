import * as vscode from 'vscode';
import { notRecorded } from '../../checks/record/judging.ts';
import { fixAll, fixesAt, type OfferedFix } from '../../service/index.ts';
import { rangeIn, workspaceEdit } from '../host/convert.ts';
import { selector, type Feature } from './feature.ts';

const fixAllKind = vscode.CodeActionKind.SourceFixAll.append('wheal');

/** Quick fixes at a place, and on demand or on save all that is safe. */
export const fixes: Feature = (notes) =>
  vscode.languages.registerCodeActionsProvider(
    selector,
    {
      async provideCodeActions(document, range, { only, diagnostics }, token) {
        const note = await notes.find(document);
        if (note === undefined || token.isCancellationRequested) return undefined;
        if (only?.contains(fixAllKind) === true) return allFixes(document, fixAll(note.analysis));
        if (only !== undefined && !only.contains(vscode.CodeActionKind.QuickFix)) return undefined;
        const offered = fixesAt(note.analysis, document.offsetAt(range.start), document.offsetAt(range.end));
        return offered.map((fix) => actionOf(document, fix, diagnostics));
      },
    },
    { providedCodeActionKinds: [vscode.CodeActionKind.QuickFix, fixAllKind] },
  );

function allFixes(document: vscode.TextDocument, edits: ReturnType<typeof fixAll>): vscode.CodeAction[] {
  if (edits.length === 0) return [];
  const action = new vscode.CodeAction(vscode.l10n.t('Fix all that is safe'), fixAllKind);
  action.edit = workspaceEdit(document, edits);
  action.command = afterFix(document);
  return [action];
}

function actionOf(
  document: vscode.TextDocument,
  fix: OfferedFix,
  diagnostics: readonly vscode.Diagnostic[],
): vscode.CodeAction {
  const { title, kind, sure, does, code, finding, edits } = fix;
  const action = new vscode.CodeAction(title, vscode.CodeActionKind.QuickFix);
  const at = rangeIn(document, finding);
  action.diagnostics = diagnostics.filter(
    (one) => one.range.isEqual(at) && (codeOf(one) === code || codeOf(one) === notRecorded.code),
  );
  if (does === 'accept') {
    action.command = {
      command: 'wheal.acceptFinding',
      title,
      arguments: [document.uri, { code, start: finding.start }],
    };
    return action;
  }
  action.edit = workspaceEdit(document, edits);
  action.command = afterFix(document, edits.find(({ text }) => text.includes('??'))?.start);
  if (kind === 'spelling' && sure && does === 'mend') action.isPreferred = true;
  return action;
}

/** A fix is a finished edit, so its line need not stay quiet; `from` is where the first gap is to be looked for. */
const afterFix = ({ uri }: vscode.TextDocument, from?: number): vscode.Command => ({
  command: 'wheal.afterFix',
  title: '',
  arguments: [uri, from],
});

const codeOf = ({ code }: vscode.Diagnostic): unknown => (typeof code === 'object' ? code.value : code);
