import { agents, type AgentRow } from '../../../src/reference/agents.ts';
import { aftercare } from '../../../src/reference/aftercare.ts';
import { creams, type CreamRow } from '../../../src/reference/creams.ts';
import { epinephrine } from '../../../src/reference/epinephrine.ts';
import { injectedDrugs } from '../../../src/reference/injected-drugs.ts';
import { homeCare, terms } from '../../../src/reference/follow-up.ts';
import { infantReduction, limits, type LimitRow, type Population } from '../../../src/reference/limits.ts';
import { media } from '../../../src/reference/media.ts';
import {
  lengtheningStep,
  sutureWindows,
  type SutureWindowRow,
} from '../../../src/reference/suture-windows.ts';
import { weightsForAge } from '../../../src/reference/weights-for-age.ts';
import type { Mark } from '../../../src/reference/types.ts';
import { usualOverdue } from '../../../src/practice/settings.ts';
import { readDilution } from '../../../src/note/values/ratios.ts';
import type { Fact } from './facts.ts';
import type { Topic } from './files.ts';

/** Keys that the files speak of, so that a row from memory counts where it can be compared. */
export type Spoken = ReadonlySet<string>;

/** A row that says where it was read needs its twin; one from memory or of common practice can have none. */
const needsTwin = (mark: Mark, key: string, spoken: Spoken): boolean =>
  mark === 'Q' || mark === 'Q2' || spoken.has(key);

const ageOf = ({ fromMonths, belowMonths }: Population): Pick<Fact, 'from' | 'below'> => ({
  ...(fromMonths === undefined ? {} : { from: fromMonths }),
  ...(belowMonths === undefined ? {} : { below: belowMonths }),
});

export const limitKey = (agent: string, epinephrine: boolean, authority: string, rest: string): string =>
  `limits / ${agent} / ${epinephrine ? 'with epinephrine' : 'plain'} / ${authority} / ${rest}`;

const weightOf = ({ fromKg, aboveKg, belowKg }: Population): string =>
  [fromKg ?? aboveKg, belowKg]
    .map((kg, at) => (kg === undefined ? '' : `, ${at === 0 ? 'from' : 'below'} ${kg} kg`))
    .join('');

function factsOfLimit(row: LimitRow): readonly Fact[] {
  const { agent, epinephrine: kind, authority, population } = row;
  const low = /^([\d.]+) to [\d.]+ mg\/kg/.exec(row.printed ?? '')?.[1];
  const values: readonly (readonly [quantity: string, value: number | string | undefined])[] = [
    // A mg/kg that is another source's is compared with that source.
    ['dose per weight, mg/kg', row.mgPerKgFrom === undefined ? row.mgPerKg : undefined],
    ['dose per weight, low end, mg/kg', low === undefined ? undefined : Number(low)],
    ['dose cap, mg', row.capMg],
    ['not recommended', row.notRecommended && 'yes'],
  ];
  return values.flatMap(([quantity, value]) =>
    value === undefined
      ? []
      : [
          {
            key: limitKey(agent, kind, authority, quantity + weightOf(population)),
            value: String(value),
            ...ageOf(population),
          },
        ],
  );
}

const reduction = `limits / ${infantReduction.class}s / ${infantReduction.authority} / reduction of the dose, %`;

const ofLimits = (): readonly Fact[] => [
  ...limits.flatMap(factsOfLimit),
  {
    key: reduction,
    value: String(Math.round((1 - infantReduction.factor) * 100)),
    from: 0,
    below: infantReduction.belowMonths,
  },
];

/** The row of a cream begins where both are reached, so its key is where it begins. */
export const creamKey = (agent: string, fromMonths: number, fromKg: number, quantity: string): string =>
  `creams / ${agent} / from ${fromMonths} months and ${fromKg} kg / ${quantity}`;

const factsOfCream = ({
  agent,
  population,
  maxGrams,
  maxCm2,
  maxMinutes,
  maxMgPerKg,
}: CreamRow): readonly Fact[] =>
  (
    [
      ['amount, g', maxGrams],
      ['area, cm2', maxCm2],
      ['time, min', maxMinutes],
      ['lidocaine per weight, mg/kg', maxMgPerKg],
    ] as const
  ).flatMap(([quantity, value]) =>
    value === undefined
      ? []
      : [
          {
            key: creamKey(
              agent,
              population.fromMonths ?? 0,
              population.aboveKg ?? population.fromKg ?? 0,
              quantity,
            ),
            value: String(value),
          },
        ],
  );

const ageText = (months: number): string =>
  months < 24 ? `${months} month${months === 1 ? '' : 's'}` : `${months / 12} years`;

/** What a label wants on nobody below an age. */
const factOfYouth = ({ name, notBelow }: AgentRow): readonly Fact[] =>
  notBelow === undefined
    ? []
    : [{ key: `creams / ${name} / under ${ageText(notBelow.months)} / not for use`, value: 'yes' }];

