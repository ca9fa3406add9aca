import { completions } from './completions.ts';
import type { Feature } from './feature.ts';
import { fixes } from './fixes.ts';
import { hints } from './hints.ts';
import { hovers } from './hovers.ts';
import { lenses } from './lenses.ts';
import { definitions, links } from './navigation.ts';
import { status } from './status.ts';
import { folding, outline, selections } from './structure.ts';

export const features: readonly Feature[] = [
  completions,
  hovers,
  fixes,
  hints,
  lenses,
  outline,
  folding,
  selections,
  links,
  definitions,
  status,
];
