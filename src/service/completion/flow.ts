/** What is open at the end of a piece of flow style: one frame for each open bracket, the innermost last. */
export interface FlowFrame {
  readonly kind: 'map' | 'list';
  /** Keys that have been written in this map. */
  readonly keys: readonly string[];
  /** The key whose value is being written. */
  readonly key: string | undefined;
  /** Offset in the text at which the word being written begins. */
  readonly wordStart: number;
}

interface Open {
  kind: 'map' | 'list';
  keys: string[];
  key: string | undefined;
  wordStart: number;
}

/** Follows brackets, commas and colons outside of quotes up to the end of `text`. Undefined inside a quoted text. */
export function flowFrames(text: string): readonly FlowFrame[] | undefined {
  const stack: Open[] = [];
  let at = 0;
  while (at < text.length) {
    const letter = text[at] ?? '';
    const top = stack.at(-1);
    if (
      (letter === '"' || letter === "'") &&
      top !== undefined &&
      text.slice(top.wordStart, at).trim() === ''
    ) {
      const close = text.indexOf(letter, at + 1);
      if (close < 0) return undefined;
      at = close + 1;
      continue;
    }
    step(stack, text, at, letter);
    at += 1;
  }
  return stack;
}

function step(stack: Open[], text: string, at: number, letter: string): void {
  const top = stack.at(-1);
  if (letter === '{' || letter === '[') {
    stack.push({ kind: letter === '{' ? 'map' : 'list', keys: [], key: undefined, wordStart: at + 1 });
  } else if (letter === '}' || letter === ']') {
    stack.pop();
  } else if (top !== undefined && letter === ',') {
    top.key = undefined;
    top.wordStart = at + 1;
  } else if (top !== undefined && letter === ':' && endsKey(top, text[at + 1])) {
    top.key = text.slice(top.wordStart, at).trim();
    top.keys.push(top.key);
    top.wordStart = at + 1;
  }
}

const endsKey = ({ kind, key }: Open, next = ' '): boolean =>
  kind === 'map' && key === undefined && /\s/.test(next);

/** The keys that follow in a map between brackets, up to its end, in a text that begins within it. */
export function flowKeysIn(text: string): readonly string[] {
  let depth = 0;
  const keys: string[] = [];
  for (const [part, before = ''] of text.matchAll(/"[^"\n]*"|'[^'\n]*'|[{}[\]]|(?<=,\s*)([\w-]+):(?=\s)/g)) {
    if (part === '{' || part === '[') depth += 1;
    else if (part === '}' || part === ']') depth -= 1;
    else if (depth === 0 && before !== '') keys.push(before);
    if (depth < 0) break;
  }
  return keys;
}
