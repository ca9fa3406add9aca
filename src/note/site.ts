import type { SiteRow } from '../reference/sites.ts';
import type { WordTable } from './word-table.ts';

/** What the words of a site say. */
export interface SiteReading {
  readonly base: SiteRow;
  /** The side as written; undefined where none is. */
  readonly side: 'left' | 'right' | 'both' | 'midline' | undefined;
}

/** Reads a body site from free words: "left upper back". Undefined where no base site is known in it. */
export function readSite(text: string, sites: WordTable<SiteRow>): SiteReading | undefined {
  const base = sites.find(text.replace(/^(left|right)\s+/i, ''));
  if (base === undefined) return undefined;
  const side = /^left\b/i.test(text) ? 'left' : /^right\b/i.test(text) ? 'right' : undefined;
  return { base, side };
}
