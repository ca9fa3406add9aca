import type { Reading } from './reading.ts';
import type { Quantity, Unit } from './values.ts';

interface UnitRow {
  readonly base: Unit;
  readonly factor: number;
}

export type Kind = 'volume' | 'mass' | 'concentration';

const units: Readonly<Record<Kind, ReadonlyMap<string, UnitRow>>> = {
  volume: new Map([['ml', { base: 'mL', factor: 1 }]]),
  mass: new Map([
    ['kg', { base: 'kg', factor: 1 }],
    ['lb', { base: 'kg', factor: 0.45359237 }],
  ]),
  concentration: new Map([
    ['%', { base: 'mg/mL', factor: 10 }],
    ['mg/ml', { base: 'mg/mL', factor: 1 }],
  ]),
};

/** Reads an amount with its unit. */
export function readQuantity(text: string, kind: Kind): Reading<Quantity> {
  const match = /^(\d+(?:\.\d+)?)\s*(\D*)$/.exec(text.trim());
  const unit = match && units[kind].get(match[2]!.toLowerCase());
  if (!match || !unit) return { value: undefined, remarks: [{ code: 'quantity/unreadable' }] };
  const typedAmount = Number(match[1]);
  return {
    value: { amount: typedAmount * unit.factor, unit: unit.base, typedAmount, typedUnit: match[2]! },
    remarks: [],
  };
}
