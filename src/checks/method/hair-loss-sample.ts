import type { Check } from '../check.ts';
import { hair } from './_hair.ts';
import { ofSuspected } from './_suspected.ts';
import { question } from './_procedure.ts';

export const check: Check = {
  code: 'method/hair-loss-sample',
  severity: 'warning',
  title: 'A sample too small or too shallow for hair loss',
  why: 'Hair is counted in a disc of at least 4 mm that reaches the bulbs in the fat, cut along the hair. Two punches serve both planes of section; of an only one horizontal sections show most.',
  sources: [
    { source: 'hair-handbook', mark: 'Q' },
    { source: 'hair-academic-page', mark: 'Q' },
    { source: 'hair-ijwd-2022', mark: 'Q' },
  ],
  messages: {
    main: 'For {disease} a punch of {size} is too small to count hairs. Use 4 mm or more.',
    shave: 'For {disease} a {method} misses the hair bulbs. Use a punch of 4 mm or more, into the fat.',
    depth:
      'For {disease} the sample should reach the fat, where the bulbs are; this one reached the {depth}.',
    angle:
      'For {disease} the punch goes in along the hair; at right angles to the skin it cuts through the shafts.',
    second:
      'For {disease} sources want two punches, one for horizontal and one for vertical sections. If there was only one, tell the laboratory which sections it is for: horizontal ones show most.',
    question,
  },
  sourcesDiffer: {
    how: 'Laboratories take 4 mm, one would rather have 6 mm. Four are followed.',
    settings: ['severities'],
  },
  ...ofSuspected('hair', hair),
};
