import * as vscode from 'vscode';
import type { DayDoses } from '../../dose/day-doses.ts';
import type { Severity } from '../../note/tree/finding.ts';
import { severities } from '../../note/tree/severity.ts';
import { diagnosticsOf, shownFindings, type Diagnostic } from '../../service/index.ts';
import { localDate, pace } from '../host/clock.ts';
import { filesBelow, isPractice, load } from '../host/files.ts';
import { analysisOf } from '../notes/analysis.ts';
import { dayDosesOf } from '../notes/neighbors.ts';
import type { Practices } from '../host/practices.ts';

/** A file of a folder with what was found in it. */
export interface CheckedFile {
  readonly uri: vscode.Uri;
  readonly isNote: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

/** Milliseconds of work after which others get their turn. */
const turn = 10;

/**
 * Checks every file below folders, one after the other, and lets the editor breathe between them. Notes of one patient
 * and day count together.
 */
export async function* checkBelow(
  folders: readonly vscode.Uri[],
  practices: Practices,
  token: vscode.CancellationToken,
): AsyncGenerator<CheckedFile> {
  const files: vscode.Uri[] = [];
  for (const folder of folders)
    for await (const uri of filesBelow(folder)) {
      if (token.isCancellationRequested) return;
      files.push(uri);
    }
  const days = await dayDosesOf(files, practices, token);
  let began = performance.now();
  for (const uri of files) {
    if (token.isCancellationRequested) return;
    yield { uri, isNote: !isPractice(uri), diagnostics: await checkFile(uri, practices, days) };
    if (performance.now() - began < turn) continue;
    await pace.pause();
    began = performance.now();
  }
}

async function checkFile(
  uri: vscode.Uri,
  practices: Practices,
  days: DayDoses | undefined,
): Promise<readonly Diagnostic[]> {
  const loaded = await load(uri);
  if ('code' in loaded) return [notRead(loaded.code)];
  const analysis = analysisOf(uri, loaded.text, {
    practice: await practices.of(uri),
    today: localDate(new Date()),
    elsewhereOf: (note) => days?.elsewhere(uri.toString(), note),
  });
  return diagnosticsOf(loaded.text, shownFindings(analysis));
}

/** A file that can't be read passes as little in silence as one with errors. */
function notRead(code: string): Diagnostic {
  const place = { line: 0, character: 0 };
  const message = vscode.l10n.t("This file can't be read. Nothing in it was checked.");
  return { code, severity: 'error', message, range: { start: place, end: place }, related: [] };
}

/** How many findings of each severity there are in files. */
export class Tally {
  notes = 0;
  private readonly found = new Map<Severity, number>();

  add({ isNote, diagnostics }: CheckedFile): void {
    if (isNote) this.notes += 1;
    for (const { severity } of diagnostics) this.found.set(severity, (this.found.get(severity) ?? 0) + 1);
  }

  /** A sentence for the end. */
  get words(): string {
    const { l10n } = vscode;
    const notes = this.notes === 1 ? l10n.t('1 note') : l10n.t('{0} notes', this.notes);
    const counts = severities.flatMap((severity) => {
      const count = this.found.get(severity) ?? 0;
      return count === 0 ? [] : [counted(severity, count)];
    });
    return counts.length === 0
      ? l10n.t('{0}: nothing found.', notes)
      : l10n.t('{0}: {1}.', notes, counts.join(', '));
  }
}

/** A number of findings of one severity, in words. */
export function counted(severity: Severity, count: number): string {
  const { l10n } = vscode;
  switch (severity) {
    case 'error':
      return count === 1 ? l10n.t('1 error') : l10n.t('{0} errors', count);
    case 'warning':
      return count === 1 ? l10n.t('1 warning') : l10n.t('{0} warnings', count);
    case 'information':
      return l10n.t('{0} worth a look', count);
    case 'hint':
      return count === 1 ? l10n.t('1 hint') : l10n.t('{0} hints', count);
  }
}
