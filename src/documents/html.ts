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

/** A page that stands alone: no scripts, nothing loaded from elsewhere, fit for printing. */
export function htmlPage(title: string, language: string, body: string): string {
  return `<!DOCTYPE html>
<html lang="${escapedHtml(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapedHtml(title)}</title>
<style>
body { font: 1rem/1.45 system-ui, sans-serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; color: #1a1a1a; background: #fff; }
h1 { font-size: 1.4rem; } h2 { font-size: 1.1rem; margin-bottom: 0.3rem; }
ul { margin-top: 0.3rem; } .alert { border: 2px solid #b00020; padding: 0.6rem; font-weight: bold; }
footer { margin-top: 2rem; font-size: 0.85rem; }
@media print { body { margin: 0; max-width: none; } h2, li { break-inside: avoid; } h2 { break-after: avoid; } }
</style>
</head>
<body>
${body}
</body>
</html>
`;
}
