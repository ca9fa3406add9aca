import type { Problem } from '../tree/finding.ts';
import { readQuantity } from './quantity.ts';
import {
  longestRead,
  noProblems,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';
import type { Dilution, Mixture } from './values.ts';

const plain: Dilution = { microgramsPerMl: 0, ratio: undefined };

const plainWords: ReadonlySet<string> = new Set(['none', 'no', 'plain', 'without', 'w/o', 'false', 'n', '0']);
const presentWords: ReadonlySet<string> = new Set([
  'yes',
  'y',
  'true',
  'with',
  'epi',
  'epinephrine',
  'adrenaline',
  'adrenalin',
]);

/** `1:100,000`, also without commas, with spaces, `1 in 100,000`, `1/100,000`, `1:100k`. */
const usualDilution = /^1:(\d{1,3}(?:,\d{3})+|[1-9]\d{0,7})$/;
const otherDilution = /^1\s?(?::|\/|\bin\b)\s?(?:(\d{1,3}(?:[,.'\s]\d{3})+)|(\d{1,8})|(\d{1,4})\s?k)$/i;

/** Beyond this epinephrine is thinner than any solution in use, even for large volumes. */
const thinnest = 1_000_000;

/** Reads how much epinephrine a solution holds: 1:100,000 is 1 g in 100,000 mL, so 10 µg/mL. */
export function readDilution(text: string): Reading<Dilution> {
  const usual = usualDilution.exec(text);
  if (usual) return ratioReading({ typed: text, from: 0 }, Number(usual[1]!.replace(/,/g, '')));
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(unreadableDilution(typed));
  const word = typed.typed.toLowerCase();
  if (plainWords.has(word)) return { value: plain, problems: noProblems };
  if (presentWords.has(word)) return unread(problemAt(typed, 'quantity/strength-unsaid'));
  const other = otherDilution.exec(typed.typed);
  if (other) return ratioReading(typed, ratioOf(other));
  const both = ratioAndStrength(typed);
  if (both !== undefined) return both;
  const bare = /^\d{1,3},?000$/.test(word) ? [`1:${typed.typed}`] : [];
  if (bare.length > 0 || !/[a-zµμ%]/.test(word)) return unread(unreadableDilution(typed, bare));
  return strengthReading(text, typed);
}

/** A ratio and the strength that it means, in either order: `1:100,000 (10 mcg/mL)`. */
const ratioFirst = /^(1\s?[:/].*?)\s?(?:[(=,;]|\s)\s?(\d[\d.,]*\s?(?:[µμu]|mc|m)g\s?\/\s?m[lL])\)?$/;
const strengthFirst = /^(\d[\d.,]*\s?(?:[µμu]|mc|m)g\s?\/\s?m[lL])\s?[(=,;]?\s?(1\s?[:/].*?)\)?$/;

/** Undefined where a text does not say the strength in both ways. */
function ratioAndStrength(typed: Stretch): Reading<Dilution> | undefined {
  const first = ratioFirst.exec(typed.typed);
  const [, ratioText, strengthText] = first ?? swapped(strengthFirst.exec(typed.typed));
  if (ratioText === undefined || strengthText === undefined) return undefined;
  const ratio = readDilution(ratioText);
  const strength = readDilution(strengthText);
  if (ratio.value?.ratio === undefined || strength.value === undefined) return undefined;
  const [meant, said] = [ratio.value.microgramsPerMl, strength.value.microgramsPerMl];
  if (Math.abs(meant - said) <= 0.01 * meant) return { value: ratio.value, problems: [] };
  return unread(
    problemAt(typed, 'quantity/unreadable', {
      form: 'strengths',
      args: { ratio: ratioText, strength: strengthText },
    }),
  );
}

const swapped = (match: RegExpExecArray | null): readonly (string | undefined)[] =>
  match === null ? [] : [match[0], match[2], match[1]];

function ratioOf([, grouped, digits, thousands]: RegExpExecArray): number {
  if (grouped !== undefined) return Number(grouped.replace(/\D/g, ''));
  return digits !== undefined ? Number(digits) : Number(thousands) * 1000;
}

function ratioReading(typed: Stretch, ratio: number): Reading<Dilution> {
  if (ratio === 0) return unread(problemAt(typed, 'quantity/not-positive', { form: 'zero' }));
  const value = { microgramsPerMl: 1e6 / ratio, ratio };
  return ratio <= thinnest
    ? { value, problems: noProblems }
    : {
        value,
        problems: [
          problemAt(typed, 'quantity/implausible', { form: 'dilution', args: { bound: '1:1,000,000' } }),
        ],
      };
}

function strengthReading(text: string, typed: Stretch): Reading<Dilution> {
  const { value, problems } = readQuantity(text, 'concentration', 'epinephrine');
  // Its amounts are far below those of an anesthetic: what is implausible there is usual here.
  const own = problems.filter(({ code }) => code !== 'quantity/implausible');
  if (value === undefined)
    return own.some(({ code }) => code === 'quantity/unreadable')
      ? unread(unreadableDilution(typed))
      : { value, problems: own };
  return { value: { microgramsPerMl: microgramsOf(value.amount), ratio: undefined }, problems: own };
}

/** mg as µg, shifted in decimal digits so that 0.0125 mg is 12.5 µg exactly. */
const microgramsOf = (mg: number): number =>
  Number(`${mg}e3`.replace(/e(-\d+)e3$/, (_, power: string) => `e${Number(power) + 3}`));

function unreadableDilution(typed: Stretch, instead: readonly string[] = []): Problem {
  return problemAt(typed, 'quantity/unreadable', {
    args: { wanted: 'a strength of epinephrine', example: '1:100,000, 10 mcg/mL or none' },
    instead,
    adds: true,
  });
}

const unbuffered: Mixture = { buffered: false, parts: undefined };
const mixtureWords: ReadonlyMap<string, Mixture> = new Map([
  ...['no', 'none', 'n', 'false', 'not buffered', 'unbuffered'].map((word): [string, Mixture] => [
    word,
    unbuffered,
  ]),
  ...['yes', 'y', 'true', 'buffered'].map((word): [string, Mixture] => [
    word,
    { buffered: true, parts: undefined },
  ]),
]);

const mixtureForm = /^(\d{1,3}(?:\.\d{1,2})?)\s?(?::|\/|\bto\b)\s?(\d{1,3}(?:\.\d{1,2})?)$/;

/** The strengths in which bicarbonate is sold: how much of it there is makes no difference to the anesthetic. */
export const isBicarbonateStrength = (text: string): boolean => /^(?:8\.4|7\.5|4\.2)\s?%$/.test(text);

/** Words about the bicarbonate beside the parts of a mixture, and its strength. */
const aboutBicarbonate =
  /(?:8\.4|7\.5|4\.2)\s?%|\bw\/|\b(?:with|using|of|in|sodium|bicarb(?:onate)?|nahco3|buffered)\b|[(),]/gi;

/** The parts of a mixture without the strength of the bicarbonate: `9:1 with 8.4% sodium bicarbonate`. */
function withoutStrength(typed: Stretch): Stretch {
  if (!/%|bicarb|nahco3/i.test(typed.typed)) return typed;
  const left = typed.typed.replace(aboutBicarbonate, (words) => ' '.repeat(words.length));
  const { typed: parts, from } = trimmed(left);
  return parts === '' ? { ...typed, typed: 'buffered' } : { typed: parts, from: typed.from + from };
}

/** Reads parts of anesthetic to parts of bicarbonate, 9:1, or whether it is buffered at all. */
export function readMixture(text: string): Reading<Mixture> {
  const whole = trimmed(text);
  if (whole.typed.length > longestRead) return unread(unreadableMixture(whole));
  const typed = withoutStrength(whole);
  const match = mixtureForm.exec(typed.typed);
  if (!match) {
    const value = mixtureWords.get(typed.typed.toLowerCase());
    return value === undefined ? unread(unreadableMixture(whole)) : { value, problems: noProblems };
  }
  const [, first = '', second = ''] = match;
  const anesthetic = Number(first);
  const bicarbonate = Number(second);
  if (anesthetic === 0 || bicarbonate === 0)
    return unread(problemAt(typed, 'quantity/not-positive', { form: 'zero' }));
  if (anesthetic < bicarbonate) {
    const swapped = `${second}:${first}`;
    return unread(
      problemAt(typed, 'quantity/mixture-order', { args: { swapped }, instead: [swapped], adds: true }),
    );
  }
  return { value: { buffered: true, parts: { anesthetic, bicarbonate } }, problems: noProblems };
}

function unreadableMixture(typed: Stretch): Problem {
  return problemAt(typed, 'quantity/unreadable', {
    args: { wanted: 'a mixture of anesthetic and bicarbonate', example: '9:1, yes or no' },
  });
}
