import type { Kind } from './things.ts';

/**
 * What the text says of the danger: it says it, surely denies it, or leaves it open.
 * A text that leaves it open must be reported as one that says it is.
 */
export type Answer = 'said' | 'denied' | 'unclear';

/** Kinds of danger that are spoken of in the same words. */
export type Group = 'allergy' | 'implant' | 'condition' | 'medicine';

export const groupOf = (kind: Kind): Group =>
  kind === 'anesthetic' || kind === 'allergen' ? 'allergy' : kind;

/**
 * Where the word is from: `negex`, the triggers of NegEx (Chapman 2001, list of version 1.2);
 * `context`, those that ConText adds (Harkema 2009); `clinic`, the short forms of US nursing notes.
 */
export type Source = 'negex' | 'context' | 'clinic';

export interface Cue {
  /**
   * The wording. `{x}` is the name of the danger, `{n}` the name as something that one has ("lidocaine allergy",
   * "a pacemaker"), `{r}` a reaction, `{y}` a year, `{k}` a relative, `{p}` a place of the body.
   */
  readonly text: string;
  readonly answer: Answer;
  readonly groups: readonly Group[];
  readonly source: Source;
  /** Whether it is said only of a row that lasts, or only of one that may end. */
  readonly lasting?: boolean;
  /** Whether it is said only of tumors. */
  readonly tumor?: boolean;
  /** Whether it means this only under the key that asks for such things. */
  readonly home?: boolean;
  /** Whether no word of it denies, so that its words say the danger in any order. */
  readonly plain?: boolean;
}

type Traits = Omit<Cue, 'text' | 'answer' | 'groups' | 'source'>;

const had: readonly Group[] = ['allergy', 'implant', 'condition'];
const every: readonly Group[] = [...had, 'medicine'];

const cues = (
  answer: Answer,
  source: Source,
  groups: readonly Group[],
  texts: string,
  traits: Traits = {},
): readonly Cue[] => texts.split(' | ').map((text) => ({ text, answer, source, groups, ...traits }));

const plain = { plain: true } as const;
const listed = { plain: true, home: true } as const;

const said: readonly Cue[] = [
  ...cues(
    'said',
    'clinic',
    had,
    'has {n} | pt has {n} | patient has {n} | pt w/ {n} | known {n} | {n}: yes | {n} - yes | reports {n} | ' +
      'pt reports {n} | pt states has {n} | states {n} | endorses {n} | admits {n} | confirms {n} | {n} confirmed {y} | ' +
      '{n} since {y} | {n} per chart | {n}, documented {y} | wife reports {n} | per daughter, pt has {n} | ' +
      'mother states patient has {n} | husband says patient has {n} | pt called back, has {n} | now reports {n} | ' +
      'on arrival pt mentioned {n}',
    plain,
  ),
  ...cues('said', 'context', had, 'known to have {n} | pt presents with {n} | {n} noted today', plain),
  ...cues('said', 'negex', had, 'still has {n} | positive for {n}', plain),
  ...cues('said', 'negex', had, 'no change in known {n}'),
  ...cues('said', 'clinic', had, 'forgot to mention {n} | failed to mention {n}'),
  ...cues('said', 'clinic', ['allergy', 'condition'], 'h/o {n} | hx {n} | hx of {n} | PMH: {n} | PMHx {n}', {
    ...plain,
    lasting: true,
  }),
  ...cues('said', 'context', ['allergy', 'condition'], 'history of {n} | pre-existing {n}', {
    ...plain,
    lasting: true,
  }),
];

const allergic: readonly Cue[] = [
  ...cues(
    'said',
    'clinic',
    ['allergy'],
    '{x} | {x} - {r} | {x} ({r}) | {x}: {r} | {x} {r} | {x} ({r} {y})',
    listed,
  ),
  ...cues(
    'said',
    'clinic',
    ['allergy'],
    '{r} from {x} | {r} with {x} | {r} after {x} | gets {r} from {x} | had {r} after {x} in {y} | c/o {r} after {x} | ' +
      'avoid {x}, {r} | {x} gave pt {r} | developed {r} w/ {x} {y} | rxn to {x} {y} | ADR to {x} | reaction to {x}',
    listed,
  ),
  ...cues(
    'said',
    'clinic',
    ['allergy'],
    'allergic to {x} | pt is allergic to {x} | {x} causes {r} | states allergic to {x} | reports {x} allergy ({r}) | ' +
      'allergic to {x} ({r}) | allergy: {x} | {x} allergy {y} | severe {x} allergy | per mother, patient is allergic to {x} | ' +
      'wife reports pt allergic to {x} | anaphylaxis to {x} {y} | still allergic to {x}',
    plain,
  ),
  ...cues(
    'said',
    'clinic',
    ['allergy'],
    'does not tolerate {x} | cannot tolerate {x} | did not tolerate {x}',
    { home: true },
  ),
  ...cues('said', 'negex', ['allergy'], '{x} allergy has not resolved | {x} allergy, not resolved'),
];

