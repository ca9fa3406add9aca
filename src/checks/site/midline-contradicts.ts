import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { onBodyMidline } from '../../note/words/site.ts';
import { within } from '../../note/tree/tree.ts';
import { ofLocated, placeOf, records, type Located } from './_side.ts';
import { format } from '../sources.ts';

/** A side of what is in the middle itself: "3 cm left of the spine". */
const besideMiddle =
  /\b(left|right|lt|rt)\.?\s+(?:of|from)\s+(?:the\s+)?(?:body\s+)?(?:midline|spine|spinous process|sternum|xiphoid|umbilicus|navel|linea alba|C7|[TL]\d{1,2})\b|\bmidline,?\s+(?:on|to)\s+the\s+(left|right)\b(?!\s+of\b)|(?:^|,\s*)(left|right|lt|rt)(?:\.|\s+side)?(?=\s*(?:[,;]|$))/i;

const sideOf = (word: string): string => (/^r/i.test(word) ? 'right' : 'left');

function beside({ procedure: { landmarks }, site, reading }: Located): readonly Report[] {
  // "Mid back" may mean its height.
  const word = reading.sides.find(({ side }) => side === 'midline');
  if (word === undefined || reading.side !== 'midline' || !onBodyMidline.has(reading.base.region)) return [];
  const match = besideMiddle.exec(landmarks?.value ?? '');
  if (landmarks === undefined || match === null) return [];
  return [
    {
      at: within(landmarks.node, match.index, match.index + match[0].length),
      args: { side: sideOf(match[1] ?? match[2] ?? match[3] ?? '') },
      related: [{ ...placeOf(site, word), form: 'midline', args: {} }],
    },
  ];
}

export const check: Check = {
  code: 'site/midline-contradicts',
  severity: 'warning',
  title: 'A site in the midline, and landmarks beside it',
  why: 'One of the two places is wrong, and nobody can tell later which.',
  sources: [records, format],
  messages: {
    main: 'The site is in the midline, and the landmarks are {side} of it. Ask which it is, and correct the other.',
    midline: 'in the midline',
  },
  find: ofLocated(beside),
};
