import { judgeDose, type DoseJudgement } from '../../src/dose/judge.ts';
import { maxDose, type MaxDose } from '../../src/dose/max.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';

export interface Typed {
  readonly patient?: string;
  readonly visit?: string;
  readonly tables?: Tables;
  /** Rows after the procedures, such as events. */
  readonly rest?: string;
}

export const adult = 'id: C-1, born: 1961-08-09, weight: 62 kg';

/** Judges the injections of one procedure, each typed as a flow map without its braces. */
export function doseOf(
  injections: readonly string[],
  { patient = adult, visit = '2026-03-02', tables = referenceTables, rest = '' }: Typed = {},
): DoseJudgement {
  const rows = injections.map((one) => `      - {${one}}\n`).join('');
  const text = `visit: ${visit}\npatient: {${patient}}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic:${rows === '' ? ' []\n' : `\n${rows}`}${rest}`;
  const { value } = readNote(text);
  if (value === null) throw new Error(`not a note: ${text}`);
  return judgeDose(value, tables);
}

export interface Asked {
  readonly kg: number;
  readonly months?: number;
  readonly epinephrine?: number;
  readonly authority?: string;
}

/** The most of a product for a patient. @throws Error where there is none */
export function most(
  agent: string,
  mgPerMl: number,
  { kg, months, epinephrine = 0, authority }: Asked,
): MaxDose {
  const tables = authority === undefined ? referenceTables : { ...referenceTables, authority };
  const row = tables.agents.find(agent);
  if (row === undefined) throw new Error(`no agent is called ${agent}`);
  const answer = maxDose(
    { agent: row, mgPerMl, epinephrineMicrogramsPerMl: epinephrine, kg, months },
    tables,
  );
  if ('why' in answer) throw new Error(answer.why);
  return answer;
}
