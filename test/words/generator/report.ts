import type { Finding, Severity } from '../../../src/note/tree/finding.ts';
import type { Case } from './generate.ts';

const gravity: Readonly<Record<Severity, number>> = { hint: 0, information: 1, warning: 2, error: 3 };

/** Whether the findings of a note answer its text wrongly: silent on a danger, or loud on what is denied. */
export function isWrong(
  { answer, codes, least }: Pick<Case, 'answer' | 'codes' | 'least'>,
  findings: readonly Finding[],
): boolean {
  const loudest = Math.max(
    0,
    ...findings.filter(({ code }) => codes.includes(code)).map(({ severity }) => gravity[severity]),
  );
  return answer === 'denied' ? loudest >= gravity.warning : loudest < gravity[least];
}

function counted(cases: readonly Case[], of: (one: Case) => string): string {
  const counts = new Map<string, number>();
  for (const one of cases) counts.set(of(one), (counts.get(of(one)) ?? 0) + 1);
  return [...counts]
    .sort(([, one], [, other]) => other - one)
    .slice(0, 25)
    .map(([name, count]) => `  ${String(count).padStart(6)}  ${name}`)
    .join('\n');
}

/** What went wrong, by kind of danger, key, shape and cue, with the twenty shortest texts. */
export function reportOf(wrong: readonly Case[], tried: number): string {
  const shortest = [...wrong].sort((one, other) => one.text.length - other.text.length).slice(0, 20);
  return [
    `${wrong.length} of ${tried} texts are read wrongly`,
    `by kind\n${counted(wrong, ({ kind }) => kind)}`,
    `by key\n${counted(wrong, ({ key }) => key)}`,
    `by shape\n${counted(wrong, ({ shape }) => shape)}`,
    `by kind, shape and cue\n${counted(wrong, ({ kind, shape, cue }) => `${kind} · ${shape} · ${cue}`)}`,
    `the shortest\n${shortest.map(({ answer, key, text, row }) => `  ${answer} · ${key}: ${text} (${row})`).join('\n')}`,
  ].join('\n');
}
