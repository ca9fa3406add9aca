/** The kinds of amount that a note holds, and the units in which people type them. */

import type { Unit } from './values.ts';

export type Kind = 'volume' | 'weight' | 'amount' | 'concentration' | 'length' | 'area';

export interface UnitRow {
  readonly kind: Kind;
  /** The unit as it is written by preference. */
  readonly name: string;
  /** How many powers of ten make it the base unit of its kind; none where it is that unit. */
  readonly power?: number;
  /** The factor to the base unit where that is no power of ten. */
  readonly factor?: number;
  readonly words: readonly string[];
  /** What to write instead of a unit that is known to be misread. */
  readonly instead?: string;
}

export interface KindRow {
  readonly base: Unit;
  /** What a person calls such an amount. */
  readonly title: string;
  readonly example: string;
  /** The units to offer where none was typed. */
  readonly usual: readonly string[];
  /** Below and above these the number is questioned, in the base unit. */
  readonly low: number;
  readonly high: number;
  /** Whether none is a possible amount: a margin of 0 mm is, a volume of 0 mL is not. */
  readonly zero: boolean;
  /** Whether it is a dose, so that 1.0 can be misread as 10; a size may show how exactly it was measured. */
  readonly dose: boolean;
}

/** Bounds of what is plausible are common practice without a source: they only ask for a second look. */
export const kinds: Readonly<Record<Kind, KindRow>> = {
  volume: {
    base: 'mL',
    title: 'a volume',
    example: '1.5 mL',
    usual: ['mL'],
    low: 0.01,
    high: 100,
    zero: false,
    dose: true,
  },
  weight: {
    base: 'kg',
    title: 'a body weight',
    example: '62 kg or 137 lb',
    usual: ['kg', 'lb'],
    low: 0.4,
    high: 400,
    zero: false,
    dose: false,
  },
  amount: {
    base: 'g',
    title: 'an amount of cream',
    example: '2 g',
    usual: ['g'],
    low: 0.05,
    high: 100,
    zero: false,
    dose: true,
  },
  concentration: {
    base: 'mg/mL',
    title: 'a strength',
    example: '1% or 10 mg/mL',
    usual: ['%', 'mg/mL'],
    low: 0.1,
    high: 200,
    zero: false,
    dose: true,
  },
  length: {
    base: 'mm',
    title: 'a length',
    example: '4 mm',
    usual: ['mm', 'cm'],
    low: 0.1,
    high: 300,
    zero: true,
    dose: false,
  },
  area: {
    base: 'cm2',
    title: 'an area',
    example: '20 cm2',
    usual: ['cm2'],
    low: 0.05,
    high: 3000,
    zero: false,
    dose: false,
  },
};

/** International avoirdupois pound in kilograms, exact by definition. */
const kilogramsPerPound = 0.45359237;
/** International inch in millimeters, exact by definition. */
const millimetersPerInch = 25.4;

