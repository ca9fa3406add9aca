import { formatDilution, formatNumber } from '../note/values/format.ts';
import type { LimitRow } from '../reference/limits.ts';
import { floorTo } from './arithmetic.ts';
import type { Given } from './injections.ts';

/** A strength as people write it: `1%`, `2.5 mg/mL` has `0.25%`. */
export const strengthText = (mgPerMl: number): string => `${formatNumber(mgPerMl / 10)}%`;

/** Epinephrine from µg/mL: `1:100,000`. */
export function epinephrineText(microgramsPerMl: number): string {
  return formatDilution({
    microgramsPerMl,
    ratio: microgramsPerMl > 0 ? Math.round(1_000_000 / microgramsPerMl) : undefined,
  });
}

/** An agent with or without epinephrine, as the table of limits tells them apart. */
export const kindText = (agent: string, epinephrine: boolean): string =>
  epinephrine ? `${agent} with epinephrine` : agent;

/** The product in hand: `lidocaine 1% with epinephrine 1:100,000, buffered`. */
export function productText({ agent, drawnMgPerMl, drawnMicrogramsPerMl, share }: Given): string {
  const epinephrine =
    drawnMicrogramsPerMl > 0 ? ` with epinephrine ${epinephrineText(drawnMicrogramsPerMl)}` : '';
  return `${agent.name} ${strengthText(drawnMgPerMl)}${epinephrine}${share < 1 ? ', buffered' : ''}`;
}

/** mg with at most two decimals. A permitted amount is cut (`floor`), never rounded. */
export const mgText = (mg: number): string => formatNumber(mg, 2);
export const allowedMgText = (mg: number): string => formatNumber(floorTo(mg, 0.01));

/** Percent of a limit: up to one decimal, and never "100%" for what is below or over it. */
export function percentText(fraction: number): string {
  const percent = fraction * 100;
  const rounded = Math.round(percent * 10) / 10;
  const over = fraction > 1 + 1e-9;
  if (over && rounded <= 100) return '100.1';
  if (fraction < 1 - 1e-9 && rounded >= 100) return '99.9';
  return formatNumber(rounded);
}

/** How a limit comes about: `7 mg/kg at 62 kg` or `the cap of 500 mg`. */
export function bindingText(limit: LimitRow, boundBy: 'weight' | 'cap', kg: number | undefined): string {
  return boundBy === 'weight' && limit.mgPerKg !== undefined && kg !== undefined
    ? `${formatNumber(limit.mgPerKg)} mg/kg at ${formatNumber(kg, 2)} kg`
    : `the cap of ${formatNumber(limit.capMg ?? 0)} mg`;
}

/** Micrograms as charts write them: `mcg`, since a handwritten µg is read as mg. */
export const microgramsText = (micrograms: number): string => `${formatNumber(micrograms, 2)} mcg`;

/**
 * Whose limit it is: where the authority has only a cap, the mg/kg are not its own.
 * @param chosen the authority whose limits are the ceiling; where it has none, the lowest that is published counts
 */
export function authorityText(limit: LimitRow, boundBy: 'weight' | 'cap', chosen: string): string {
  if (limit.practice !== undefined) return 'the practice’s own limit';
  if (boundBy === 'weight' && limit.mgPerKgFrom !== undefined)
    return `reference tables, since ${limit.authority} has only a cap`;
  return limit.authority === chosen || limit.ceilingFor?.includes(chosen) === true
    ? limit.authority
    : `${limit.authority}, the lowest published value`;
}

/** The key of the source of the number that binds. */
export const bindingSource = (limit: LimitRow, boundBy: 'weight' | 'cap'): string =>
  boundBy === 'weight' ? (limit.mgPerKgFrom ?? limit.source) : limit.source;
