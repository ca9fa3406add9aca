/** A dash or a key on a line of block-style YAML, as far as it can be told without parsing. */
export interface RowToken {
  readonly kind: 'dash' | 'key';
  readonly column: number;
  readonly key: string;
  /** Where the value begins; the end of the line if there is none. */
  readonly valueColumn: number;
  readonly hasValue: boolean;
}

const keyPattern = /^([A-Za-z][\w-]*)[ \t]*:(?=\s|$)[ \t]*/;

/** The dashes and the key at the beginning of a line. */
export function tokensOf(row: string): readonly RowToken[] {
  const tokens: RowToken[] = [];
  let column = /^ */.exec(row)?.[0].length ?? 0;
  for (;;) {
    const dash = /^-(?: +|$)/.exec(row.slice(column));
    if (dash === null) break;
    tokens.push({
      kind: 'dash',
      column,
      key: '',
      valueColumn: column + dash[0].length,
      hasValue: row.length > column + dash[0].length,
    });
    column += dash[0].length;
  }
  const match = keyPattern.exec(row.slice(column));
  if (match !== null) {
    const valueColumn = column + match[0].length;
    const value = row.slice(valueColumn);
    tokens.push({
      kind: 'key',
      column,
      key: match[1] ?? '',
      valueColumn,
      hasValue: value !== '' && !value.startsWith('#'),
    });
  }
  return tokens;
}

/** Whether a line says nothing: space, or a comment. */
export const isIdle = (row: string): boolean => /^\s*(#|$)/.test(row);

/** Where a comment begins in a line, outside of quotes; -1 where there is none. */
export function commentAt(row: string): number {
  let quote = '';
  for (let at = 0; at < row.length; at++) {
    const letter = row[at] ?? '';
    if (quote !== '') {
      if (letter === quote) quote = '';
    } else if ((letter === '"' || letter === "'") && /(^|[\s[{,:])$/.test(row.slice(0, at))) quote = letter;
    else if (letter === '#' && (at === 0 || /\s/.test(row[at - 1] ?? ''))) return at;
  }
  return -1;
}
