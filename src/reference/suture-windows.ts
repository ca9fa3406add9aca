import type { Sourced } from './types.ts';

/** Days from the procedure to suture removal, both ends included. */
export interface SutureWindowRow extends Sourced {
  readonly group: string;
  readonly from: number;
  readonly to: number;
}

export const sutureWindows: readonly SutureWindowRow[] = [];
