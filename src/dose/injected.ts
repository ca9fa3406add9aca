import type { InjectedDrug, Note } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Range } from '../note/tree/tree.ts';
import { readQuantity } from '../note/values/quantity.ts';
import type { IsoDate } from '../note/values/values.ts';
import { asMeant } from '../note/words/as-meant.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { Tables } from '../practice/tables.ts';
import type { InjectedDrugRow, InjectedLimit } from '../reference/injected-drugs.ts';

/** One injection of a drug that is no anesthetic. */
export interface InjectedDose {
  readonly entry: InjectedDrug;
  /** Where the note names it. */
  readonly at: Range;
  /** Undefined where no table knows the drug. */
  readonly row: InjectedDrugRow | undefined;
  readonly mgPerMl: number | undefined;
  readonly ml: number | undefined;
  /** mL times mg/mL; undefined where one of them is not known. */
  readonly mg: number | undefined;
  readonly cm2: number | undefined;
  /** The day on which it was given; undefined where the note does not say. */
  readonly day: IsoDate | undefined;
}

/** What one drug came to on one day. */
export interface Session {
  readonly row: InjectedDrugRow;
  readonly day: IsoDate | undefined;
  readonly doses: readonly InjectedDose[];
  /** The sum of what can be counted. */
  readonly mg: number;
}

/** Every drug under `injected`, of the visit and of later events, in the order of the note. */
export function injectedDoses(
  { visit, procedures = [], events = [] }: Note,
  tables: Tables,
): readonly InjectedDose[] {
  const day = visit?.value?.date;
  return [
    ...procedures.flatMap(({ injected = [] }) => injected.map((entry) => doseOf(entry, day, tables))),
    ...events.flatMap(({ on, injected = [] }) =>
      injected.map((entry) => doseOf(entry, on?.value?.date, tables)),
    ),
  ];
}

/** The same, summed by drug and day. */
export function sessionsOf(doses: readonly InjectedDose[]): readonly Session[] {
  const sessions = new Map<
    string,
    { row: InjectedDrugRow; day: IsoDate | undefined; doses: InjectedDose[]; mg: number }
  >();
  for (const dose of doses) {
    const { row, day, mg = 0 } = dose;
    if (row === undefined) continue;
    const key = `${row.name} ${day ?? ''}`;
    const session = sessions.get(key) ?? { row, day, doses: [], mg: 0 };
    session.doses.push(dose);
    session.mg += mg;
    sessions.set(key, session);
  }
  return [...sessions.values()];
}

/** The limit of a drug by its measure; undefined where none is known. */
export const limitPer = (row: InjectedDrugRow, per: InjectedLimit['per']): InjectedLimit | undefined =>
  row.limits.find((limit) => limit.per === per);

function doseOf(entry: InjectedDrug, day: IsoDate | undefined, tables: Tables): InjectedDose {
  const { drug, concentration, volume, area } = entry;
  const words = drug?.value ?? '';
  const mgPerMl =
    concentration === undefined ? toldIn(words, strengthTold, 'concentration') : strengthOf(concentration);
  const ml = volume === undefined ? toldIn(words, volumeTold, 'volume') : volume.value?.amount;
  return {
    entry,
    at: drug ?? entry.head,
    row: drugIn(words, tables),
    mgPerMl,
    ml,
    mg: mgPerMl === undefined || ml === undefined ? undefined : mgPerMl * ml,
    cm2: area?.value?.amount,
    day,
  };
}

/** The drug that words name, whatever else they say of it. */
export const drugIn = (words: string, { injectedDrugs }: Tables): InjectedDrugRow | undefined =>
  injectedDrugs.find(words) ??
  phrasesOf(injectedDrugs)
    .mentionsIn(asMeant(words, injectedDrugs))
    .find(({ standing }) => standing === 'asserted')?.row;

const strengthOf = ({ value }: Leaf<string>): number | undefined =>
  value === undefined ? undefined : readQuantity(value, 'concentration').value?.amount;

const strengthTold = /(?<![\d.,])(?:\d{1,3}(?:\.\d{1,2})?|\.\d{1,2}) ?mg ?\/ ?(?:ml|cc)\b/i;
const volumeTold = /(?<![\d.,/])(?:\d{1,3}(?:\.\d{1,2})?|\.\d{1,2}) ?(?:ml|cc)\b/i;

/** What a dictated line says: "0.3 mL triamcinolone 10 mg/mL". */
function toldIn(words: string, pattern: RegExp, kind: 'concentration' | 'volume'): number | undefined {
  const told = words.length > 200 ? undefined : pattern.exec(words)?.[0];
  return told === undefined ? undefined : readQuantity(told.replace(/cc/i, 'mL'), kind).value?.amount;
}
