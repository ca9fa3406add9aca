/** A text in quotes, so that YAML takes every character for what it is. */
export function quoted(text: string): string {
  const flat = text.replace(/(?<!\s)[^\S\n]*\n\s*/g, ' ');
  return /["\\]/.test(flat) ? `'${flat.replace(/'/g, "''")}'` : `"${flat}"`;
}
