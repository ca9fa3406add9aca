import type { Fault } from './compose.ts';
import type { Problem } from '../tree/finding.ts';
import { rowAt } from './line.ts';

/** What to call the parser's faults that no rule could explain better; the form chooses the words. */
const names: ReadonlyMap<string, { readonly code: string; readonly form?: string }> = new Map([
  ['TAB_AS_INDENT', { code: 'yaml/tab' }],
  ['BAD_INDENT', { code: 'yaml/indentation' }],
  ['MULTILINE_IMPLICIT_KEY', { code: 'yaml/indentation' }],
  ['BLOCK_AS_IMPLICIT_KEY', { code: 'yaml/indentation' }],
  ['BAD_DIRECTIVE', { code: 'yaml/directive' }],
  ['BAD_DQ_ESCAPE', { code: 'yaml/syntax', form: 'backslash' }],
  ['KEY_OVER_1024_CHARS', { code: 'yaml/syntax', form: 'long-key' }],
  ['hopeless', { code: 'yaml/syntax', form: 'hopeless' }],
  ['RESOURCE_EXHAUSTION', { code: 'yaml/too-deep' }],
]);

/** The problem of a fault, with a range that has something to show. */
export function problemOf(fault: Fault, text: string): Problem {
  const name = names.get(fault.code) ?? { code: 'yaml/syntax' };
  if (name.code === 'yaml/tab') return tabProblem(fault, text);
  const row = rowAt(text, Math.min(fault.start, text.length));
  if (fault.code === 'MISSING_CHAR' && fault.start < row.first)
    return { code: 'yaml/indentation', at: { start: row.first, end: row.first + (row.key?.length ?? 1) } };
  const start = Math.max(row.start, Math.min(fault.start, row.end));
  const end = Math.min(row.end, Math.max(fault.end, start));
  const at = end > start ? { start, end } : { start: Math.min(row.first, row.end), end: row.end };
  return { ...name, at };
}

function tabProblem(fault: Fault, text: string): Problem {
  const row = rowAt(text, Math.min(fault.start, text.length));
  const indent = /^[ ]*\t[ \t]*/.exec(row.text)?.[0];
  if (indent === undefined)
    return { code: 'yaml/tab', at: { start: fault.start, end: Math.max(fault.start, fault.end) } };
  return {
    code: 'yaml/tab',
    at: { start: row.start + indent.indexOf('\t'), end: row.start + indent.length },
  };
}