export const unitRows: readonly UnitRow[] = [
  {
    kind: 'volume',
    name: 'mL',
    words: ['ml', 'mls', 'milliliter', 'milliliters', 'millilitre', 'millilitres', 'cm3'],
  },
  { kind: 'volume', name: 'cc', words: ['cc', 'ccs'], instead: 'mL' },
  { kind: 'volume', name: 'L', power: 3, words: ['l', 'liter', 'liters', 'litre', 'litres'] },
  {
    kind: 'volume',
    name: 'µL',
    power: -3,
    words: ['µl', 'ul', 'microliter', 'microliters', 'microlitre', 'microlitres'],
  },
  {
    kind: 'weight',
    name: 'kg',
    words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  },
  { kind: 'weight', name: 'lb', factor: kilogramsPerPound, words: ['lb', 'lbs', 'pound', 'pounds'] },
  { kind: 'weight', name: 'oz', factor: kilogramsPerPound / 16, words: ['oz', 'ounce', 'ounces'] },
  { kind: 'weight', name: 'st', factor: kilogramsPerPound * 14, words: ['st', 'stone', 'stones'] },
  {
    kind: 'weight',
    name: 'g',
    power: -3,
    words: ['g', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
  },
  {
    kind: 'amount',
    name: 'g',
    words: ['g', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
  },
  { kind: 'amount', name: 'mg', power: -3, words: ['mg', 'mgs', 'milligram', 'milligrams'] },
  { kind: 'concentration', name: '%', power: 1, words: ['%', 'percent', 'per cent', 'pct', '% w/v', '%w/v'] },
  {
    kind: 'concentration',
    name: 'mg/mL',
    words: [
      'mg/ml',
      'mg/1ml',
      'mg/milliliter',
      'mg/millilitre',
      'milligrams/milliliter',
      'milligrams/millilitre',
    ],
  },
  { kind: 'concentration', name: 'mg/cc', words: ['mg/cc'], instead: 'mg/mL' },
  {
    kind: 'concentration',
    name: 'mcg/mL',
    power: -3,
    words: ['µg/ml', 'ug/ml', 'mcg/ml', 'micrograms/milliliter', 'micrograms/millilitre', 'mg/l'],
  },
  { kind: 'concentration', name: 'g/dL', power: 1, words: ['g/dl', 'g/100ml'] },
  { kind: 'concentration', name: 'g/mL', power: 3, words: ['g/ml'] },
  { kind: 'concentration', name: 'g/L', words: ['g/l'] },
  {
    kind: 'length',
    name: 'mm',
    words: ['mm', 'mms', 'millimeter', 'millimeters', 'millimetre', 'millimetres'],
  },
  {
    kind: 'length',
    name: 'cm',
    power: 1,
    words: ['cm', 'cms', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
  },
  { kind: 'length', name: 'm', power: 3, words: ['m', 'meter', 'meters', 'metre', 'metres'] },
  {
    kind: 'length',
    name: 'in',
    factor: millimetersPerInch,
    words: ['in', 'inch', 'inches', '"', '″', '”'],
  },
  {
    kind: 'length',
    name: 'ft',
    factor: millimetersPerInch * 12,
    words: ['ft', 'foot', 'feet', "'", '′', '’'],
  },
  {
    kind: 'area',
    name: 'cm2',
    words: ['cm2', 'sq cm', 'cm sq', 'square cm', 'square centimeters', 'square centimetres'],
  },
  { kind: 'area', name: 'mm2', power: -2, words: ['mm2', 'sq mm', 'square mm'] },
  {
    kind: 'area',
    name: 'in2',
    factor: (millimetersPerInch / 10) ** 2,
    words: ['in2', 'sq in', 'square inches'],
  },
];

/** The units of each kind by the words for them, in the form that `plainUnit` gives, and as the trade spells them. */
const byKind: ReadonlyMap<Kind, ReadonlyMap<string, UnitRow>> = new Map(
  (Object.keys(kinds) as Kind[]).map((kind) => [
    kind,
    new Map(
      unitRows
        .filter((row) => row.kind === kind)
        .flatMap((row) => [row.name, ...row.words].map((word): [string, UnitRow] => [word, row])),
    ),
  ]),
);

/** The unit of a kind that a word means. Case and spaces around a slash don't count. */
export function unitOf(kind: Kind, word: string): UnitRow | undefined {
  const units = byKind.get(kind);
  return units?.get(word) ?? units?.get(plainUnit(word));
}

/** Every word for a unit of a kind, in plain form and as the trade spells it. */
export const unitWords = (kind: Kind): Iterable<string> => byKind.get(kind)?.keys() ?? [];

/** A unit of any other kind that a word means. */
export function unitOfAnotherKind(kind: Kind, word: string): UnitRow | undefined {
  for (const other of byKind.keys()) {
    const unit = other === kind ? undefined : unitOf(other, word);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

/** An amount in the base unit. Powers of ten are shifted in the decimal digits, so that 1.1 cm is 11 mm exactly. */
export function toBase(digits: string, { power, factor }: UnitRow): number {
  if (factor !== undefined) return Number(digits) * factor;
  return power === undefined || power === 0 ? Number(digits) : Number(`${digits}e${power}`);
}

/** The form in which the words for units are compared. */
export function plainUnit(word: string): string {
  return word
    .toLowerCase()
    .replace(/μ/g, 'µ')
    .replace(/\^/g, '')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/ ?\/ ?| per (?!cent)/g, '/')
    .replace(/(\d) (?=[a-z])/g, '$1')
    .replace(/\.$/, '');
}
