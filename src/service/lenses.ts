import type { DoseJudgement, Given } from '../dose/judge.ts';
import { kindText, mgText, percentText, productText } from '../dose/words.ts';
import { formatNumber } from '../note/values/format.ts';
import type { Procedure } from '../note/generated/types.ts';
import type { Range } from '../note/tree/tree.ts';
import type { Analysis } from './analysis/analysis.ts';
import { openWords } from './status.ts';

/** A line of words above a part of the note; pressing it does something where `command` is set. */
export interface Lens extends Range {
  readonly title: string;
  /** What pressing does, by a plain id that the editor maps to a command; undefined where the words only tell. */
  readonly command: 'summary' | 'handout' | 'dose' | 'findings' | undefined;
  /** Which procedure it is over, counted from 0; undefined over the visit. */
  readonly procedure: number | undefined;
}

/** Lenses over the visit and over each procedure, in the order of the text. */
export function lensesOf({ note, judgement }: Analysis): readonly Lens[] {
  if (note === null) return [];
  const { dose, findings } = judgement;
  const at = note.visit ?? note.head;
  const over = (title: string, command: Lens['command']): Lens => ({
    start: at.start,
    end: at.end,
    title,
    command,
    procedure: undefined,
  });
  return [
    over(visitWords(dose), 'dose'),
    over(openWords(findings), 'findings'),
    over('Summary', 'summary'),
    // Without a procedure there is nothing to take home.
    ...((note.procedures ?? []).length === 0 ? [] : [over('Handout', 'handout')]),
    ...procedureLenses(note.procedures ?? [], dose),
  ];
}

function visitWords(dose: DoseJudgement | null): string {
  if (dose === null) return 'Dose not judged';
  if (dose.fraction === null) return `Dose not judged: ${dose.why ?? ''}`;
  if (dose.given.length > 0) return `${percentText(dose.fraction)}% of the limit`;
  return dose.creams.length === 0 ? 'No anesthetic yet' : 'Cream on the skin';
}

function procedureLenses(procedures: readonly Procedure[], dose: DoseJudgement | null): readonly Lens[] {
  if (dose === null || dose.given.length === 0) return [];
  const left = dose.left;
  return procedures.flatMap(({ anesthetic = [], head: { start, end } }, procedure): readonly Lens[] => {
    const given = dose.given.filter(({ injection }) => anesthetic.includes(injection));
    return given.length === 0
      ? []
      : [{ start, end, title: procedureWords(given, left), command: 'dose', procedure }];
  });
}

/** What was given here, and how much of each of its products may still be given in this visit. */
function procedureWords(given: readonly Given[], left: DoseJudgement['left']): string {
  const kinds = new Map<string, number>();
  for (const one of given) {
    const kind = kindText(one.agent.name, one.withEpinephrine);
    kinds.set(kind, (kinds.get(kind) ?? 0) + one.mg);
  }
  const amounts = [...kinds].map(([kind, mg]) => `${mgText(mg)} mg ${kind}`).join(', ');
  const products = new Set(given.map(productText));
  const rest = left.filter(({ product }) => products.has(product));
  const several = rest.length > 1;
  const room = rest.map(({ product, ml }) => `${formatNumber(ml)} mL${several ? ` of ${product}` : ''}`);
  return room.length === 0 ? amounts : `${amounts} · ${room.join(' or ')} left`;
}