const implanted: readonly Cue[] = [
  ...cues('said', 'clinic', ['implant'], '{x}', listed),
  ...cues(
    'said',
    'clinic',
    ['implant'],
    '{x} {y} | {x} in place | {x} placed {y} | {x} implanted {y} | {x} in {p} | {x} {p} | s/p {x} placement {y} | ' +
      's/p {x} {y} | {x} present | {x} replaced {y} | {x} checked {y} | {x} interrogated {y} | {x} still in place | ' +
      'wife says he has {n} | {x} upgraded {y}',
    plain,
  ),
  ...cues('said', 'context', ['implant'], 'status post {x} placement {y}', plain),
  ...cues(
    'said',
    'clinic',
    ['implant'],
    '{x} not removed | {x} was never removed | {x} checked {y}, no issues | {x} interrogated {y}, no problems | ' +
      'old {x} removed {y}, new one placed same day | {x} explanted {y} and reimplanted the same year',
  ),
];

const sick: readonly Cue[] = [
  ...cues('said', 'clinic', ['condition'], '{x}', listed),
  ...cues(
    'said',
    'clinic',
    ['condition'],
    '{x} dx {y} | diagnosed with {x} in {y} | severe {x} | {x} followed by specialist | {x} confirmed by labs | ' +
      'c/o {x} | {x} untreated | lives with {x}',
    plain,
  ),
  ...cues('said', 'negex', ['condition'], '{x} not resolved'),
];

const taken: readonly Cue[] = [
  ...cues('said', 'clinic', ['medicine'], '{x}', listed),
  ...cues(
    'said',
    'clinic',
    ['medicine'],
    'on {x} | takes {x} | pt takes {x} | taking {x} | {x} daily | {x} BID | continues {x} | started {x} {y} | ' +
      'on {x} since {y} | reports taking {x} | current meds: {x} | pt states takes {x} | {x} this morning | ' +
      'per wife, takes {x} | endorses taking {x} | {x} qHS | {x}: yes',
    plain,
  ),
  ...cues(
    'said',
    'clinic',
    ['medicine'],
    '{x} not held | {x} not stopped | did not stop {x} | has not stopped {x}',
  ),
];

const open: readonly Cue[] = [
  ...cues(
    'unclear',
    'clinic',
    every,
    '?{n} | ? {n} | {n}? | possible {n} | suspected {n} | questionable {n} | probable {n} | likely {n} | maybe {n} | ' +
      'may have {n} | might have {n} | unsure about {n} | unsure if {n} | not sure about {n} | {n} unconfirmed | ' +
      '{n} not confirmed | thinks may have {n} | {n}: unsure | {n}: unknown | {n} (?)',
  ),
  ...cues(
    'unclear',
    'negex',
    had,
    'r/o {n} | rule out {n} | {n} not ruled out | {n} has not been ruled out | did not rule out {n} | ' +
      '{n} should be ruled out | unlikely {n} | {n} unlikely | not certain if {n} | not certain whether {n} | ' +
      'evaluate for {n} | test for {n} | not necessarily {n} | cannot exclude {n}',
  ),
  ...cues(
    'unclear',
    'clinic',
    ['allergy', 'condition'],
    'concern for {n} | workup pending for {n} | {n}, workup pending',
  ),
  ...cues('unclear', 'clinic', had, 'did not mention {n} before'),
  ...cues('unclear', 'context', had, 'prior {n} | previous {n}'),
  ...cues('unclear', 'clinic', ['implant', 'condition'], 'h/o {n} | hx {n} | history of {n} | had {n}', {
    lasting: false,
  }),
  ...cues(
    'unclear',
    'clinic',
    ['allergy'],
    'tolerates {x} but gets {r} | no {x} please | patient and brother both have {x} allergy',
    {
      home: true,
    },
  ),
  ...cues(
    'unclear',
    'clinic',
    ['implant'],
    'no issues with {x} | no problems with {x} | {x} turned off | {x} deactivated | {x} removal planned | ' +
      'scheduled for {x} removal | {x} not yet removed | {x} to be removed',
  ),
  ...cues('unclear', 'clinic', ['condition'], 'no treatment for {x} | {x}, no meds | no new symptoms of {x}'),
  ...cues(
    'unclear',
    'clinic',
    ['medicine'],
    'held {x} today | {x} held this morning | never misses {x} | ran out of {x} yesterday',
  ),
];

