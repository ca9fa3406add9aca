import * as vscode from 'vscode';
import { analyse, analysePractice, type Analysis } from '../../service/index.ts';
import { isPractice } from '../host/files.ts';
import type { Around } from './open-note.ts';

/** Reads and judges a text as what its address says that it is. */
export function analysisOf(
  uri: vscode.Uri,
  text: string,
  { practice, today, elsewhereOf }: Around,
): Analysis {
  const context = { tables: practice.tables, today };
  return isPractice(uri)
    ? analysePractice(text, context, { ...practice.trust, trusted: vscode.workspace.isTrusted })
    : analyse(text, context, elsewhereOf);
}
