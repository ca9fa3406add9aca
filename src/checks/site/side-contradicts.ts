import type { Leaf } from '../../note/tree/leaf.ts';
import { onBodyMidline, type SideWord } from '../../note/words/site.ts';
import { within } from '../../note/tree/tree.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Report } from '../check.ts';
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

const opposite = { left: /\bright\s+/gi, right: /\bleft\s+/gi } as const;

/** Words under which the other side may well be named: it is not this lesion. */
const elsewhere =
  /\b(?:history|hx|prior|previous|previously|similar|also|another|other|others|second|like|unlike|than|compared?|contralateral|mirror|versus|vs|and|scar|since|after)\b[^.;]*$/i;

/** Other texts of the procedure that name this very place on the other side. */
function againstTexts({ procedure: { lesion, question }, site, reading }: Located): readonly Report[] {
  const { side, base } = reading;
  const [word] = reading.sides;
  const found: Report[] = [];
  if ((side !== 'left' && side !== 'right') || word === undefined) return found;
  for (const leaf of [lesion, question]) {
    const text = leaf?.value;
    if (leaf === undefined || text === undefined) continue;
    const other = side === 'left' ? 'right' : 'left';
    if (!text.toLowerCase().includes(other)) continue;
    const report = namedIn(leaf, text, word, { site, base, side, other });
    if (report !== undefined) found.push(report);
  }
  return found;
}

interface Told {
  readonly site: Leaf<string>;
  readonly base: SiteRow;
  readonly side: 'left' | 'right';
  readonly other: 'left' | 'right';
}

/** The first place of a text that names the site on the other side and is not plainly about another one. */
function namedIn(
  leaf: Leaf<string>,
  text: string,
  word: SideWord,
  { site, base, side, other }: Told,
): Report | undefined {
  const behind = site.text
    .slice(word.to)
    .replace(/[,;(].*$/, '')
    .trim()
    .toLowerCase();
  const names = [behind, base.name].filter((name) => name !== '');
  for (const match of text.matchAll(opposite[side])) {
    const to = match.index + match[0].length;
    const rest = text.slice(to).toLowerCase();
    const name = names.find((one) => rest.startsWith(one));
    if (name === undefined || elsewhere.test(text.slice(0, match.index))) continue;
    const related = [{ ...placeOf(site, word), form: 'first', args: { side: word.side } }];
    const at = within(leaf.node, match.index, to + name.length);
    return { at, form: 'text', severity: 'warning', args: { first: side, second: other }, related };
  }
  return undefined;
}

export const check: Check = {
  code: 'site/side-contradicts',
  severity: 'error',
  title: 'The site contradicts itself about the side',
  why: 'Of two sides one is wrong, and nobody can tell later which. Mixed-up sides are found in many records that are looked through for them.',
  sources: [records, format],
  messages: {
    main: 'The site says {first} and {second}. Ask which it is, and write one.',
    landmarks:
      'The site is on the {first}, the landmarks say {second} of the midline. Ask which it is, and correct the other.',
    text: 'The site is on the {first}, and this names the same place on the {second}. Ask which it is, and correct the other.',
    midline:
      'The {site} lies in the midline, so "{side}" does not fit it. Leave it out, or write "{side} of the {site}".',
    'only one': 'There is only one {site}, so it cannot be on both sides. Name the site that was meant.',
    first: 'the side that it says first: {side}',
  },
  find: ofLocated(twice, besideMiddle, againstLandmarks, againstTexts),
};
