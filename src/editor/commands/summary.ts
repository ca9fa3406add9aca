import * as vscode from 'vscode';
import { summaryFormats, type SummaryFormat } from '../../documents/summary/index.ts';
import { askWhere, deliver, endingOf, frontNote } from '../papers/export.ts';
import { summaryOfNote } from '../papers/summary.ts';
import type { Command } from './command.ts';

/** Puts the chart summary of the note in front on the clipboard. */
export const copySummary: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  const summary = note && (await summaryOfNote(note, notes, 'text'));
  if (summary === undefined) return;
  if ('why' in summary) return void vscode.window.showWarningMessage(noSummary(summary.why));
  await vscode.env.clipboard.writeText(summary.text);
  if (summary.unfit)
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The chart summary is copied. The note has errors, and the summary says so at its top.'),
    );
  else vscode.window.setStatusBarMessage(vscode.l10n.t('The chart summary is copied.'), 5000);
};

/** Shows dose, place, time and the chart summary beside the note. */
export const previewSummary: Command = async ({ notes, panel }) => {
  const note = await frontNote(notes);
  if (note !== undefined) panel.show(note, 'summary');
};

/** The form that a file's name asks for; text where its ending is of none. */
const formatOf = (uri: vscode.Uri): SummaryFormat =>
  (Object.keys(summaryFormats) as SummaryFormat[]).find(
    (format) => summaryFormats[format].ending === endingOf(uri),
  ) ?? 'text';

/** Writes the chart summary where the user says. */
export const exportSummary: Command = async ({ notes }) => {
  const note = await frontNote(notes);
  if (note === undefined) return;
  const uri = await askWhere(note.document.uri, {
    title: vscode.l10n.t('Export the chart summary'),
    what: 'summary',
    formats: Object.values(summaryFormats),
  });
  if (uri === undefined) return;
  const summary = await summaryOfNote(note, notes, formatOf(uri));
  if ('why' in summary) return void vscode.window.showWarningMessage(noSummary(summary.why));
  const alert = vscode.l10n.t('The note has errors, and the summary says so at its top.');
  const done = vscode.l10n.t('The chart summary is written.');
  await deliver(uri, summary.text, done, summary.unfit ? alert : undefined);
};

const noSummary = (why: string): string => vscode.l10n.t('There is no summary: {0}', why);