const ofStrengths = (): readonly Fact[] =>
  agents.flatMap(({ name, strengths }) =>
    strengths.map((strength) => ({ key: `strengths / ${name} / ${strength} mg/mL`, value: 'made' })),
  );

function factsOfContents({
  name,
  preservatives,
  sulfite: always,
  sulfiteWithEpinephrine,
}: AgentRow): readonly Fact[] {
  const sulfite = { key: `contents / ${name} / sulfite, with epinephrine`, value: 'yes' };
  return [
    ...(sulfiteWithEpinephrine === undefined ? [] : [sulfite]),
    ...(always === undefined ? [] : [{ key: `contents / ${name} / sulfite, plain`, value: 'yes' }]),
    ...preservatives.map((one) => ({ key: `contents / ${name} / preservative ${one.name}`, value: 'yes' })),
  ];
}

export const windowKey = (source: string, group: string, children: boolean): string =>
  `suture windows / ${source} / ${group}${children ? ' / children' : ''}`;

const factOfWindow = ({ source, group, from, to, children }: SutureWindowRow): Fact => ({
  key: windowKey(source, group, children === true),
  value: `${from}-${to} d`,
});

const ofWindows = (): readonly Fact[] => [
  ...sutureWindows.map(factOfWindow),
  { key: 'suture windows / suture-handbook / lengthening step', value: `${lengtheningStep} d` },
];

export const effectKey = (test: string, medium: string): string => `media / ${test} / ${medium}`;

const ofMedia = (spoken: Spoken): readonly Fact[] =>
  media.flatMap(({ name, effects = {}, keeps }) => [
    ...Object.entries(effects)
      .filter(([test, { mark }]) => needsTwin(mark, effectKey(test, name), spoken))
      .map(([test, { on }]) => ({ key: effectKey(test, name), value: on })),
    ...(keeps === undefined
      ? []
      : [{ key: `${effectKey(keeps.test, name)} / keeps`, value: `${keeps.days} d` }]),
  ]);

const ofFollowUp = (spoken: Spoken): readonly Fact[] => [
  ...Object.entries(terms)
    .filter(([name, { mark }]) => needsTwin(mark, `follow-up / ${name}`, spoken))
    .map(([name, { count, unit }]) => ({ key: `follow-up / ${name}`, value: `${count} ${unit}` })),
  ...Object.entries(aftercare).map(([name, { value }]) => ({
    key: `follow-up / ${name}`,
    value: String(value),
  })),
  ...injectedDrugs.flatMap(({ name, limits: most }) =>
    most.map(({ per, mg }) => ({ key: `follow-up / ${name}, ${per}`, value: `${mg} mg` })),
  ),
  { key: 'follow-up / washedTo', value: `${homeCare.washedTo} days` },
  { key: 'follow-up / result overdue', value: `${usualOverdue.result} working days` },
];

const ratios = ['1:1,000', '1:50,000', '1:80,000', '1:100,000', '1:200,000', '1:400,000'];

const ofEpinephrine = (): readonly Fact[] => [
  { key: 'epinephrine / healthy', value: `${epinephrine.healthy.micrograms} ug` },
  { key: 'epinephrine / cardiac', value: `${epinephrine.cardiac.micrograms} ug` },
  { key: 'epinephrine / unlocksFrom', value: `1:${epinephrine.unlocksFrom.ratio}` },
  { key: 'epinephrine / strongest', value: `1:${epinephrine.strongest.ratio}` },
  { key: 'epinephrine / bufferedDays', value: `${epinephrine.bufferedDays.days} d` },
  ...ratios.map((ratio) => ({
    key: `epinephrine / ${ratio}`,
    value: `${readDilution(ratio).value?.microgramsPerMl ?? NaN} ug/mL`,
  })),
];

/** In the order of the tables. */
export const percentiles: readonly number[] = [3, 25, 50, 75, 97];

export const weightKey = (months: number, sex: string, percentile: number): string =>
  `weights / ${months} months / ${sex} / ${percentile}`;

const ofWeights = (): readonly Fact[] =>
  weightsForAge.flatMap(({ months, boys, girls }) =>
    percentiles.flatMap((percentile, at) => [
      { key: weightKey(months, 'male', percentile), value: boys[at]!.toFixed(1) },
      { key: weightKey(months, 'female', percentile), value: girls[at]!.toFixed(1) },
    ]),
  );

/** Every number of the tables that judges, by topic. */
export function factsOfTables(topic: Topic, spoken: Spoken): readonly Fact[] {
  switch (topic) {
    case 'limits':
      return ofLimits();
    case 'creams':
      return [...creams.flatMap(factsOfCream), ...agents.flatMap(factOfYouth)];
    case 'strengths':
      return ofStrengths();
    case 'sulfite-and-preservative':
      return agents.flatMap(factsOfContents);
    case 'suture-windows':
      return ofWindows();
    case 'media':
      return ofMedia(spoken);
    case 'weights':
      return ofWeights();
    case 'follow-up':
      return ofFollowUp(spoken);
    case 'epinephrine':
      return ofEpinephrine();
  }
}
