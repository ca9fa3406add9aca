import { productOf } from '../../dose/injections.ts';
import type { Report, Severity } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from '../dose/_days.ts';
import { respell } from './_respell.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'title' | 'why' | 'messages' | 'find' | 'alternatives'> & {
  readonly severity?: Severity;
  /** Forms of the finding that are less grave than the rest. */
  readonly milder?: Readonly<Record<string, Severity>>;
};

/** Epinephrine without a strength, but for dictated lines that name a product of the stock, which says it. */
function strengthUnsaid({ dose, problems, tables }: Subject): readonly Report[] {
  const unsaid = problems('quantity/strength-unsaid');
  if (unsaid.length === 0) return [];
  const known = injectionsOf(dose).filter(
    (one) => one.product === undefined && productOf(one, tables) !== undefined,
  );
  return unsaid.filter(({ at }) => !known.some((one) => one.start <= at.start && at.end <= one.end));
}

/** What is wrong with an amount, a time or a ratio as it was typed: nothing is counted that was not read for sure. */
const rows: readonly Row[] = [
  {
    code: 'quantity/unreadable',
    title: 'A value that cannot be read',
    why: 'What cannot be read is not counted and not checked.',
    milder: { yesno: 'warning', length: 'warning', range: 'warning' },
    messages: {
      main: '“{typed}” cannot be read as {wanted}. Write it like this: {example}.',
      number: '“{typed}” cannot be read as one number. Write plain digits with a decimal point, such as 1.5.',
      numbers: '“{typed}” has more than one number. Write the one amount that it was, with its unit.',
      about:
        '“{typed}” is an estimate, and a dose is not calculated from one. Write the one amount that it was.',
      strengths: '“{typed}”: {ratio} is not {strength}. Write the one strength that is on the vial.',
      length: '“{typed}” cannot be read as {wanted}. Write it like this: {example}.',
      range: '“{typed}” has more than one number. Write the one length that it was, with its unit.',
      yesno: '“{typed}” is neither yes nor no. Write yes or no for {key}.',
    },
  },
  {
    code: 'quantity/estimate',
    severity: 'information',
    title: 'A weight that is an estimate',
    why: 'A dose by weight is as sure as the weight. The key tells later readers of the chart that nobody weighed the patient.',
    messages: {
      main: '“{typed}” is an estimate; doses are judged by {read}. Say so beside it: `weighed: estimated`.',
    },
    find: ({ note, problems }) =>
      note.patient?.weighed?.value?.how === 'estimated' ? [] : problems('quantity/estimate'),
  },
  {
    code: 'quantity/not-understood',
    title: 'Words in a quantity that are not understood',
    why: 'Such words can change an amount (each side, times two), so they are never ignored.',
    milder: { word: 'warning' },
    messages: {
      behind:
        '“{typed}” after {read} is not understood, so the value is not used. Write one value here and the rest under remarks.',
      weighed:
        '“{typed}” after {read} is not understood, so the value is not used. Write `weight: {read}`, and how it was learned under `weighed`.',
      amount:
        '“{typed}” is not understood and could change the dose. Write one entry for each injection, with its own volume.',
      word: '“{typed}” is not understood in this line, and is not used. Write it under the key that it belongs to, or under remarks.',
      twice:
        '“{typed}” comes after an amount on the same line, and is not counted. Write one entry for each injection.',
    },
  },
  {
    code: 'quantity/unit-missing',
    title: 'A number without its unit',
    why: 'The same number is another amount in another unit: 62 kg is not 62 lb.',
    milder: { age: 'warning', years: 'information' },
    messages: {
      main: '{typed} has no unit. Write {units} after it.',
      age: '{typed} has no unit and is taken for years. Write years, months, weeks or days after it.',
      years: '{typed} has no unit and is taken for years. Write years after it.',
    },
  },
  {
    code: 'quantity/unknown-unit',
    title: 'A unit that is not known',
    why: 'An amount in a unit that is not known cannot be counted.',
    messages: {
      main: '“{typed}” is not a unit that is known here. Write the amount like this: {example}.',
      near: '“{typed}” is not a unit that is known here. Did you mean {near}?',
      age: '“{unit}” does not say which unit the age is in. Write years, months, weeks or days.',
    },
  },
  {
    code: 'quantity/wrong-unit',
    title: 'A unit of another kind of amount',
    why: 'mg in place of mL, or the other way round, is another dose.',
    messages: {
      main: '{typed} is a unit for {other}, not for {wanted}. Check what was meant and write it like this: {example}.',
    },
    alternatives: { readAs: ['in-ml'] },
  },
  {
    code: 'quantity/decimal-comma',
    title: 'A comma in a number',
    why: 'A comma is a decimal sign to some and parts thousands to others.',
    messages: {
      main: '{typed} has a comma. Write the decimals with a point: {decimal}, if that is what was meant.',
      grouped: '{typed} can mean {decimal} or {whole}. Write the one that was meant, without a comma.',
    },
  },
  {
    code: 'quantity/not-positive',
    title: 'An amount of zero or less',
    why: 'An amount that is recorded must be an amount that can have been given or measured.',
    messages: {
      limit:
        'A limit of {typed} would leave nothing to give, so it is not used. Write the most that may be given.',
      zero: '{typed} is zero. Write what was given or measured.',
      negative: '{typed} is below zero. Write the amount without the minus sign, if that is what was meant.',
    },
  },
  {
    code: 'quantity/implausible',
    severity: 'warning',
    title: 'An amount out of all proportion',
    why: 'A misplaced decimal point or a wrong unit makes an amount ten or a thousand times too large or too small.',
    messages: {
      high: '{typed} is a lot for {key}: more than {bound}. Check the number and the unit.',
      low: '{typed} is very little for {key}: less than {bound}. Check the number and the unit.',
      age: '{typed} is more than {bound}. Check the number and the unit.',
      count: '{typed} is more than {bound}. Check the number.',
      dilution: '{typed} is weaker than {bound}. Check the number of zeros.',
      year: 'The year {year} is far from today. Check its digits.',
    },
    alternatives: { readAs: ['point-moved', 'other-date'] },
  },
  {
    code: 'quantity/strength-unsaid',
    title: 'Epinephrine without its strength',
    why: 'The dose of epinephrine, and whether the higher limit of the anesthetic applies, depend on its strength.',
    messages: {
      main: 'The strength of the epinephrine is not given. Write it as on the vial, such as 1:100,000.',
    },
    find: strengthUnsaid,
  },
  {
    code: 'quantity/mixture-order',
    title: 'A buffered mixture with more bicarbonate than anesthetic',
    why: 'The parts are written anesthetic first; the other way round nearly nothing would be left of the anesthetic.',
    messages: {
      main: '{typed} says more bicarbonate than anesthetic. The anesthetic comes first: write {swapped}.',
    },
  },
];

export const checks: readonly Check[] = rows.map(({ milder = {}, severity = 'error', ...row }) => ({
  ...row,
  severity,
  sources: [format],
  milder,
  fix: respell,
}));
