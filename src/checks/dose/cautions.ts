import { isAtLeast, isOver } from '../../dose/arithmetic.ts';
import type { DoseJudgement, Given } from '../../dose/judge.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Injection, Procedure } from '../../note/generated/types.ts';
import type { AgentRow } from '../../reference/agents.ts';
import { bounded } from '../bounded.ts';
import type { Check, Report, Subject } from '../check.ts';
import { cautionsOf, isAnyCaution, type Caution } from './_cautions.ts';
import { daysOf } from './_days.ts';

const said = ({ at, row }: Caution): NonNullable<Report['related']>[number] => ({
  start: at.start,
  end: at.end,
  form: 'said',
  args: { name: row.name },
});
const saidHere = '{name} is said here';

const epinephrineAt = ({ injection, at }: Given): Report['at'] =>
  injection.epinephrine ?? injection.product ?? at;

const withEpinephrine = ({ given }: DoseJudgement): readonly Given[] =>
  given.filter(({ epinephrineMicrograms }) => epinephrineMicrograms > 0);

function epinephrineCare(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { micrograms } = subject.tables.epinephrine.cardiac;
  for (const day of daysOf(subject.dose)) {
    const first = withEpinephrine(day)[0];
    if (first === undefined) continue;
    const much = isOver(day.epinephrineMicrograms, micrograms);
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.epinephrine;
      if (effect === undefined || !(effect.anyAmount || much)) continue;
      found.push({
        at: epinephrineAt(first),
        severity: bounded(effect.anyAmount ? 'warning' : 'information', effect.mark),
        form: effect.anyAmount ? 'any' : 'main',
        args: {
          name: caution.row.name,
          micrograms: formatNumber(day.epinephrineMicrograms, 2),
          most: micrograms,
        },
        related: [said(caution)],
      });
    }
  }
  return found;
}

/** What was injected for a procedure, its own and what the note gives for the whole visit. */
function givenFor(procedure: Procedure, { note, dose }: Subject): readonly Given[] {
  const own: ReadonlySet<Injection> = new Set([...(procedure.anesthetic ?? []), ...(note.anesthetic ?? [])]);
  return withEpinephrine(dose).filter(({ injection }) => own.has(injection));
}

function endArteries(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  if (subject.dose.epinephrineMicrograms === 0) return found;
  const told = new Set<Given>();
  for (const procedure of subject.note.procedures ?? []) {
    const base = subject.siteOf(procedure)?.base;
    if (base?.endArtery !== true) continue;
    const caution = cautionsOf(subject).find(({ row }) => row.endArtery?.regions.has(base.region) === true);
    const first = givenFor(procedure, subject)[0];
    if (caution === undefined || first === undefined || told.has(first)) continue;
    told.add(first);
    const args = { name: caution.row.name, site: base.name };
    found.push({ at: epinephrineAt(first), args, related: [said(caution)] });
  }
  return found;
}

function lessTolerance(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const last = day.given.at(-1);
    if (last === undefined || !isAtLeast(day.atLeast, subject.tables.toleranceFrom)) continue;
    for (const caution of cautionsOf(subject))
      if (caution.row.tolerance !== undefined)
        found.push({
          at: last.at,
          args: { name: caution.row.name, percent: formatNumber(day.atLeast * 100, 0) },
          related: [said(caution)],
        });
  }
  return found;
}

interface Used {
  readonly agent: AgentRow;
  readonly injection: Injection;
}

const usedOn = ({ given, creams, unlimited }: DoseJudgement): readonly Used[] => [
  ...given,
  ...creams.flatMap(({ applied }) => applied),
  ...unlimited,
];

const placeOf = ({ agent, product, head }: Injection): Report['at'] => agent ?? product ?? head;

const holds = ({ agent }: Used, name: string): boolean =>
  agent.name === name || agent.contains.includes(name);

const oxidizing = 'prilocaine';
const infantBelowMonths = 12;

function methemoglobin(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const first = usedOn(day).find((one) => holds(one, oxidizing));
    if (first === undefined) continue;
    const infant = (day.facts.months ?? Infinity) < infantBelowMonths;
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.methemoglobin;
      if (effect === undefined) continue;
      const form = effect.by === 'medicine' && infant ? 'infant' : effect.by;
      const severity = severities[form];
      const args = { agent: first.agent.name, name: caution.row.name };
      found.push({ at: placeOf(first.injection), form, severity, args, related: [said(caution)] });
    }
  }
  return found;
}

const severities = { disease: 'error', infant: 'error', enzyme: 'warning', medicine: 'information' } as const;

function inPregnancy(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose))
    for (const one of usedOn(day)) {
      const { agent, injection } = one;
      if (agent.class === 'none' || !isOther(agent)) continue;
      const caution = cautionsOf(subject).find(({ row }) => row.pregnancy !== undefined);
      if (caution !== undefined)
        found.push({ at: placeOf(injection), args: { agent: agent.name }, related: [said(caution)] });
    }
  return found;
}

/** Whether it holds another anesthetic than lidocaine. */
const isOther = ({ name, contains }: AgentRow): boolean =>
  contains.length === 0 ? name !== 'lidocaine' : contains.some((one) => one !== 'lidocaine');

function mixed({ dose }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { given } of daysOf(dose)) {
    const [first] = given;
    const other = given.find(({ agent }) => agent !== first?.agent);
    if (first === undefined || other === undefined) continue;
    const { start, end } = placeOf(first.injection);
    const args = { first: first.agent.name, second: other.agent.name };
    found.push({ at: placeOf(other.injection), args, related: [{ start, end, form: 'first', args }] });
  }
  return found;
}

