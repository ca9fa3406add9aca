/** A text as an editor's snippet: nothing in it means anything, and the caret goes so many characters before its end. */
export function snippetText(text: string, caretBack: number): string {
  const at = text.length - caretBack;
  const after = escaped(text.slice(at));
  return after === '' ? escaped(text) : `${escaped(text.slice(0, at))}$0${after}`;
}

const escaped = (text: string): string => text.replace(/[\\$}]/g, '\\$&');