const denied: readonly Cue[] = [
  ...cues(
    'denied',
    'negex',
    had,
    'denies {n} | denied {n} | pt denies {n} | pt denying {n} | patient denies any {n} | no evidence of {n} | ' +
      'negative for {n} | without {n} | without evidence of {n} | with no {n} | never had {n} | not known to have {n} | does not have {n} | ' +
      'pt has not had {n}',
  ),
  ...cues(
    'denied',
    'clinic',
    had,
    'denies h/o {n} | denies history of {n} | denies having {n} | no h/o {n} | no hx of {n} | no history of {n} | ' +
      "no known {n} | neg for {n} | w/o {n} | has no {n} | doesn’t have {n} | doesn't have {n} | pt has no {n} | " +
      'pt states no {n} | pt reports no {n} | per wife, no {n} | {n}: no | {n} - no | {n}: none | {n}: denies | ' +
      '{n}: denied | {n} denied | {n}: negative | {n}? No. | {n}: never',
  ),
  ...cues('denied', 'negex', ['implant', 'condition'], 'no {x} | pt has no {x} | {x}: absent'),
  ...cues(
    'denied',
    'negex',
    ['condition'],
    'no signs of {x} | no sign of {x} | free of {x} | absence of {x} | never developed {x} | {x} ruled out | ' +
      '{x} was ruled out | {x} has been ruled out | {x} ruled out {y} | ruled out for {x} | workup negative for {x} | ' +
      'labs ruled out {x}',
  ),
  ...cues(
    'denied',
    'clinic',
    ['allergy'],
    'not allergic to {x} | pt is not allergic to {x} | denies being allergic to {x} | no allergy to {x} | ' +
      "allergic to {x}: no | never allergic to {x} | isn't allergic to {x} | no {x} allergy | never had a reaction to {x}",
  ),
  ...cues(
    'denied',
    'clinic',
    ['allergy'],
    'tolerates {x} | {x} tolerated | {x} tolerated well | tolerated {x} well | has tolerated {x} before | {x} ok | ok with {x} | ' +
      'tolerated {x} {y} without reaction | tolerates {x} fine',
    { home: true },
  ),
  ...cues('denied', 'clinic', ['implant'], 'no {x} in place | no {x} present | never had a {x} placed'),
  ...cues(
    'denied',
    'clinic',
    ['medicine'],
    'not on {x} | not taking {x} | denies taking {x} | denies {x} | no {x} | does not take {x} | never took {x} | ' +
      '{x}: no | {x} - no | {x}: denies | pt denies {x} use | no longer on {x} | no longer takes {x} | {x} stopped {y} | ' +
      "{x} discontinued {y} | {x} d/c'd {y} | stopped {x} {y} | off {x} since {y} | {x}: never",
  ),
];

const past: readonly Cue[] = [
  ...cues(
    'denied',
    'clinic',
    ['implant'],
    '{x} removed {y} | {x} removed | {x} explanted | {x} explanted {y} | {x} was removed in {y} | {x} taken out {y} | ' +
      's/p {x} removal {y} | s/p removal of {x} {y} | s/p {x} explant {y} | previous {x} removed {y} | ' +
      'h/o {x}, removed {y} | had {x}, explanted {y}',
  ),
  ...cues(
    'denied',
    'clinic',
    ['condition'],
    '{x} resected {y}, cured | s/p resection of {x} {y}, cured | {x} removed {y}, cured | h/o {x}, resected {y}, cured',
    { tumor: true },
  ),
];

const others: readonly Cue[] = [
  ...cues(
    'denied',
    'clinic',
    had,
    "{k} has {n} | {k} had {n} | {k} with {n} | pt's {k} has {n} | {n} in {k} | FHx: {n} | FHx of {n} | FH: {n} | " +
      'fam hx of {n} | family hx: {n} | mom has {n} | dad has {n}',
  ),
  ...cues('denied', 'context', had, 'family history of {n} | family history: {n}'),
  ...cues(
    'denied',
    'clinic',
    ['allergy'],
    '{k} allergic to {x} | {k} is allergic to {x} | mom is allergic to {x}',
  ),
  ...cues('denied', 'clinic', ['medicine'], '{k} takes {x} | {k} is on {x}'),
];

/** What makes a clause a statement of its own after a comma: a verb, a year, a place, a plain answer. */
const standing =
  /\{[yp]\}|: yes|- yes|positive|s\/p|status post|\b(?:has|had|is|reports|states|endorses|admits|confirms|says|noted|mentioned|mention|presents|causes|gets|gave|does|did|cannot|takes|started|continues|stop|diagnosed|lives)\b/;

/** Whether the wording is a statement of its own after a comma, whatever is before that. */
export const standsAlone = (text: string): boolean => standing.test(text);

/** What is said of one danger, in a clause of its own. */
export const allCues: readonly Cue[] = [
  ...said,
  ...allergic,
  ...implanted,
  ...sick,
  ...taken,
  ...open,
  ...denied,
  ...past,
  ...others,
];

/** Relatives of the patient: the other persons of ConText. */
export const relatives: readonly string[] = [
  'father',
  'mother',
  'brother',
  'sister',
  'aunt',
  'uncle',
  'grandmother',
  'grandfather',
  'son',
  'daughter',
];

/** What an allergy does. */
export const reactions: readonly string[] = [
  'hives',
  'rash',
  'swelling',
  'anaphylaxis',
  'itching',
  'blisters',
  'wheezing',
  'contact dermatitis',
  'redness and itching',
  'throat swelling',
  'angioedema',
];

/** Where a device is: in the trunk, or of the ear. */
export const placesOf = (row: string): readonly string[] =>
  row === 'cochlear implant'
    ? ['left ear', 'right ear', 'L ear', 'behind right ear']
    : ['left chest', 'right chest', 'L chest', 'abdomen', 'left side'];
