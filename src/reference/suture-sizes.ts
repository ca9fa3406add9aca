import { common } from './marked.ts';
import type { WindowGroup } from './suture-windows.ts';
import type { Sourced } from './types.ts';

/** Sizes of skin stitches that sources give for a site, in zeros: 4 is 4-0. */
export interface SutureSizeRow extends Sourced {
  readonly groups: readonly WindowGroup[];
  readonly thickest: number;
  readonly thinnest: number;
}

const chart = { source: 'suture-chart', mark: 'Q' } as const;

/** The widest that the sources give; the eyebrow of the face has 5-0 too. */
export const sutureSizes: readonly SutureSizeRow[] = [
  { groups: ['face', 'lip', 'ear'], thickest: 5, thinnest: 6, ...chart },
  { groups: ['eyelid'], thickest: 6, thinnest: 7, ...chart },
  { groups: ['scalp'], thickest: 4, thinnest: 5, ...chart },
  {
    groups: ['chest or abdomen', 'back', 'arm', 'leg'],
    thickest: 3,
    thinnest: 5,
    source: 'plastic-surgery-text',
    mark: 'Q',
  },
  { groups: ['hand'], thickest: 5, thinnest: 5, ...chart },
  { groups: ['foot', 'sole'], thickest: 3, thinnest: 5, source: 'family-practice-guide', mark: 'Q' },
  { groups: ['joint extensor', 'joint flexor'], thickest: 4, thinnest: 4, ...chart },
];

/** Open healing of punch wounds: what the evidence covers, and what is usual on the face. */
export const openPunch = {
  anywhere: { mm: 4, source: 'punch-closure-2005', mark: 'Q' },
  face: { mm: 3, ...common },
} as const;
