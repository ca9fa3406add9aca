import * as vscode from 'vscode';
import { summaryFormats, summaryOf, type SummaryFormat } from '../../documents/summary/index.ts';
import { readNote } from '../../note/read.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';

export interface WrittenSummary {
  readonly text: string;
  /** Whether the note has errors; the summary then says so at its top. */
  readonly unfit: boolean;
}

/** The chart summary of a note as it is, or why there is none. */
export async function summaryOfNote(
  { analysis, document }: OpenNote,
  notes: Notes,
  format: SummaryFormat,
): Promise<WrittenSummary | { readonly why: string }> {
  const practice = await notes.practiceOf(document.uri);
  const model = summaryOf(readNote(analysis.text), analysis.judgement, {
    tables: analysis.context.tables,
    practice: practice === undefined ? undefined : vscode.workspace.asRelativePath(practice),
    today: analysis.context.today,
  });
  if (!model.readable) return { why: model.why };
  return { text: summaryFormats[format].write(model), unfit: model.alerts.length > 0 };
}
