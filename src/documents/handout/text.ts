import type { Handout } from './model.ts';

const width = 78;

/** The handout as text in lines that fit a letter. */
export function handoutText({ title, practice, header, sections, foot }: Handout): string {
  return [
    ...(practice === '' ? [] : [practice]),
    title,
    ...header.flatMap((row) => wrapped(row, '')),
    ...sections.flatMap(({ heading, items }) => [
      '',
      heading,
      ...items.flatMap((item) =>
        wrapped(item, '  ').map((line, at) => (at === 0 ? `- ${line.trimStart()}` : line)),
      ),
    ]),
    '',
    ...foot.flatMap((row) => wrapped(row, '')),
    '',
  ].join('\n');
}

/** A text in lines, broken at spaces only. */
function wrapped(text: string, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line !== indent && line.length + word.length >= width) {
      lines.push(line);
      line = indent;
    }
    line += line === indent ? word : ` ${word}`;
  }
  return [...lines, line];
}
