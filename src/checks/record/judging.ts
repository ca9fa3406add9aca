import type { Check } from '../check.ts';
import { format } from '../sources.ts';

/** What the runner itself reports; no check finds these. */
export const checkFailed: Check = {
  code: 'record/check-failed',
  severity: 'error',
  title: 'A check could not be finished',
  why: 'A fault in Wheal stopped one check. What that check looks for was not checked in this note, so its silence says nothing.',
  sources: [format],
  messages: {
    main: 'The check {check} could not be finished on this note, by a fault in Wheal. Look at what it covers by hand, and report the fault.',
  },
};

export const moreFindings: Check = {
  code: 'record/more-findings',
  severity: 'warning',
  title: 'More findings than are shown',
  why: 'A note with hundreds of findings is shown with only the most serious of them. The rest appear when those are fixed.',
  sources: [format],
  messages: {
    main: 'The {shown} most serious findings are shown; {more} more are not. Fix these, and the others will show.',
  },
};

/** What people are shown where several keys are missing at once; machines are mentioned each. */
export const notRecorded: Check = {
  code: 'record/not-recorded',
  severity: 'information',
  title: 'Several things worth recording are missing',
  why: 'Each of them has a check of its own, which says why it is worth recording. They are listed together, so that a short note does not fill with findings.',
  sources: [format],
  messages: {
    main: 'Not recorded: {what}. Write what is known, or accept a single one with a reason.',
    here: 'Missing here: {what}.',
    again: 'The same here: {what}.',
  },
};

export const checks: readonly Check[] = [checkFailed, moreFindings, notRecorded];
