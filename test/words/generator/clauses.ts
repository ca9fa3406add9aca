import type { Answer, Cue, Group } from './cues.ts';

/** A text of several clauses in which the danger is one; the placeholders are those of the cues. */
export interface Clause extends Pick<Cue, 'text' | 'answer' | 'home'> {
  /** What it is an example of. */
  readonly shape: string;
  readonly groups: readonly Group[];
}

/**
 * Further placeholders: `{o}` a harmless name of the same kind, `{m}` one of another kind, `{z}` another danger of the
 * same kind, `{Y}` a year after `{y}`, `{any}` a list with the danger joined by "or", `{all}` one joined by "and",
 * `{comma}` one of three names with commas only.
 */
const clauses = (
  shape: string,
  answer: Answer,
  groups: Group | readonly Group[],
  texts: string,
  home = false,
): readonly Clause[] =>
  texts
    .split(' | ')
    .map((text) => ({ shape, answer, text, home, groups: typeof groups === 'string' ? [groups] : groups }));

/** The NegEx terms that end the reach of a denial, and what clinic notes use in their place. */
const exceptions: readonly Clause[] = [
  ...clauses(
    'exception',
    'said',
    'allergy',
    'NKDA except {x} | no known drug allergies except {x} | no known allergies other than {x} | no allergies apart from {x} | ' +
      'no allergies aside from {x} | no allergies but {x} | denies all allergies except {x} | NKDA but {x} | NKDA besides {x} | ' +
      'no drug allergies with the exception of {x} | denies allergies other than {x} | none except {x} | none other than {x}',
    true,
  ),
  ...clauses(
    'exception',
    'said',
    'implant',
    'no implants other than {n} | no implants except {x} | no devices apart from {x} | no implants aside from {x} | ' +
      'no implants but {n} | denies implants other than {x} | denies other devices besides {x} | no metal or devices except {x} | ' +
      'no implanted devices with the exception of {n} | no other implants besides {x}',
  ),
  ...clauses(
    'exception',
    'said',
    'implant',
    'none except {n} | none other than {n} | none but {n} | none apart from {x}',
    true,
  ),
  ...clauses(
    'exception',
    'said',
    'condition',
    'no medical problems except {x} | no conditions other than {x} | healthy except for {x} | no PMH aside from {x} | ' +
      'no significant history apart from {x} | denies medical problems other than {x} | healthy other than {x}',
  ),
  ...clauses('exception', 'said', 'condition', 'none except {x} | none other than {x}', true),
  ...clauses(
    'exception',
    'said',
    'medicine',
    'no meds except {x} | no medications other than {x} | takes nothing except {x} | denies meds other than {x} | ' +
      'no daily meds besides {x} | no medications aside from {x} | not on any meds but {x}',
  ),
];

