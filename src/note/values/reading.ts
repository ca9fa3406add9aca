import type { Args, Problem } from '../tree/finding.ts';

/**
 * What a reader makes of a text; a text may be readable and still have a problem. A reader knows no more than its text, so
 * the places of its problems count from there; `Binder` turns them into places in the file.
 */
export interface Reading<T> {
  readonly value: T | undefined;
  readonly problems: readonly Problem[];
}

/** The data of a problem that a spelling fix can fix: what could be instead of the characters marked. */
export interface Respelling {
  readonly typed: string;
  readonly instead: readonly string[];
  /** Whether `instead` is the one right answer. */
  readonly sure: boolean;
  /** Set where `instead` says more than was typed, such as a unit, so that only who was there can choose it. */
  readonly adds?: true;
}

/** Texts longer than this are no quantity; they are refused unread, so that no text costs more than a glance. */
export const longestRead = 200;

export const noProblems: readonly Problem[] = [];

/** A stretch of a text: its characters and where they begin. */
export interface Stretch {
  readonly typed: string;
  readonly from: number;
}

interface Detail {
  readonly form?: string;
  readonly args?: Args;
  readonly instead?: readonly string[];
  readonly sure?: boolean;
  readonly adds?: true;
}

/** A problem in a stretch, with what could be there instead where that is known. */
export function problemAt({ typed, from }: Stretch, code: string, detail: Detail = {}): Problem {
  const { form, args, instead, sure = false, adds } = detail;
  const data: Respelling | undefined =
    instead === undefined || instead.length === 0
      ? undefined
      : { typed, instead, sure, ...(adds && { adds }) };
  return {
    code,
    ...(form === undefined ? {} : { form }),
    args: { typed: shorten(typed), ...args },
    at: { start: from, end: from + typed.length },
    ...(data === undefined ? {} : { data }),
  };
}

export const unread = (problem: Problem): Reading<never> => ({ value: undefined, problems: [problem] });

/** A text without the spaces around it. */
export function trimmed(text: string): Stretch {
  const typed = text.trim();
  return { typed, from: typed === '' ? 0 : text.indexOf(typed) };
}

/** A part of a stretch. */
export function part({ typed, from }: Stretch, start: number, end: number = typed.length): Stretch {
  return { typed: typed.slice(start, end), from: from + start };
}

const shownAtMost = 60;

function shorten(text: string): string {
  return text.length <= shownAtMost ? text : `${text.slice(0, shownAtMost)}…`;
}
