import { catalogue, type Check } from '../../checks/index.ts';
import { citation } from '../../reference/sources/index.ts';
import { choice } from '../options/arguments.ts';
import { formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import type { Command } from '../options/command.ts';

/** How sure a source is, in words. */
const verification: Readonly<Record<Check['sources'][number]['mark'], string>> = {
  Q: 'read in the source',
  Q2: 'read in a secondary page',
  M: 'from memory',
  common: 'common practice, no source',
  format: "a rule of Wheal's note format",
};

export const checks: Command = {
  takes: '',
  options: [formatOf(['text', 'json']), out],
  about: 'Lists the catalogue: each check with its severity, what it finds, and its sources.',
  async run(given, console) {
    const format = choice(given, 'format', ['text', 'json']);
    const sorted = [...catalogue].sort((a, b) => (a.code < b.code ? -1 : 1));
    const text =
      format === 'json'
        ? jsonOf(sorted)
        : `${sorted.map(textOf).join('\n')}\n${sorted.length} checks in all.\n`;
    await deliver(text, given.options.get('out'), console);
    return 0;
  },
};

function textOf({ code, severity, title, sources }: Check): string {
  const rows = sources.map(({ source, mark }) => `    ${citation(source)} (${verification[mark]})\n`);
  return `${code}  ${severity}\n    ${title}\n${rows.join('')}`;
}

function jsonOf(sorted: readonly Check[]): string {
  const rows = sorted.map(({ code, severity, title, why, sources, fix }) => ({
    code,
    severity,
    title,
    why,
    fix: fix !== undefined,
    sources: sources.map(({ source, mark }) => ({
      source,
      mark,
      verification: verification[mark],
      citation: citation(source),
    })),
  }));
  return `${JSON.stringify({ wheal: 1, checks: rows }, null, 2)}\n`;
}
