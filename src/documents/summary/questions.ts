import { checkOf, messageOf } from '../../checks/index.ts';
import type { Finding } from '../../note/tree/finding.ts';

type Told = Pick<Finding, 'code' | 'form' | 'args'>;

/** What is asked after the fact, by the family of the check. */
const asked: ReadonlyMap<string, string> = new Map([
  ['allergy', 'How was this settled?'],
  ['device', 'How was this settled?'],
  ['dose', 'How was this settled?'],
  ['follow-up', 'What was done?'],
]);

/** Words that tell the scribe what to type instead of saying what is so. */
const command = /^(?:write|check|name|use|give|take|copy|choose|look|find|ask|call|put|say|settle)\b/i;

/** The first sentence of a message, which says what is so; a point after initials ends none. */
const firstSentence = (text: string): string => /^.*?(?<![A-Z])[.!?](?=\s|$)/.exec(text)?.[0] ?? `${text}.`;

/** What a finding says, in words that a chart can bear: without keys, and without what to type. */
export function factOf(finding: Told): string {
  const fact = firstSentence(messageOf(finding));
  const words =
    command.test(fact) || fact.includes('Wheal') ? `${checkOf(finding.code)?.title ?? fact}.` : fact;
  return words
    .replace(/`([^`]*)`/g, '“$1”')
    .replace(/ (?:that is )?known here\b/g, ' known')
    .replace(/`/g, '');
}

/** An open finding as a question to whoever answers for the note. */
export function questionOf(finding: Told): string {
  const fact = factOf(finding);
  if (fact.endsWith('?')) return fact;
  const missing = checkOf(finding.code)?.misses !== undefined;
  const family = finding.code.slice(0, finding.code.indexOf('/'));
  const question = missing ? 'What is to be recorded?' : (asked.get(family) ?? 'Is that right?');
  return `${fact} ${question}`;
}
