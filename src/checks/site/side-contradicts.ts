import type { Report } from '../../note/tree/finding.ts';
import { onBodyMidline } from '../../note/words/site.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check } from '../check.ts';
import { otherSideIn } from './_other-side.ts';
import { records, type Located, placeOf, ofLocated } from './_side.ts';
import { format } from '../sources.ts';

function twice({ site, reading }: Located): readonly Report[] {
  const [first] = reading.sides;
  const second = reading.contradiction;
  if (first === undefined || second === undefined) return [];
  const related = [{ ...placeOf(site, first), form: 'first', args: { side: first.side } }];
  return [{ at: placeOf(site, second), args: { first: first.side, second: second.side }, related }];
}

function besideMiddle({ site, reading: { base, side, sides } }: Located): readonly Report[] {
  const [word] = sides;
  if (base.side !== 'never' || word === undefined || word.beside) return [];
  if (side !== 'left' && side !== 'right' && side !== 'both') return [];
  const form = side === 'both' ? 'only one' : 'midline';
  return [{ at: placeOf(site, word), form, severity: 'warning', args: { site: base.name, side } }];
}

const ofMidline =
  /\b(?:(?:left|right)\s+of\s+(?:the\s+)?midline|midline,?\s+(?:on|to)\s+the\s+(?:left|right))\b(?!\s+of\b)/i;

function againstLandmarks({ procedure: { landmarks }, site, reading }: Located): readonly Report[] {
  if (landmarks?.value === undefined || !onBodyMidline.has(reading.base.region)) return [];
  if (reading.side !== 'left' && reading.side !== 'right') return [];
  const match = ofMidline.exec(landmarks.value);
  if (match === null) return [];
  const second = /left/i.test(match[0]) ? 'left' : 'right';
  if (second === reading.side) return [];
  const [word] = reading.sides;
  const related =
    word === undefined ? [] : [{ ...placeOf(site, word), form: 'first', args: { side: word.side } }];
  return [
    {
      at: within(landmarks.node, match.index, match.index + match[0].length),
      form: 'landmarks',
      args: { first: reading.side, second },
      related,
    },
  ];
}

/** Other texts of the procedure that name this very place on the other side. */
function againstTexts(one: Located): readonly Report[] {
  const { lesion, question, specimen = [] } = one.procedure;
  const [word] = one.reading.sides;
  const found: Report[] = [];
  if (word === undefined) return found;
  for (const leaf of [lesion, question, ...specimen.map(({ orientation }) => orientation)]) {
    const other = otherSideIn(leaf, one);
    if (other === undefined) continue;
    const { at, first, second } = other;
    const related = [{ ...placeOf(one.site, word), form: 'first', args: { side: word.side } }];
    found.push({ at, form: 'text', severity: 'warning', args: { first, second }, related });
  }
  return found;
}

export const check: Check = {
  code: 'site/side-contradicts',
  severity: 'error',
  title: 'The site contradicts itself about the side',
  why: 'One of the two sides is wrong, and nobody can tell later which. Mixed-up sides are found in many records that are looked through for them.',
  sources: [records, format],
  messages: {
    main: 'The site says {first} and {second}. Ask which it is, and write one.',
    landmarks:
      'The site is on the {first}, the landmarks say {second} of the midline. Ask which it is, and correct the other.',
    text: 'The site is on the {first}, and this names the same place on the {second}. Ask which it is, and correct the other.',
    midline:
      'The {site} is in the midline, so "{side}" does not fit it. Leave it out, or write "{side} of the {site}".',
    'only one': 'There is only one {site}, so it cannot be on both sides. Name the site that was meant.',
    first: 'the side that it says first: {side}',
  },
  find: ofLocated(twice, besideMiddle, againstLandmarks, againstTexts),
};
