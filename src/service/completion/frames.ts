import { isIdle, tokensOf, type RowToken } from './lines-above.ts';

/** A key or dash with the keys and dashes that are directly inside of it. */
export interface Frame {
  /** Undefined for the file itself. */
  readonly token: RowToken | undefined;
  readonly parents: readonly RowToken[];
  readonly children: readonly RowToken[];
}

interface OpenFrame extends Frame {
  readonly children: RowToken[];
}

/**
 * The innermost frame that a token at a place would join, seen from lines and columns alone.
 * What is deeper than a key that has its value already belongs beside that key.
 * @param column the column of the token, as it is or as it would be typed
 */
export function frameAt(rows: readonly string[], row: number, column: number): Frame {
  let stack: readonly OpenFrame[] = [{ token: undefined, parents: [], children: [] }];
  for (const text of rows.slice(0, row)) stack = pushRow(stack, tokensOf(text));
  stack = pushRow(
    stack,
    tokensOf(rows[row] ?? '').filter((token) => token.column < column),
  );
  stack = closedBy(stack, { kind: 'key', column });
  while (stack.at(-1)?.token?.hasValue === true && stack.at(-1)?.token?.kind === 'key')
    stack = stack.slice(0, -1);
  const frame = stack.at(-1)!;
  addBelow(rows, row, stack);
  return frame;
}

/** Adds what the lines below the caret hold, for as long as the innermost frame stays open. */
function addBelow(rows: readonly string[], row: number, stack: readonly OpenFrame[]): void {
  const frame = stack.at(-1);
  let open = stack;
  for (let below = row + 1; below < rows.length; below++) {
    const text = rows[below] ?? '';
    if (isIdle(text)) continue;
    open = pushRow(open, tokensOf(text));
    if (frame === undefined || !open.includes(frame)) return;
  }
}

function pushRow(stack: readonly OpenFrame[], tokens: readonly RowToken[]): readonly OpenFrame[] {
  let open = stack;
  for (const token of tokens) {
    open = closedBy(open, token);
    const parent = open.at(-1);
    parent?.children.push(token);
    open = [...open, { token, parents: [...(parent?.parents ?? []), token], children: [] }];
  }
  return open;
}

/** The frames that stay open when a token follows. A dash may be at the column of its key. */
function closedBy(
  stack: readonly OpenFrame[],
  { kind, column }: Pick<RowToken, 'kind' | 'column'>,
): readonly OpenFrame[] {
  const closes = ({ token }: Frame): boolean =>
    token !== undefined &&
    (token.column > column || (token.column === column && !(token.kind === 'key' && kind === 'dash')));
  let open = stack;
  while (open.length > 1 && closes(open.at(-1)!)) open = open.slice(0, -1);
  return open;
}
