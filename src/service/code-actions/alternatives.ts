import type { AlternativeName } from '../../checks/check.ts';
import { shareOf } from '../../checks/dose/_days.ts';
import { addDays, daysBetween } from '../../note/values/days.ts';
import { sutureRemoval } from '../../followup/sutures.ts';
import { isClosed } from '../../followup/working-days.ts';
import { readMoment } from '../../note/values/dates.ts';
import { formatNumber, formatThousands } from '../../note/values/format.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { readSite } from '../../note/words/site.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { weekdayName } from '../analysis/days.ts';

/** The value that a finding is about, as it was typed. */
export interface Typed {
  readonly analysis: Analysis;
  readonly at: Range;
  /** The characters there, without quotes. */
  readonly typed: string;
  /** The whole value that they are in. */
  readonly whole: string;
}

/** A text that may have been meant instead. */
export interface Alternative {
  readonly text: string;
  /** What a title shows of it; the text itself where nothing is named. */
  readonly shown?: string;
}

/** Other readings of what was typed: never a value that only fits. */
type Reader = (typed: Typed) => readonly Alternative[];

const texts = (...found: readonly string[]): readonly Alternative[] => found.map((text) => ({ text }));

const wholeNumber = /^([1-9]\d*)(?=\s*[a-zµμ%])/i;

/** The same digits with a decimal point one place from the right: `35 mL` as `3.5 mL`. Where one was typed, none slipped. */
const tenth: Reader = ({ typed }) => {
  const digits = wholeNumber.exec(typed)?.[1];
  if (digits === undefined) return [];
  return texts(formatNumber(Number(digits) / 10) + typed.slice(digits.length));
};

/** The same digits with the decimal point one place further right: `0.02 mL` as `0.2 mL`. */
const tenfold: Reader = ({ typed }) => {
  const digits = /^\d*\.\d+/.exec(typed)?.[0];
  if (digits === undefined) return [];
  return texts(formatNumber(Number(digits) * 10) + typed.slice(digits.length));
};

/** The decimal point one place to the left or right. */
const pointMoved: Reader = (value) => [...tenth(value), ...tenfold(value)];

/**
 * The decimal point may be missing where an injection is over the limit all by itself, not where only the sum is.
 */
const tenthOfOneDose: Reader = (value) => {
  const { dose } = value.analysis.judgement;
  const days = dose === null ? [] : [dose, ...dose.later];
  const alone = days.some((day) =>
    day.given.some((one) => one.at.start === value.at.start && shareOf(one, day) > 1),
  );
  return alone ? tenth(value) : [];
};

/** More than this many mL are hardly given at one site, so the unit was not all that slipped. Common practice, no source. */
const mostMl = 10;

/** The number before a wrong unit, as mL: `2 mg` as `2 mL`. */
const inMl: Reader = ({ whole, typed }) => {
  const amount = /^(\d+(?:\.\d+)?)\s*/.exec(whole);
  if (amount === null || whole.slice(amount[0].length) !== typed || Number(amount[1]) > mostMl) return [];
  return [{ text: 'mL', shown: `${amount[1] ?? ''} mL` }];
};

/** A ratio with one zero more: `1:10,000` as `1:100,000`. */
const weaker: Reader = ({ typed }) => {
  const parts = /^1\s*:\s*(\d[\d,]*)$/.exec(typed)?.[1]?.replaceAll(',', '');
  return parts === undefined ? [] : texts(`1:${formatThousands(Number(parts) * 10)}`);
};

const isoDate = /^(\d{4})-(\d\d)-(\d\d)/;

/**
 * The same day of another year that the note or the clock names, the same in another century, or day and month swapped.
 * Only what is planned may be in the future.
 */
const redated: Reader = ({ analysis, at, typed }) => {
  const match = isoDate.exec(typed);
  if (match === null) return [];
  const [date, year = '', month = '', day = ''] = match;
  const { today } = analysis.context;
  const ahead = today === undefined || plannedAt(analysis, at) !== undefined;
  const dates = [
    ...yearsAround(analysis).map((one) => `${one}-${month}-${day}`),
    ...[-100, 100].map((by) => `${String(Number(year) + by).padStart(4, '0')}-${month}-${day}`),
    `${year}-${day}-${month}`,
  ];
  return [...new Set(dates)]
    .filter((one) => one !== date && isDate(one) && (ahead || one <= today))
    .map((one) => ({ text: one + typed.slice(date.length) }));
};

const isDate = (text: string): boolean => {
  const { value, problems } = readMoment(text);
  return value !== undefined && problems.length === 0;
};

/** The procedure whose stitches are planned to come out on the day at a place. */
const plannedAt = ({ note }: Analysis, { start }: Range): Procedure | undefined =>
  note?.procedures?.find(({ suturesDue }) => suturesDue?.start === start);

/** The years of the visit and of today, and the ones beside them: a wrong year is most often the last one or the next. */
function yearsAround({ note, context: { today } }: Analysis): readonly number[] {
  const dates = [note?.visit?.value?.date, today].filter((date) => date !== undefined);
  const years = dates.map((date) => Number(date.slice(0, 4)));
  return [...new Set(years.flatMap((year) => [year, year - 1, year + 1]))];
}

/**
 * For stitches that are to come out: the working days of their window that are nearest to the day that was typed, one
 * after it and one before. They are plans and no facts; where the stitches came out already nothing is proposed.
 */
const workingDay: Reader = ({ analysis, at, typed }) => {
  const date = isoDate.exec(typed)?.[0];
  const procedure = plannedAt(analysis, at);
  const window = procedure && windowOf(analysis, procedure);
  if (date === undefined || window === undefined) return [];
  const { closedDays } = analysis.context.tables;
  const open = daysOf(window).filter((day) => !isClosed(day, closedDays));
  return [open.find((day) => day > date), open.findLast((day) => day < date)].flatMap((day) =>
    day === undefined ? [] : [{ text: day, shown: `${day}, ${weekdayName(day)}` }],
  );
};

interface Days {
  readonly from: IsoDate;
  readonly to: IsoDate;
}

function windowOf({ note, context: { tables } }: Analysis, procedure: Procedure): Days | undefined {
  const site = procedure.site?.value;
  const reading = site === undefined ? undefined : readSite(site, tables.sites);
  const window = note === null ? undefined : sutureRemoval(note, procedure, reading, tables);
  return window?.kind === 'window' ? window : undefined;
}

/** No window is longer; a practice file could name any number of days. */
const mostDays = 60;

const daysOf = ({ from, to }: Days): readonly IsoDate[] =>
  Array.from({ length: Math.min(daysBetween(from, to), mostDays) + 1 }, (_, day) => addDays(from, day));

const readers: Readonly<Record<AlternativeName, Reader>> = {
  tenth,
  'tenth-of-one-dose': tenthOfOneDose,
  'point-moved': pointMoved,
  'in-ml': inMl,
  'zero-more': weaker,
  'other-date': redated,
  'working-day': workingDay,
};

/** What the alternative of a name makes of what was typed. */
export const alternativesOf = (name: AlternativeName, typed: Typed): readonly Alternative[] =>
  readers[name](typed);
