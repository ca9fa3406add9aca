import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteRow } from '../../reference/sites.ts';
import { identification, located } from './_side.ts';

const isAnyDigit = ({ endArtery, acral, digit }: SiteRow): boolean =>
  endArtery && acral && digit === undefined;

const ordinal =
  '(?:first|second|third|fourth|fifth|1st|2nd|3rd|4th|5th|index|middle|long|ring|little|small|great|big)';
/** A digit by its name or number, in any text: "3rd toe", "D3", "digit 4", "the thumb". */
const named = new RegExp(
  String.raw`\b(?:thumb|hallux|pinky|forefinger|pointer|${ordinal}\s+(?:(?:left|right)\s+)?(?:finger|toe|digit|ray|nail)|(?:fingers?|toes?|digits?|ray|d)\s*(?:#|no\.?|number)?\s*[1-5iv]+)\b`,
  'i',
);
/** In the site itself a word after a comma is enough: "left finger, 3rd". */
const namedInSite =
  /\b(?:first|second|third|fourth|fifth|1st|2nd|3rd|4th|5th|index|ring|little|great|big|all|multiple|both|several)\b|\b(?:middle|long)(?!\s+phalan)\b/i;

const isNamed = ({ site, landmarks, lesion, remarks = [], keys }: Procedure): boolean =>
  keys.has('same-as') ||
  namedInSite.test(site?.value ?? '') ||
  [site, landmarks, lesion, ...remarks].some((leaf) => named.test(leaf?.value ?? ''));

function unnamed(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { procedure, site, reading } of located(subject))
    if (isAnyDigit(reading.base) && !isNamed(procedure))
      found.push({ at: site, args: { site: reading.base.name } });
  return found;
}

export const check: Check = {
  code: 'site/digit-not-named',
  severity: 'information',
  title: 'A finger or a toe without its name',
  why: 'A hand has five digits, and weeks later nobody can tell which was sampled.',
  sources: [identification],
  messages: {
    main: 'Which {site}? Write its name, such as thumb, index finger or third toe: with numbers alone people count differently.',
  },
  find: unnamed,
};
