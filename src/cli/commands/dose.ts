import { safeJson } from '../../documents/safe-json.ts';
import { maxDoseJson } from '../../dose/json.ts';
import { maxDose, type Allowance, type DoseQuery, type MaxDose } from '../../dose/max.ts';
import {
  authorityText,
  bindingSource,
  bindingText,
  epinephrineText,
  strengthText,
} from '../../dose/words.ts';
import { missedRange } from '../../dose/patient.ts';
import { formatNumber } from '../../note/values/format.ts';
import { nearest } from '../../note/text/nearest.ts';
import { readers } from '../../note/values/readers.ts';
import type { Age, Dilution, Quantity } from '../../note/values/values.ts';
import { referenceTables, type Tables } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import { citation } from '../../reference/sources/index.ts';
import { caution } from '../../documents/caution.ts';
import { choice, UsageError, type Arguments } from '../options/arguments.ts';
import { Practices, type PracticeFile } from '../notes/practices.ts';
import { formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import type { Command } from '../options/command.ts';

export const dose: Command = {
  takes: '',
  options: [
    { name: 'agent', value: 'NAME', needed: true, about: 'The anesthetic, such as lidocaine.' },
    { name: 'concentration', value: 'STRENGTH', needed: true, about: 'Its strength: 1% or "10 mg/mL".' },
    { name: 'weight', value: 'WEIGHT', needed: true, about: 'Of the patient: 62kg or 137lb.' },
    {
      name: 'epinephrine',
      value: 'RATIO',
      about: 'Epinephrine in it, such as 1:100,000; none where nothing is said.',
    },
    {
      name: 'age',
      value: 'AGE',
      about: 'Of the patient: 64 (years) or 7mo; an adult where nothing is said.',
    },
    formatOf(['text', 'json']),
    out,
  ],
  about: 'Says how much of an anesthetic may be injected, by which limit, and from which source.',
  async run(given, console) {
    const format = choice(given, 'format', ['text', 'json']);
    const practice = new Practices(console.cwd).of('note');
    const tables = practice?.tables ?? referenceTables;
    const query = queryOf(given, tables);
    const max = maxDose(query, tables);
    if ('why' in max) {
      const where = tables.gap === undefined ? '' : ` (${practice?.path ?? ''})`;
      throw new UsageError(`${max.why}${where}; no maximum can be given`);
    }
    const text =
      format === 'json'
        ? `${safeJson(maxDoseJson(max, citation), 2)}\n`
        : textOf(query, max, practice, tables);
    await deliver(text, given.options.get('out'), console);
    return 0;
  },
};

function queryOf(given: Arguments, tables: Tables): DoseQuery {
  const agent = agentOf(needed(given, 'agent'), tables);
  const strength = read('concentration', needed(given, 'concentration'), '1% or "10 mg/mL"') as Quantity;
  const weight = read('weight', needed(given, 'weight'), '62kg or 137lb', 'mass') as Quantity;
  const age = given.options.get('age');
  const epinephrine = given.options.get('epinephrine') ?? 'none';
  return {
    agent,
    mgPerMl: strength.amount,
    epinephrineMicrogramsPerMl: (read('epinephrine', epinephrine, '1:100,000', 'dilution') as Dilution)
      .microgramsPerMl,
    kg: weight.amount,
    months: age === undefined ? undefined : (read('age', age, '64 or 7mo') as Age).months,
  };
}

function needed({ options }: Arguments, name: string): string {
  const value = options.get(name);
  if (value === undefined) throw new UsageError(`dose needs --${name}; try wheal dose --help`);
  return value;
}

/** An option by the reader of the same kind of value in a note. */
function read(name: string, text: string, example: string, reader = name): unknown {
  const { value, problems } = readers.get(reader)?.(text, name) ?? { value: undefined, problems: [] };
  if (value === undefined)
    throw new UsageError(`--${name} is written like ${example}; "${text}" can't be read`);
  if (problems.some(({ code }) => code === 'quantity/implausible'))
    throw new UsageError(`--${name} "${text}" is out of all proportion`);
  return value;
}

function agentOf(name: string, { agents }: Tables): AgentRow {
  const agent = agents.find(name);
  if (agent !== undefined) return agent;
  const near = nearest(name, agents.words);
  throw new UsageError(
    `"${name}" is not an anesthetic that is known${near ? `; did you mean ${near.word}?` : ''}`,
  );
}

/** What is odd about the patient; the answer counts on it. */
function remarksOn(query: DoseQuery, tables: Tables): readonly string[] {
  const range = missedRange(query, tables.weightRanges);
  return range === undefined
    ? []
    : [
        `Check weight and age: ${formatNumber(range.usual.low)} to ${formatNumber(range.usual.high)} kg is usual at that age.`,
      ];
}

function textOf(query: DoseQuery, max: MaxDose, practice: PracticeFile | undefined, tables: Tables): string {
  const { agent, mgPerMl, epinephrineMicrogramsPerMl: epinephrine } = query;
  const product = `${agent.name} ${strengthText(mgPerMl)}${epinephrine > 0 ? ` with epinephrine ${epinephrineText(epinephrine)}` : ''}`;
  const lines = [
    `${product}: at most ${formatNumber(max.maxMl)} mL (${formatNumber(max.maxMg)} mg)`,
    `  bound by ${bindingText(max.limit, max.boundBy, query.kg)}, ${authorityText(max.limit, max.boundBy, tables.authority)}`,
    `  source: ${citation(bindingSource(max.limit, max.boundBy))}, as of ${max.limit.asOf}`,
    ...(practice === undefined ? [] : [`  practice file: ${practice.path}`]),
    '',
    ...max.steps.map(({ text }) => `  ${text}`),
    ...section('Advised for this patient:', max.advisories, query),
    ...section('Published elsewhere:', max.elsewhere, query),
    '',
    ...remarksOn(query, tables),
    ...(max.assumedAdult ? ['No age was given: an adult is assumed.'] : []),
    'This holds for a healthy patient who has had no other local anesthetic today.',
    caution,
  ];
  return `${lines.join('\n')}\n`;
}

function section(heading: string, rows: readonly Allowance[], { kg }: DoseQuery): readonly string[] {
  if (rows.length === 0) return [];
  return [
    '',
    heading,
    ...rows.map(({ limit, maxMl, maxMg, boundBy }) =>
      limit.notRecommended === true
        ? `  not recommended: ${limit.authority}, ${limit.population.text}`
        : `  ${formatNumber(maxMl)} mL (${formatNumber(maxMg)} mg): ${limit.authority}, ${limit.population.text}, ${bindingText(limit, boundBy, kg)}`,
    ),
  ];
}
