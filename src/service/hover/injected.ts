import { floorTo } from '../../dose/arithmetic.ts';
import { injectedDoses, limitPer, sessionsOf, type InjectedDose } from '../../dose/injected.ts';
import { allowedMgText, mgText } from '../../dose/words.ts';
import type { Note } from '../../note/generated/types.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Row, Section } from './section.ts';

/** The sum of the injected drug at an offset, and what is left of its session; undefined where none is there. */
export function injectedSection(note: Note | null, offset: number, tables: Tables): Section | undefined {
  if (note === null) return undefined;
  const doses = injectedDoses(note, tables);
  const dose = doses.find(({ entry }) => offset >= entry.start && offset <= entry.end);
  if (dose === undefined) return undefined;
  return { title: 'The injected drug, step by step', rows: [...sumRows(dose), ...limitRows(dose, doses)] };
}

function sumRows({ row, mg, ml, mgPerMl }: InjectedDose): readonly Row[] {
  if (row === undefined) return [{ text: 'Not judged: the drug is not known here' }];
  if (mg === undefined || ml === undefined || mgPerMl === undefined)
    return [{ text: `${row.name}: not judged, since strength or volume is missing or can’t be read` }];
  return [
    { text: `${formatNumber(ml)} mL × ${formatNumber(mgPerMl)} mg/mL = ${mgText(mg)} mg of ${row.name}` },
  ];
}

function limitRows(dose: InjectedDose, doses: readonly InjectedDose[]): readonly Row[] {
  const { row, mg, mgPerMl, cm2 } = dose;
  if (row === undefined) return [];
  if (row.limits.length === 0) return [{ text: `No limit of ${row.name} is known here` }];
  const session = sessionsOf(doses).find((one) => one.doses.includes(dose));
  const whole = limitPer(row, 'session');
  const perArea = limitPer(row, 'cm2');
  return [
    ...(session === undefined || whole === undefined
      ? []
      : [{ text: leftText(session.mg, whole.mg, mgPerMl), source: whole.source, mark: whole.mark }]),
    ...(mg === undefined || cm2 === undefined || perArea === undefined
      ? []
      : [
          {
            text: `${mgText(mg / cm2)} mg on each cm²; trials had at most ${mgText(perArea.mg)}`,
            source: perArea.source,
            mark: perArea.mark,
          },
        ]),
    { text: 'The 40 mg/mL product is labeled for muscle and joints', source: row.source, mark: row.mark },
  ];
}

/** What the day came to, and what is left in mg and in mL of what is in hand, never rounded up. */
function leftText(mg: number, limit: number, mgPerMl: number | undefined): string {
  const left = Math.max(limit - mg, 0);
  const inMl =
    mgPerMl === undefined || mgPerMl <= 0 ? '' : `, ${formatNumber(floorTo(left / mgPerMl, 0.1))} mL of this`;
  return `${mgText(mg)} mg that day, held against ${mgText(limit)} mg a session of an adult: ${allowedMgText(left)} mg left${inMl}`;
}
