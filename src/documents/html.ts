const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that is safe between tags and in attributes. */
export function escapedHtml(text: string): string {
  return text.replace(/[&<>"']/g, (char) => entities[char] ?? char);
}

/** What else a page has. */
export interface PageOptions {
  /** At the foot of every printed page: whose it is. */
  readonly foot?: string;
  /** Large type, for who reads with trouble. */
  readonly large?: boolean;
  /** Rules of this page alone. */
  readonly style?: string;
}

/** Words for "page 1 of 2", by the language of the page. */
const pageWords: Readonly<Record<string, readonly [page: string, of: string]>> = {
  en: ['page', 'of'],
  es: ['página', 'de'],
};

/** A text as a string of CSS, in which nothing can end the string, the rule or the element. */
const cssText = (text: string): string =>
  `"${Array.from(text, (char) => (/[\w .,:-]/.test(char) ? char : `\\${char.codePointAt(0)!.toString(16)} `)).join('')}"`;

function footRule(foot: string, language: string): string {
  const [page, of] = pageWords[language] ?? pageWords['en']!;
  const type = 'font: 8.5pt Arial, Helvetica, sans-serif;';
  return `@page { @bottom-left { ${type} content: ${cssText(foot)}; } @bottom-right { ${type} content: "${page} " counter(page) " ${of} " counter(pages); } }`;
}

/** One type scale and one column for all papers, in black on white, for Letter and A4. */
const pageStyle = `@page { size: auto; margin: 14mm 14mm 17mm; }
:root { --wheal-paper: #fff; }
body { font: 11pt/1.4 Arial, Helvetica, sans-serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; color: #000; background: #fff; overflow-wrap: anywhere; }
body.large { font-size: 18pt; }
h1 { font-size: 1.5em; line-height: 1.2; margin: 0 0 0.4em; }
h2 { font-size: 1.2em; line-height: 1.2; margin: 1em 0 0.3em; }
p { margin: 0 0 0.3em; } ul { margin: 0 0 0.5em; padding-left: 1.2em; }
.alert { border: 2px solid #000; padding: 0.5em; font-weight: bold; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.15em 0.6em 0.15em 0; border-bottom: 1px solid #888; }
.date { white-space: nowrap; }
figure { margin: 0.8em 0; } figcaption { font-weight: bold; } figure table, figure ul { font-size: 0.85em; }
svg { display: block; max-width: 100%; height: auto; margin: 0.3em 0; }
footer { margin-top: 1.5em; font-size: 0.85em; }
li, tr, svg, .alert { break-inside: avoid; } h1, h2, figcaption { break-after: avoid; }
@media print { body { margin: 0; padding: 0; max-width: none; } svg { max-height: 220mm; } .sheet { break-after: page; } }`;

/** A page that is alone: no scripts, nothing loaded from elsewhere, fit for printing. */
export function htmlPage(
  title: string,
  language: string,
  body: string,
  { foot, large = false, style = '' }: PageOptions = {},
): string {
  const rules = [pageStyle, ...(foot === undefined ? [] : [footRule(foot, language)]), style];
  return `<!DOCTYPE html>
<html lang="${escapedHtml(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapedHtml(title)}</title>
<style>
${rules.filter((rule) => rule !== '').join('\n')}
</style>
</head>
<body${large ? ' class="large"' : ''}>
${body}
</body>
</html>
`;
}

/** An element around a text. */
export const tag = (name: string, text: string): string => `<${name}>${escapedHtml(text)}</${name}>`;

/** A list of texts. */
export const listHtml = (rows: readonly string[]): string =>
  `<ul>\n${rows.map((row) => tag('li', row)).join('\n')}\n</ul>`;
