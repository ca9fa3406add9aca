/** Characters of a line that can be read in half a window, where the editor shows a message without breaking it. */
const longestRow = 88;

/** A message in lines that can be read at one look: each sentence begins a new one, and long ones go on in the next. */
export function wrapped(message: string): string {
  if (message.length <= longestRow) return message;
  return message
    .split(/(?<=[.?!]) (?=[A-Z"`])/)
    .flatMap(rowsOf)
    .join('\n');
}

function rowsOf(sentence: string): readonly string[] {
  const rows: string[] = [];
  let row = '';
  for (const word of sentence.split(' ')) {
    if (row !== '' && row.length + word.length >= longestRow) {
      rows.push(row);
      row = word;
    } else row = row === '' ? word : `${row} ${word}`;
  }
  return [...rows, row];
}
