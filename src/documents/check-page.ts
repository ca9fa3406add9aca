import type { Check } from '../checks/check.ts';
import { citation } from '../reference/sources/index.ts';
import type { Mark } from '../reference/types.ts';
import { caution } from './caution.ts';

/** How sure a row or a check is of its source, in words. */
export const markText: Readonly<Record<Mark, string>> = {
  Q: 'read in this source',
  Q2: 'read in a secondary page that names this source',
  M: 'from memory, not verified',
  common: 'not verified',
  format: 'a rule of the format',
};

const quoted = (keys: readonly string[]): string => keys.map((key) => `\`${key}\``).join(', ');

/** Where the sources of a check differ, what is followed, and the setting that follows another. */
function differenceText({ sourcesDiffer }: Check): readonly string[] {
  if (sourcesDiffer === undefined) return [];
  const { how, settings } = sourcesDiffer;
  const setting =
    settings.length === 0
      ? 'No setting follows another, since this is a danger.'
      : settings.join() === 'severities'
        ? 'No setting follows another source; `severities` in the practice file raises, lowers or turns off this check.'
        : `To follow another, set ${quoted(settings)} in the practice file.`;
  return [`Sources differ. ${how} ${setting}`, ''];
}

/**
 * The head of a check's page as Markdown: what the check is, why it matters, where its facts are from, and the caution.
 * @param place where the check is written, for those who change it
 */
export function checkHead(check: Check, place?: string): string {
  const sources = check.sources.map(({ source, mark }) => `- ${citation(source)} (${markText[mark]})`);
  return [
    `# ${check.code}`,
    '',
    `${check.title}. Severity: ${check.severity}.`,
    '',
    check.why,
    '',
    ...differenceText(check),
    ...sources,
    '',
    ...(place === undefined ? [] : [place, '']),
    caution,
    '',
  ].join('\n');
}
