import { loopsOf } from '../../followup/loops.ts';
import type { Planned } from '../../followup/schedule.ts';
import type { Specimen } from '../../note/generated/types.ts';
import { atPlace, capital } from './done.ts';
import { dateWords } from './language.ts';
import type { Facts, Section } from './model.ts';
import type { Wound } from './wounds.ts';

/** Whether stitches or staples are still to come out. */
export const stitchesLeft = ({ plan: { planned, undated }, wounds }: Facts): boolean =>
  planned.some(({ kind, done }) => kind === 'suture removal' && done === undefined) ||
  undated.some(({ kind, procedure }) => kind === 'suture removal' && isSewn(wounds[procedure ?? 0]));

/** Whether the closure itself says that there are stitches: one that stopped the bleeding may be gone. */
const isSewn = (wound: Wound | undefined): boolean =>
  wound?.held.includes('stitches') === true || wound?.held.includes('staples') === true;

/** When and where stitches come out; undefined where none have to, or they are out. */
export function stitchesSection(facts: Facts): Section | undefined {
  const { plan, wounds, wording, tables } = facts;
  const removals = wounds.flatMap((wound, index) => {
    const planned = plan.planned.find(
      ({ kind, procedure }) => kind === 'suture removal' && procedure === index,
    );
    const undated = plan.undated.some(
      ({ kind, procedure }) => kind === 'suture removal' && procedure === index && isSewn(wound),
    );
    if (planned === undefined) return undated ? [{ wound, when: wording.say('stitches-ask') }] : [];
    return planned.done === undefined ? [{ wound, when: removal(wound, planned, facts) }] : [];
  });
  const [first, ...others] = removals;
  if (first === undefined) return undefined;
  const alike = others.every(({ when }) => when === first.when);
  const items = alike
    ? [capital(first.when)]
    : removals.map(({ wound, when }) => atPlace(wound, uncapital(when), facts));
  const practice = tables.practice.name;
  const where =
    practice === '' ? wording.say('stitches-where-us') : wording.say('stitches-where', { practice });
  return { heading: wording.say('stitches-title'), items: [...items, where] };
}

const uncapital = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** The day that is planned, or else the days from the first working day of the window to its end. */
function removal({ procedure }: Wound, { to, proposed }: Planned, { wording }: Facts): string {
  const date = dateWords(proposed, wording.language);
  return procedure.suturesDue?.value !== undefined || proposed >= to
    ? wording.say('stitches-on', { date })
    : wording.say('stitches-between', { from: date, to: dateWords(to, wording.language) });
}

/** What becomes of what was sent; undefined where the note says nothing of a specimen, or the patient knows it all. */
export function resultSection(facts: Facts): Section | undefined {
  const { note, wording } = facts;
  const specimens = (note.procedures ?? []).flatMap(({ specimen }) => specimen ?? []);
  const kept = specimens.filter(({ notSent }) => notSent?.value !== undefined);
  const items = [
    ...told(specimens, facts),
    ...outstanding(facts),
    ...(kept.length > 0 && kept.length === specimens.length ? [wording.say('result-not-sent')] : []),
  ];
  return items.length === 0 ? undefined : { heading: wording.say('result-title'), items };
}

function outstanding({ plan, wording }: Facts): readonly string[] {
  const due = plan.planned.filter(({ kind, done }) => kind === 'result' && done === undefined);
  const days = [...new Set(due.map(({ to }) => to))].sort();
  const first = days[0];
  const last = days.at(-1);
  const untold = plan.planned.some(({ kind, done }) => kind === 'telling the patient' && done === undefined);
  const undated = plan.undated.some(({ kind }) => kind === 'result');
  const date = (day: string): { readonly date: string } => ({ date: dateWords(day, wording.language) });
  return [
    ...(untold ? [wording.say('result-in')] : []),
    ...(first === undefined ? [] : [wording.say('result-by', date(first))]),
    ...(last === undefined || last === first ? [] : [wording.say('result-slow', date(last))]),
    ...(first === undefined ? [] : [wording.say('result-call')]),
    ...(undated ? [wording.say('result-ask')] : []),
  ];
}

/** What the patient has been told already, where the practice wants it in the handout. */
function told(specimens: readonly Specimen[], { note, tables, wording }: Facts): readonly string[] {
  // The words of a diagnosis are English.
  if (!tables.practice.handout.diagnosis || wording.language !== 'en') return [];
  return specimens.flatMap((specimen) =>
    loopsOf(specimen, tables, note).flatMap((loop) => {
      const diagnosis = loop.result.diagnosis?.value;
      return loop.told === undefined || diagnosis === undefined
        ? []
        : wording.say('result-diagnosis', { diagnosis });
    }),
  );
}