const contrasts: readonly Clause[] = [
  ...clauses(
    'contrast',
    'said',
    'allergy',
    'tolerates {o}, not {x} | tolerated {o} but not {x} | not allergic to {o} but allergic to {x} | ' +
      'no drug allergies, {x} causes {r} | NKDA, {x} causes {r} | No known drug allergies, {x} causes {r} | ' +
      'NKDA but {x} gives {r} | NKDA; allergic to {x} | denies {o} allergy, {x} causes {r} | no {o} allergy, but {x}: {r} | ' +
      'denies {o} allergy; {x} - {r} | tolerates {o}, {x} causes {r} | outgrew {o} allergy, {x} still causes {r} | ' +
      '{o} tolerated, {x} not tolerated | ok with {o}, not with {x} | NKDA. {r} from {x} in {y} | denies {o}, had {r} after {x} {y} | ' +
      '{k} allergic to {o}, patient is allergic to {x} | not {o}, but {x} | no reaction to {o}; {x} gave {r}',
    true,
  ),
  ...clauses(
    'contrast',
    'denied',
    'allergy',
    '{o} only; {x} ok | {o} only; tolerates {x} | allergic to {o}, not {x} | allergic to {o} but not {x} | {o} - {r}; tolerates {x} | ' +
      '{o} causes {r}, {x} tolerated | NKDA; tolerates {x} | no known drug allergies, denies {x} allergy | {o}; not {x} | ' +
      'NKDA, {k} is allergic to {x} | {o} - {r}. No {x} allergy. | {o} ({r}), no {x} allergy | ' +
      'allergic to {o}; {x} tolerated {y}',
    true,
  ),
  ...clauses(
    'contrast',
    'said',
    'implant',
    'denies {o}, {x} {y} | denies {o}; has {n} | denies {o}, has {n} | no {o} but has {n} | no {o}, has {n} | ' +
      'no {o}, {x} {p} | {o} removed {y}, {x} placed {Y} | {o} removed {y}; {x} in place | {k} has {o}, patient has {n} | ' +
      'no longer has {o}, {x} since {y} | never had {o}, {x} {y} | no {o}, s/p {x} {y} | denies {o} however has {n} | ' +
      'denies {o}, {x}: yes | no {o} though {x} {y} | {x} {y}, no {o} | {x}; {o} removed {y} | {x}, denies {o} | ' +
      '{x} {p}, never had {o} | without {o}, with {n}',
  ),
  ...clauses(
    'contrast',
    'denied',
    'implant',
    'has {o}, no {x} | {o} {y}, no {x} | {o} but no {x} | {o} only; no {x} | {o} in place, {x} removed {y} | ' +
      'no implants; {x} removed {y} | none: never had {n} | {o} {y}; denies {x} | {o}; {k} has {n} | ' +
      '{x} removed {y}, {o} {Y} | no {x}, {o} {y} | {o} yes, {x} no | {o}: yes, {x}: no | has {o} but denies {x}',
  ),
  ...clauses(
    'contrast',
    'said',
    'condition',
    'denies {o}, has {x} | denies {o}, {x} since {y} | no {o} but has {x} | {o} resolved, still has {x} | ' +
      'no {o}, {x} dx {y} | {k} has {o}, patient has {x} | FHx: {o}. {x} dx {y} | denies {o}; {x} since {y} | ' +
      'no {o} however {x} {y} | {x}, no {o} | {x}, denies {o} | {x}; {o} resolved {y} | negative for {o}, positive for {x}',
  ),
  ...clauses(
    'contrast',
    'denied',
    'condition',
    '{o}, no {x} | {o} but no {x} | has {o}, denies {x} | {o} since {y}, {x} ruled out {Y} | healthy, no {x} | {o}; {k} has {x} | ' +
      'no {x}, {o} since {y} | {o} yes, {x} no | {o}; FHx: {x} | positive for {o}, negative for {x}',
  ),
  ...clauses(
    'contrast',
    'said',
    'medicine',
    'stopped {o} {y}, takes {x} | stopped {o} {y}, takes {x} daily | off {o}, takes {x} | not on {o}, takes {x} | denies {o}, takes {x} | ' +
      'no {o} but takes {x} | {k} takes {o}, patient takes {x} | {o} stopped {y}; {x} daily | takes {x}, not {o} | ' +
      'switched from {o} to {x} in {y} | {x} daily, no {o} | on {x}, denies {o}',
  ),
  ...clauses(
    'contrast',
    'denied',
    'medicine',
    '{o} daily, no {x} | on {o}, not {x} | takes {o}, not {x} | {o} only; no {x} | stopped {x} {y}, now on {o} | ' +
      '{x} stopped {y}; {o} daily | takes {o}, denies {x} | {o}; {k} takes {x} | not on {x}, takes {o}',
  ),
];

