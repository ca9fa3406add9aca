import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { format } from '../sources.ts';

/** Letters that many laboratories leave out, since they look like 1 and 0. */
const leftOut: ReadonlySet<string> = new Set(['I', 'O']);

/** Labels further apart are no series: L and R are sides. A choice of our own. */
const mostSkipped = 3;

interface Placed {
  readonly label: Leaf<string>;
  readonly place: number;
}

const letter = /^[a-z]$/i;
const number = /^[1-9]\d?$/;

/** The labels of a note as places of one series of letters or of numbers; undefined where they are none. */
function seriesOf({ note }: Subject): { readonly placed: Placed[]; readonly letters: boolean } | undefined {
  const labels: Leaf<string>[] = [];
  for (const { specimen = [] } of note.procedures ?? [])
    for (const { label, keys } of specimen) {
      if (label?.value !== undefined) labels.push(label);
      else if (!keys.has('not-sent')) return undefined;
    }
  const texts = labels.map(({ text }) => text.trim());
  const letters = texts.every((text) => letter.test(text));
  if (!letters && !texts.every((text) => number.test(text))) return undefined;
  const placed = labels.map((label) => ({
    label,
    place: letters ? label.text.trim().toUpperCase().charCodeAt(0) : Number(label.text),
  }));
  return { placed: placed.sort((a, b) => a.place - b.place), letters };
}

function skipped(subject: Subject): readonly Report[] {
  const series = seriesOf(subject);
  const found: Report[] = [];
  for (const [at, { label, place }] of (series?.placed ?? []).entries()) {
    const before = series?.placed[at - 1];
    if (before === undefined) continue;
    const missing = namesBetween(before.place, place, series?.letters === true);
    if (missing.length === 0 || place - before.place - 1 > mostSkipped) continue;
    const { start, end } = before.label;
    found.push({
      at: label,
      args: { label: label.text, missing: missing.join(', '), before: before.label.text },
      related: [{ start, end, form: 'before', args: {} }],
    });
  }
  return found;
}

function namesBetween(from: number, to: number, letters: boolean): readonly string[] {
  const names: string[] = [];
  for (let place = from + 1; place < to && names.length <= mostSkipped; place++)
    names.push(letters ? String.fromCharCode(place) : String(place));
  return names.filter((name) => !leftOut.has(name));
}

export const check: Check = {
  code: 'specimen/label-skipped',
  severity: 'information',
  title: 'A label left out between two others',
  why: 'Where B is missing between A and C there may be a third container that nobody wrote down.',
  sources: [format],
  messages: {
    main: 'After label {before} comes {label}, and no specimen is labeled {missing}. Count the containers; if there is none, accept this.',
    before: 'the label before it',
  },
  find: skipped,
};
