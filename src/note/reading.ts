import type { Args } from './finding.ts';

/** A fault or remark about a text, at characters `from` to `to` of it. */
export interface Remark {
  readonly code: string;
  readonly form?: string;
  readonly args?: Args;
  readonly from?: number;
  readonly to?: number;
  readonly data?: unknown;
}

/** What a reader makes of a text; a text may be readable and still deserve a remark. */
export interface Reading<T> {
  readonly value: T | undefined;
  readonly remarks: readonly Remark[];
}