const lists: readonly Clause[] = [
  ...clauses(
    'list',
    'denied',
    'allergy',
    'denies {any} allergy | denies {any} allergies | no {any} allergy | no known {any} allergy | not allergic to {any} | ' +
      'no allergy to {any} | denies allergy to {any} | denies allergies to {all} | neither {x} nor {z} allergy | no {x}/{z} allergy | ' +
      'no {x} allergy, no {z} allergy | no {z} allergy or {x} allergy | denies {x} and {o} allergy | not allergic to {x} or {o} | ' +
      'no known allergies to {any} | negative for {any} allergy | denies allergy to {comma}',
  ),
  ...clauses(
    'list',
    'denied',
    ['implant', 'condition'],
    'denies {any} | no {any} | denies {comma} | neither {x} nor {z} | no {x}/{z} | no {x}, no {z} | never had {any} | ' +
      'denies {all} | no {o} or {x} | no {x} or {o} | negative for {any} | pt denies {any} | no h/o {any} | ' +
      'does not have {any} | without {any} | no {o}, no {x}, no {z}',
  ),
  ...clauses(
    'list',
    'denied',
    'medicine',
    'not on {any} | denies {any} | no {any} | takes neither {x} nor {z} | no {x}, no {z} | not taking {any} | denies {comma} | ' +
      'does not take {any} | no {x}/{z} | no longer on {any} | denies taking {any}',
  ),
  ...clauses(
    'mixed list',
    'unclear',
    ['allergy', 'implant', 'condition', 'medicine'],
    'denies {m}, {n} | no {m}, {n} | negative for {m}, {n} | pt denies {m}, {n} | without {m}, {n}',
  ),
  ...clauses(
    'list',
    'said',
    ['implant', 'condition'],
    '{x} and {o} | {o} and {x} | {o}, {x} | {x}, {o} | {o}, {o}, {x} | {x}/{o} | {x} + {o} | {o} & {x}',
    true,
  ),
  ...clauses(
    'list',
    'said',
    ['allergy', 'medicine'],
    '{x} and {o} | {o} and {x} | {o}, {x} | {x}, {o} | {o}/{x} | {o} + {x}',
    true,
  ),
];

const brackets: readonly Clause[] = [
  ...clauses(
    'bracket',
    'denied',
    'allergy',
    'none (asked about {x} and {o}) | none (no {x} allergy) | no known allergies (asked about {x}, {o})',
    true,
  ),
  ...clauses(
    'bracket',
    'denied',
    ['implant', 'condition', 'medicine'],
    'none (asked about {x} and {o}) | none (asked about {x}) | none (denies {x}) | none (no {x}) | none (asked about {x} and {z})',
    true,
  ),
  ...clauses(
    'bracket',
    'said',
    ['implant', 'condition'],
    '{o} (also {x}) | {o} (has {x} too) | no {o} ({x} since {y})',
  ),
  ...clauses('bracket', 'said', 'implant', '{o} removed {y} ({x} in place) | no {o} ({x} {p})'),
  ...clauses(
    'bracket',
    'said',
    'allergy',
    'NKDA ({x} causes {r}) | {o} (also {x}) | tolerates {o} (not {x})',
    true,
  ),
];

/** Texts whose clauses pull in two directions, or that name several things under one cue. */
export const allClauses: readonly Clause[] = [...exceptions, ...contrasts, ...lists, ...brackets];

/** A key that names the danger, and the value beside it. */
export interface Pair {
  readonly value: string;
  readonly answer: Answer;
  readonly groups: readonly Group[];
}

const pairs = (answer: Answer, groups: readonly Group[], values: string): readonly Pair[] =>
  values.split(' | ').map((value) => ({ value, answer, groups }));

/** Maps of one name and what is said of it, under `allergies` and `implants`. */
export const allPairs: readonly Pair[] = [
  ...pairs(
    'said',
    ['allergy'],
    '{r} | {r} {y} | {r} and swelling | yes | severe {r} | allergic | {r} as a child | not tolerated',
  ),
  ...pairs(
    'denied',
    ['allergy'],
    'tolerated | no | ok | tolerates | not allergic | denies | no allergy | tolerated {y}',
  ),
  ...pairs('unclear', ['allergy'], '? | possible | suspected | unsure | unknown | maybe {r}'),
  ...pairs(
    'said',
    ['implant'],
    '{p} | {y} | yes | {p}, {y} | since {y} | placed {y} | in place | present | replaced {y}',
  ),
  ...pairs(
    'denied',
    ['implant'],
    'no | none | denies | never | removed {y} | explanted | explanted {y} | denied | not present',
  ),
  ...pairs('unclear', ['implant'], '? | possible | suspected | unsure | unknown | turned off | not removed'),
];
