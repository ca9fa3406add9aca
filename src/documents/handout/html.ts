import { escapedHtml } from '../html.ts';
import type { Handout } from './model.ts';

/** Prints on one page of A4 or Letter in two columns; in large print on as many as it takes, in one. */
const style = `
@page { margin: 12mm; }
body { font: 12pt/1.3 Arial, Helvetica, sans-serif; max-width: 52rem; margin: 1.5rem auto; padding: 0 1rem; color: #000; background: #fff; overflow-wrap: anywhere; }
h1 { font-size: 1.3em; margin: 0 0 0.2em; } h2 { font-size: 1.05em; margin: 0 0 0.1em; }
p { margin: 0; } ul { margin: 0 0 0.5em; padding-left: 1.1em; } section { break-inside: avoid; }
header { margin-bottom: 0.5em; } footer { margin-top: 0.5em; } footer p + p { font-size: 0.75em; }
main { columns: 2; column-gap: 1.6em; }
@media (max-width: 40rem) { main { columns: 1; } }
@media print { body { font-size: 11pt; line-height: 1.2; margin: 0; padding: 0; max-width: none; } }
body.large { font-size: 18pt; line-height: 1.3; } body.large main { columns: 1; }
`;

/** The handout as a page that stands alone. */
export function handoutHtml({
  language,
  title,
  practice,
  header,
  sections,
  foot,
  largePrint,
}: Handout): string {
  const rows = (texts: readonly string[]): string => texts.map((text) => tag('p', text)).join('\n');
  const body = sections.map(
    ({ heading, items }) =>
      `<section>\n${tag('h2', heading)}\n<ul>\n${items.map((item) => tag('li', item)).join('\n')}\n</ul>\n</section>`,
  );
  return `<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
${tag('title', title)}
<style>${style}</style>
</head>
<body${largePrint ? ' class="large"' : ''}>
<header>
${rows(practice === '' ? [] : [practice])}
${tag('h1', title)}
${rows(header)}
</header>
<main>
${body.join('\n')}
</main>
<footer>
${rows(foot)}
</footer>
</body>
</html>
`;
}

const tag = (name: string, text: string): string => `<${name}>${escapedHtml(text)}</${name}>`;
