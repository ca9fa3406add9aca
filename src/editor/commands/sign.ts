import * as vscode from 'vscode';
import { plain } from '../../documents/one-line.ts';
import { placeOfChange } from '../../note/signature/place.ts';
import { signatureEdit, type NotSigned } from '../../note/signature/sign.ts';
import { verify, type Change } from '../../note/signature/verify.ts';
import type { Severity } from '../../note/tree/finding.ts';
import { readNote } from '../../note/read.ts';
import { beforeSigning } from '../../service/signing.ts';
import { localMoment } from '../host/clock.ts';
import { rangeIn, workspaceEdit } from '../host/convert.ts';
import { frontNote } from '../papers/export.ts';
import { counted } from '../folder/folder-check.ts';
import type { OpenNote } from '../notes/open-note.ts';
import type { Command } from './command.ts';

const severities: readonly Severity[] = ['error', 'warning', 'information'];

/** Of more lines than this the rest is counted. */
const mostRows = 12;

/**
 * Signs the visit part of the note in front: shows first what is not yet known and what is found, asks who signs, and
 * writes the digests. A note that is signed is not signed again.
 */
export const signNote: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  if (note === undefined || !(await canSign(note)) || !(await goesOn(note))) return;
  const by = await askWho();
  if (by === undefined) return;
  const { document } = note;
  const version = document.version;
  const edit = signatureEdit(readNote(document.getText()), by, localMoment(new Date()));
  if (typeof edit === 'string') return void vscode.window.showWarningMessage(whyNot(edit));
  if (document.version !== version || !(await vscode.workspace.applyEdit(workspaceEdit(document, [edit]))))
    return void vscode.window.showWarningMessage(
      vscode.l10n.t('The note has changed meanwhile; nothing was signed.'),
    );
  note.rest();
  await goTo(document, document.getText().indexOf('signed:', edit.start));
  void vscode.window.showInformationMessage(
    // Longer words are cut off.
    vscode.l10n.t('Signed, not saved yet. It shows change, not who signed.'),
  );
};

/** Says what has changed in the note in front since it was signed, and goes to what is chosen. */
export const verifyNote: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  if (note !== undefined) await verified(note);
};

async function canSign(note: OpenNote): Promise<boolean> {
  const { l10n } = vscode;
  const { note: read, damage } = note.analysis;
  if (read?.keys.has('signed') === true) {
    const check = l10n.t('Verify');
    const answer = await vscode.window.showInformationMessage(whyNot('signed already'), check);
    if (answer === check) await verified(note);
    return false;
  }
  if (read !== null && damage.length === 0) return true;
  void vscode.window.showWarningMessage(whyNot('unreadable'));
  return false;
}

/** Shows what is open in the note; true where somebody signs anyway, or nothing is. */
async function goesOn({ analysis }: OpenNote): Promise<boolean> {
  const { l10n } = vscode;
  const { pending, findings, rows } = beforeSigning(analysis);
  if (rows.length === 0) return true;
  const sign = l10n.t('Sign anyway');
  const show = l10n.t('Show problems');
  const more = rows.length - mostRows;
  const detail = [
    ...rows.slice(0, mostRows).map(plain),
    ...(more > 0 ? [l10n.t('and {0} more', more)] : []),
  ].join('\n');
  const counts = [
    ...(pending === 0 ? [] : [l10n.t('{0} not yet known', pending)]),
    ...severities.flatMap((one) => (findings[one] === 0 ? [] : [counted(one, findings[one])])),
  ];
  const words = l10n.t('Before signing: {0}.', counts.join(', '));
  // The first is what a hasty key takes.
  const answer = await vscode.window.showWarningMessage(words, { modal: true, detail }, show, sign);
  if (answer === show) await vscode.commands.executeCommand('workbench.actions.view.problems');
  return answer === sign;
}

const askWho = async (): Promise<string | undefined> => {
  const answer = await vscode.window.showInputBox({
    title: vscode.l10n.t('Sign the note'),
    prompt: vscode.l10n.t(
      'Who signs? Initials or name. This shows later change, not identity: whoever can write the file can sign it.',
    ),
    ignoreFocusOut: true,
    validateInput: (text) => (text.trim() === '' ? vscode.l10n.t('This can’t be left empty.') : undefined),
  });
  return answer === undefined ? undefined : plain(answer).trim();
};

function whyNot(reason: NotSigned): string {
  const { l10n } = vscode;
  switch (reason) {
    case 'signed already':
      return l10n.t('The note is signed already, and cannot be signed again. Later words belong in addenda.');
    case 'unreadable':
      return l10n.t('A part of this note can’t be read, so it can’t be signed. Fix it first.');
    case 'no name':
      return l10n.t('This can’t be left empty.');
    case 'draft':
      return l10n.t('This note says that it is a draft. Take `draft` out once every value is checked.');
  }
}

async function verified({ document }: OpenNote): Promise<void> {
  const { l10n } = vscode;
  const source = readNote(document.getText());
  const found = verify(source);
  if (found.kind === 'unsigned')
    return void vscode.window.showInformationMessage(l10n.t('The note is not signed.'));
  if (found.kind === 'unreadable')
    return void vscode.window.showWarningMessage(
      l10n.t('The signature of this note can’t be read, so nobody can say whether the note has changed.'),
    );
  const who = l10n.t('Signed by {0}, {1}', plain(found.by) || '?', plain(found.at) || '?');
  if (found.kind === 'no digests')
    return void vscode.window.showWarningMessage(
      l10n.t('{0}, without digests: nothing can be compared.', who),
    );
  if (found.changes.length === 0)
    return void vscode.window.showInformationMessage(
      found.format === 1
        ? l10n.t('{0}, and unchanged since, as far as the older way of signing can show.', who)
        : l10n.t('{0}, and unchanged since. This shows change, not who signed.', who),
    );
  const items = found.changes.map((change) => {
    const { start } = placeOfChange(source, change);
    const line = document.positionAt(start).line + 1;
    const label = `${plain(change.part)}: ${changeWords(change.what)}`;
    return { label, description: l10n.t('line {0}', line), start };
  });
  const picked = await vscode.window.showQuickPick(items, {
    title: l10n.t('{0}, and changed since', who),
    placeHolder: l10n.t('Choose a part to go to its line. This shows change, not who made it.'),
    ignoreFocusOut: true,
  });
  if (picked !== undefined) await goTo(document, picked.start);
}

function changeWords(what: Change['what']): string {
  const { l10n } = vscode;
  switch (what) {
    case 'changed':
      return l10n.t('changed');
    case 'added':
      return l10n.t('added');
    case 'removed':
      return l10n.t('removed');
    case 'not read':
      return l10n.t('not read');
    case 'without author and date':
      return l10n.t('without author and date');
  }
}

async function goTo(document: vscode.TextDocument, offset: number): Promise<void> {
  const editor = await vscode.window.showTextDocument(document);
  const range = rangeIn(document, { start: offset, end: offset });
  editor.selection = new vscode.Selection(range.start, range.end);
  editor.revealRange(range, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}