export const checks: readonly Check[] = [
  {
    code: 'dose/epinephrine-care',
    about: ['conditions', 'medications', 'remarks'],
    when: isAnyCaution,
    severity: 'warning',
    title: 'Epinephrine with a condition or medicine that calls for care',
    why: 'With a pheochromocytoma any epinephrine can set off a crisis. With non-selective beta blockers, tricyclics, MAO inhibitors, phenothiazines, cocaine or hyperthyroidism pressure and rhythm can suffer. Sources differ from caution to contraindicated, and hold it unlikely with small local doses: below the maximum for cardiac disease nothing is said.',
    sources: [
      { source: 'epinephrine-conditions', mark: 'Q' },
      { source: 'beta-blocker-interactions', mark: 'Q' },
      { source: 'epinephrine-interactions', mark: 'Q' },
      { source: 'epinephrine-cardiac-dental', mark: 'Q' },
    ],
    messages: {
      any: 'Epinephrine with {name}: the sources advise against it. Use a plain solution, or ask the physician who treats it.',
      main: '{micrograms} µg of epinephrine is more than {most} µg, and {name} can make it act more strongly. Weigh less, or a plain solution, and watch pulse and pressure.',
      said: saidHere,
    },
    find: epinephrineCare,
  },
  {
    code: 'dose/epinephrine-end-artery',
    about: ['conditions', 'medications', 'remarks'],
    when: isAnyCaution,
    severity: 'warning',
    title: 'Epinephrine in a digit, ear or nose with Raynaud or vascular disease',
    why: 'In healthy digits, ears and noses reviews and trials found epinephrine safe, and nothing is said. With Raynaud phenomenon an ischemic digit is reported, and labels ask for care with peripheral vascular disease.',
    sources: [
      { source: 'digit-raynaud-2022', mark: 'Q' },
      { source: 'us-label-end-arteries', mark: 'Q' },
      { source: 'digit-epinephrine-review', mark: 'Q' },
    ],
    messages: {
      main: 'Epinephrine in the {site} with {name}: the blood supply may not bear it. Use a plain solution; if it is in already, watch color and warmth until it has worn off.',
      said: saidHere,
    },
    find: endArteries,
  },
  {
    code: 'dose/reduced-tolerance',
    about: ['conditions', 'medications', 'remarks'],
    when: isAnyCaution,
    severity: 'information',
    title: 'More than half of the limit in a patient who bears less',
    why: 'The limits are for healthy adults. Labels want less for the debilitated and with cardiac or liver disease, and give no number; from half of the limit on Wheal says so.',
    sources: [{ source: 'us-label-reduced-doses', mark: 'Q' }],
    messages: {
      main: 'The dose comes to {percent}% of the limit for a healthy patient; with {name} the label wants less, without a number. Weigh whether less will do.',
      said: saidHere,
    },
    find: lessTolerance,
  },
  {
    code: 'dose/methemoglobin',
    about: ['conditions', 'medications', 'remarks'],
    when: isAnyCaution,
    severity: 'error',
    title: 'Prilocaine in a patient who is prone to methemoglobin',
    why: 'A metabolite of prilocaine turns hemoglobin into methemoglobin. The label rules them out with congenital or idiopathic methemoglobinemia, and under 12 months together with drugs that do the same; with G6PD deficiency the risk is higher.',
    sources: [
      { source: 'us-label-prilocaine-methemoglobin', mark: 'Q' },
      { source: 'prilocaine-benzocaine-course', mark: 'Q' },
      { source: 'methemoglobin-drugs-australia', mark: 'Q' },
      { source: 'methemoglobin-drugs-ers', mark: 'Q' },
    ],
    messages: {
      disease:
        '{agent} with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis.',
      infant:
        '{agent} under 12 months together with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis.',
      enzyme:
        '{agent} with {name}: the risk of methemoglobinemia is higher. Use another anesthetic, such as lidocaine alone.',
      medicine:
        '{agent} and {name} can both cause methemoglobin. Keep to the smallest amount, or use lidocaine alone.',
      said: saidHere,
    },
    find: methemoglobin,
  },
  {
    code: 'dose/pregnancy',
    about: ['conditions', 'medications', 'remarks'],
    when: isAnyCaution,
    severity: 'information',
    title: 'Another anesthetic than lidocaine in pregnancy',
    why: 'The academy’s guideline holds lidocaine usable in pregnancy and the evidence on others too thin, and has elective procedures wait.',
    sources: [{ source: 'aad-2016-summary', mark: 'Q' }],
    messages: {
      main: '{agent} in pregnancy: the guideline knows too little of it, and holds lidocaine usable. Weigh lidocaine alone.',
      said: saidHere,
    },
    find: inPregnancy,
  },
  {
    code: 'dose/agents-mixed',
    severity: 'information',
    title: 'Two local anesthetics in one visit',
    why: 'Labels advise against mixing, or one after the other, for want of data. Teaching adds up each share of its own limit, as Wheal does; a hospital sheet gives no more of any once one limit is reached.',
    sources: [
      { source: 'us-label-lidocaine-epinephrine', mark: 'Q' },
      { source: 'additive-toxicity', mark: 'Q' },
    ],
    messages: {
      main: '{first} and {second} in one visit: their labels advise against it for want of data. Wheal adds up their shares of the limits; keep to one where it will do.',
      first: '{first} here',
    },
    find: mixed,
  },
];
