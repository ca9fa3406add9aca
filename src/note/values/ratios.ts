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

/** `1:100,000`, also without commas, with blanks, `1 in 100,000`, `1/100,000`, `1:100k`. */
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
  const bare = /^\d{1,3},?000$/.test(word) ? [`1:${typed.typed}`] : [];
  if (bare.length > 0 || !/[a-zµμ%]/.test(word)) return unread(unreadableDilution(typed, bare));
  return strengthReading(text, typed);
}

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
  // Its amounts lie far below those of an anesthetic: what is implausible there is usual here.
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

/** Reads parts of anesthetic to parts of bicarbonate, 9:1, or whether it is buffered at all. */
export function readMixture(text: string): Reading<Mixture> {
  const typed = trimmed(text);
  const match = mixtureForm.exec(typed.typed);
  if (!match) {
    const value = typed.typed.length > longestRead ? undefined : mixtureWords.get(typed.typed.toLowerCase());
    return value === undefined ? unread(unreadableMixture(typed)) : { value, problems: noProblems };
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
