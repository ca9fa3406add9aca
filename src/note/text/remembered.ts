/** Short texts, such as the words of a list, come again and again; long ones seldom do. */
const longest = 120;
const most = 2000;

/** A pure reading of a text, done once for each short text. What is kept is bounded. */
export function remembered<Value>(read: (text: string) => Value): (text: string) => Value {
  const known = new Map<string, Value>();
  return (text) => {
    if (text.length > longest) return read(text);
    const found = known.get(text);
    if (found !== undefined || known.has(text)) return found as Value;
    if (known.size >= most) known.clear();
    const value = read(text);
    known.set(text, value);
    return value;
  };
}
