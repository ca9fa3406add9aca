import type { Problem } from '../tree/finding.ts';
import { part, problemAt, type Stretch } from './reading.ts';

/** A typed number: its decimal digits (`0.5`), or undefined where it can't be told, and what there is to say of it. */
export interface NumberReading {
  readonly digits: string | undefined;
  readonly problem?: Problem;
}

/** The digits and separators with which a text begins; what they mean is for `readNumber` to say. */
const numberHead = /^(?:(?:\d+\s?)?[½¼¾](?!\d)|\d[\d.,]*(?<=[\d.])|[.,]\d+)/;

const plainNumber = /^(?:0|[1-9]\d*)(?:\.\d+)?$/;
/** A half or a quarter in one sign, with whole ones before it or without. */
const withFraction = /^(\d*)\s?([½¼¾])$/;
const fractions: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };
const grouped = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;

/**
 * Reads digits as a decimal number. A comma is not guessed at: `1,5` and `1,500` are answered with what they could
 * mean. Only several groups of three (`1,000,000`) or groups before a point are beyond doubt.
 */
export function readNumber(typed: Stretch): NumberReading {
  const text = typed.typed;
  if (plainNumber.test(text)) return { digits: text };
  if (/^\.\d+$/.test(text)) {
    const instead = `0${text}`;
    return {
      digits: instead,
      problem: problemAt(typed, 'quantity/leading-zero', {
        instead: [instead],
        sure: true,
        args: { instead },
      }),
    };
  }
  const [, whole = '', sign = ''] = withFraction.exec(text) ?? [];
  if (sign !== '') return { digits: String(Number(whole) + (fractions[sign] ?? 0)) };
  if (grouped.test(text) && /,.*[,.]/.test(text)) return { digits: text.replace(/,/g, '') };
  if (/^\d*,\d+$/.test(text)) return { digits: undefined, problem: commaProblem(typed) };
  return { digits: undefined, problem: problemAt(typed, 'quantity/unreadable', { form: 'number' }) };
}

function commaProblem(typed: Stretch): Problem {
  const [whole = '', decimals = ''] = typed.typed.split(',');
  const decimal = `${whole === '' ? '0' : whole}.${decimals}`.replace(/0+$/, '').replace(/\.$/, '');
  return grouped.test(typed.typed)
    ? problemAt(typed, 'quantity/decimal-comma', {
        form: 'grouped',
        instead: [whole + decimals, decimal],
        adds: true,
        args: { decimal, whole: whole + decimals },
      })
    : problemAt(typed, 'quantity/decimal-comma', { instead: [decimal], adds: true, args: { decimal } });
}

/** The problem of a dose with a zero after its decimals, which can be read as ten times as much. */
export function trailingZero(typed: Stretch): Problem | undefined {
  const digits = typed.typed;
  if (!digits.endsWith('0') || !digits.includes('.')) return undefined;
  const instead = digits.replace(/\.?0+$/, '');
  return problemAt(typed, 'quantity/trailing-zero', {
    instead: [instead],
    sure: true,
    args: { instead },
  });
}

/** The number with which a stretch begins, and the rest after it and its spaces; undefined where there is none. */
export function splitNumber(stretch: Stretch): { number: Stretch; rest: Stretch } | undefined {
  const head = numberHead.exec(stretch.typed)?.[0];
  if (head === undefined) return undefined;
  const behind = stretch.typed.slice(head.length);
  const blank = behind.length - behind.trimStart().length;
  return { number: part(stretch, 0, head.length), rest: part(stretch, head.length + blank) };
}
