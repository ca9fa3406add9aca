import type { Frame, Hold } from '../cues.ts';
import type { Gather } from '../gather.ts';
import { phrases } from '../trie.ts';
import { wordSet } from '../word-set.ts';
import { claimOf, cuesBetween, plainOf } from '../scan.ts';
import type { SiteNamed } from './site.ts';

const nouns = wordSet(
  'papule papules macule macules plaque plaques nodule nodules patch patches lesion lesions mole moles growth growths tumor tumour mass ulcer ' +
    'ulceration ulcer cyst cysts nevus nevi wart warts keratoses comedo scab thickening erythema vesicle vesicles blister blisters bulla bullae pustule pustules wheal erosion erosions rash eruption spot spots bump bumps tag tags streak keratosis',
);
const stops = wordSet(
  'the a an of on at in is was were are has had with and from over to for noted shows showed showing reveals revealed demonstrates demonstrated ' +
    'there presents which that this her his their biopsy biopsied shave punch excision excisional incisional removed sampled site lesion: skin patient has, consistent lesion',
);
/** Nouns that describe nothing without an adjective. */
const bare = wordSet(
  'lesion lesions growth growths spot spots rash mass eruption bump erosion thickening erythema',
);
const notSkin = wordSet('suture stitch identification orienting standing dog');
const goesOn = wordSet('with measuring measures about approximately');
const rightStops = wordSet(
  'on of at over located was were is are has biopsied from since presents noted removed sampled for in rule concerning suspicious consistent r/o and that which present',
);

/** Reads what a lesion looks like: a noun of the skin with the words before it, and with what follows a "with". */
export function readLesions(gather: Gather, sites: readonly SiteNamed[]): void {
  const { scan } = gather;
  const isOther = otherWords(gather, sites);
  for (const [at, { low }] of scan.words.entries()) {
    if (!nouns.has(low) || !isOpenAt(gather, at)) continue;
    if (/^tags?$/.test(low) && gather.low(at - 1) !== 'skin') continue;
    const from = describedFrom(gather, /^tags?$/.test(low) ? at - 1 : at, isOther);
    // "1 cm from the blister" and "edge of the blister" say where, and not what.
    if (gather.has(notSkin, from, at) || gather.has(placing, from - 3, from)) continue;
    const end = describedTo(gather, at + 1);
    if (bare.has(low) && !gather.has(adjectives, from, at) && !hasSize(gather, from, end)) continue;
    gather.put({ level: 'procedure', key: ['lesion'], value: plainOf(scan, from, end), at: from, end });
  }
}

const isOpenAt = (gather: Gather, at: number): boolean =>
  !gather.isTaken(at) && gather.held(at) === undefined && !gather.isUnderAllergies(at);

const placing = wordSet('from edge beside adjacent');
const adjectives = wordSet(
  'pearly pink red brown black tan blue white scaly crusted crusty irregular pigmented ulcerated bleeding hyperkeratotic erythematous violaceous flesh-colored skin-colored ' +
    'translucent shiny smooth rough waxy dome-shaped raised flat pedunculated verrucous keratotic tender friable indurated asymmetric asymmetrical dark changing variegated nodular atrophic annular umbilicated tense grouped purple purpuric yellow stuck-on stuck warty',
);

const hasSize = (gather: Gather, from: number, end: number): boolean => {
  for (let at = from; at < end; at += 1)
    if (gather.word(at)!.kind === 'quantity' || gather.word(at)!.kind === 'sides') return true;
  return false;
};

const longestBefore = 10;

/** Whether a word is of a site, a method or what was used, and so describes no lesion. */
function otherWords({ scan }: Gather, sites: readonly SiteNamed[]): (at: number) => boolean {
  const other = new Set<number>();
  for (const { at, end } of sites) for (let place = at; place < end; place += 1) other.add(place);
  for (const { at, end, claims } of scan.terms)
    if (claims.some(({ table }) => notOfLesion.has(table)))
      for (let place = at; place < end; place += 1) other.add(place);
  return (at) => other.has(at);
}

const notOfLesion: ReadonlySet<string> = new Set([
  'method',
  'medium',
  'hemostasis',
  'preparation',
  'dressing',
  'consent',
  'medicine',
]);

function describedFrom(gather: Gather, at: number, isOther: (at: number) => boolean): number {
  let from = at;
  for (let place = at - 1; place >= Math.max(0, at - longestBefore); place -= 1) {
    if (gather.isTaken(place) || isOther(place) || gather.held(place) !== undefined) break;
    if (!describes(gather, place)) break;
    if (gather.word(place)!.kind !== 'mark' && gather.low(place) !== 'and') from = place;
  }
  return from;
}

/** Whether a word before a lesion may describe it: no verb or article, and between adjectives a comma or an "and". */
function describes(gather: Gather, place: number): boolean {
  const { kind, low } = gather.word(place)!;
  if (kind === 'line') return false;
  const isJoint = kind === 'mark' || low === 'and';
  if (!isJoint) return !stops.has(low);
  return (low === ',' || low === 'and') && adjectives.has(gather.low(place - 1));
}

const longestAfter = 14;

function describedTo(gather: Gather, at: number): number {
  if (!goesOn.has(gather.low(at))) return at;
  let end = at;
  for (let place = at; place < at + longestAfter; place += 1) {
    const word = gather.word(place);
    if (word === undefined || word.kind === 'mark' || word.kind === 'line' || gather.isTaken(place)) break;
    if (rightStops.has(word.low) && word.low !== 'and') break;
    if (gather.held(place) !== undefined) break;
    end = place + 1;
  }
  return end;
}

const asks: readonly (readonly [words: string, keeps: boolean])[] = [
  ['rule out', true],
  ['r/o', true],
  ['concern for', true],
  ['concerning for', true],
  ['suspicious for', true],
  ['suspect', true],
  ['suspected', true],
  ['suspicion of', true],
  ['favor', true],
  ['favour', true],
  ['clinical impression', false],
  ['clinical diagnosis', false],
  ['preoperative diagnosis', false],
  ['preop diagnosis', false],
  ['pre-op diagnosis', false],
  ['differential diagnosis', false],
  ['differential', false],
  ['ddx', false],
  ['impression', false],
  ['diagnosis', false],
  ['dx', false],
  ['clinical question', false],
  ['question', false],
  ['clinically', false],
  ['query', true],
  ['likely', true],
  ['probable', true],
  ['probably', true],
  ['possible', true],
  ['possibly', true],
  ['thinking', true],
  ['looks like', true],
  ['evaluate for', true],
  ['suspicion for', true],
];

const headed = wordSet(': is was includes of');
const ofPatient = wordSet(
  'treated treatment ln2 cryotherapy allergy allergic reaction exposure infection bleeding side complications pregnancy',
);
const joins = wordSet('or vs versus and');

/** Reads what the pathologist is asked: what follows "rule out" and its like, or the heading of a diagnosis. */
export function readQuestions(gather: Gather): void {
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const ask = gather.isTaken(at) ? undefined : askAt(gather, at);
    if (ask !== undefined && !isOfOther.has(gather.held(at))) at = readAsk(gather, at, ask) - 1;
  }
}

const isOfOther: ReadonlySet<Hold | undefined> = new Set(['past', 'other person', 'denied']);

/** Reads what is asked after the words for it; returns the place after it. */
function readAsk(gather: Gather, at: number, ask: Ask): number {
  let from = ask.end;
  while (headed.has(gather.low(from)) || gather.low(from) === 'the') from += 1;
  const isHead = !ask.keeps && ask.words !== 'question';
  const end = isHead && from === ask.end ? from : questionEnd(gather, from);
  if (end === from || gather.isTaken(from, end) || gather.has(ofPatient, from, end)) return at + 1;
  const start = ask.keeps ? at : from;
  const value = plainOf(gather.scan, start, end);
  gather.put({ level: 'procedure', key: ['question'], value, at: start, end, rests: [[at, from]] });
  return end;
}

interface Ask {
  readonly words: string;
  readonly end: number;
  /** Whether the words for it are part of what is asked. */
  readonly keeps: boolean;
}

function askAt({ scan }: Gather, at: number): Ask | undefined {
  const found = askTrie.longest(scan.words, at);
  return found === undefined ? undefined : { ...found.value, end: found.end };
}

const askTrie = phrases(asks.map(([words, keeps]) => [words, { words, keeps }]));

const longestAsked = 6;
const notAsked = wordSet('allergies allergy patient pt time sutures consent follow');

/** Reads what is asked without a word for it: "SCC in situ?", "? lichen planus", "lentigo versus melanoma". */
export function readAsked(gather: Gather, sites: readonly SiteNamed[]): void {
  const { scan } = gather;
  const isOther = otherWords(gather, sites);
  readPurpose(gather);
  for (const [at, { text, low }] of scan.words.entries()) {
    if (text === '?') readMark(gather, at, isOther);
    else if ((low === 'vs' || low === 'versus') && !gather.isTaken(at)) {
      const { from, to } = gather.clauseAt(at);
      const end = isMark(gather, to - 1) ? to - 1 : to;
      putAsked(gather, fromNoun(gather, from, at, isOther), end);
    }
  }
}

/** "A punch to the fat for panniculitis". */
function readPurpose(gather: Gather): void {
  for (const term of gather.freeTerms) {
    const { at, end } = term;
    if (gather.low(at - 1) !== 'for' || gather.held(at) !== undefined) continue;
    const { from } = gather.clauseAt(at);
    const taken = cuesBetween(gather.scan.terms, from, at).some(
      (one) => claimOf(one, 'method') !== undefined,
    );
    if (taken && claimOf(term, 'diagnosis') !== undefined) putAsked(gather, at, end);
  }
}

const isMark = (gather: Gather, at: number): boolean =>
  gather.word(at)?.kind === 'mark' || gather.word(at)?.kind === 'line';

function readMark(gather: Gather, at: number, isOther: (at: number) => boolean): void {
  const clause = gather.clauseAt(at);
  const isApart =
    at > clause.from &&
    gather.word(at - 1)!.to < gather.word(at)!.from &&
    gather.word(at + 1)?.kind === 'word';
  if (isApart) putAsked(gather, at + 1, nextMark(gather, at + 1));
  else if (
    at === clause.from ||
    isMark(gather, at - 1) ||
    gather.word(at + 1)?.from === gather.word(at)!.to
  ) {
    const next = gather.scan.clauses[gather.scan.clauseOf[at]! + 1];
    const from = at + 1;
    const to = next === undefined || clause.to > from ? clause.to : next.to;
    putAsked(gather, from, isMark(gather, to - 1) ? to - 1 : to);
  } else putAsked(gather, fromNoun(gather, clause.from, at, isOther), at);
}

function nextMark(gather: Gather, at: number): number {
  let end = at;
  while (gather.word(end) !== undefined && !isMark(gather, end)) end += 1;
  return end;
}

/** The words before a mark or a "versus" without those of a sentence, a site or a lesion. */
function fromNoun(gather: Gather, from: number, at: number, isOther: (at: number) => boolean): number {
  for (let place = at - 1; place >= from; place -= 1) {
    const low = gather.low(place);
    const isStop = stops.has(low) && gather.low(place + 1) !== 'situ';
    if (isStop || gather.isTaken(place) || isOther(place)) return place + 1;
    if (place < at - 1 && nouns.has(low)) return place + 1;
  }
  return from;
}

function putAsked(gather: Gather, from: number, end: number): void {
  if (end <= from || end - from > 2 * longestAsked || gather.isTaken(from, end)) return;
  if (gather.held(from) !== undefined || gather.has(notAsked, from, end)) return;
  gather.put({
    level: 'procedure',
    key: ['question'],
    value: plainOf(gather.scan, from, end),
    at: from,
    end,
  });
}

const longestQuestion = 24;

function questionEnd(gather: Gather, from: number): number {
  let end = from;
  for (let at = from; at < from + longestQuestion && !endsQuestion(gather, at, from); at += 1)
    if (gather.word(at)!.kind !== 'mark') end = at + 1;
  return end;
}

function endsQuestion(gather: Gather, at: number, from: number): boolean {
  const word = gather.word(at);
  if (word === undefined || word.kind === 'line' || (at > from && endsAsked(gather, at))) return true;
  if (word.kind === 'mark')
    return (
      word.text !== '/' &&
      !(word.text === ',' && isListed(gather, at + 1) && !persons.has(gather.low(at + 1)))
    );
  const { clauseOf } = gather.scan;
  return clauseOf[at] !== clauseOf[from] && gather.word(at - 1)?.kind !== 'mark';
}

/** In a text without marks a question ends where something else is spoken of. */
function endsAsked(gather: Gather, at: number): boolean {
  if (gather.isTaken(at)) return true;
  const { from, to } = gather.clauseAt(at);
  if (to - from <= longClause) return false;
  const { cues, terms } = gather.scan;
  return (
    cuesBetween(cues, at, at + 1).some(({ cues: several }) =>
      several.some((cue) => 'frame' in cue && notAskedOf.has(cue.frame)),
    ) ||
    cuesBetween(terms, at, at + 1).some(({ claims }) => claims.some(({ table }) => notOfLesion.has(table)))
  );
}

const persons = wordSet('he she they we i patient pt the it');
const longClause = 25;
const notAskedOf: ReadonlySet<Frame> = new Set<Frame>([
  'preparation',
  'anesthetic',
  'hemostasis',
  'closure',
  'dressing',
  'specimen',
  'consent',
  'time-out',
  'complications',
  'due',
]);

/** Whether a list goes on after a comma to an "or" or "versus", within a few words. */
function isListed(gather: Gather, at: number): boolean {
  for (let place = at; place < at + 5; place += 1) {
    const word = gather.word(place);
    if (word === undefined || word.kind === 'line' || (word.kind === 'mark' && word.text !== ','))
      return false;
    if (joins.has(word.low)) return true;
  }
  return false;
}

const without = wordSet('no without none zero');
const complication = wordSet('complication complications');

const limits = wordSet(
  'but except other otherwise aside apart besides however although though save only until',
);

/** Whether words beside "no complications" say that there was something: "but she fainted", "other than a bleed". */
function isLimited(gather: Gather, from: number, end: number): boolean {
  const sentence = gather.sentenceAt(from);
  const after = Math.min(sentence.to, end + 3);
  return gather.has(limits, sentence.from, from) || gather.has(limits, end, after);
}

const faints = wordSet(
  'vasovagal vasovagaled vasovagalled syncope syncopal presyncope presyncopal fainted faint fainting lightheaded',
);
const longestEvent = 30;

/** Reads that the patient fainted, in the words of its sentence. */
export function readFaints(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (!faints.has(low) || gather.held(at) !== undefined || gather.isTaken(at)) continue;
    const { from, to } = gather.sentenceAt(at);
    const end = isMark(gather, to - 1) ? to - 1 : to;
    if (end - from > longestEvent || gather.isTaken(from, end)) continue;
    gather.put({
      level: 'procedure',
      key: ['complications'],
      value: plainOf(gather.scan, from, end),
      at: from,
      end,
    });
  }
}

/** Reads "no complications" and its like. */
export function readComplications(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (!complication.has(low)) continue;
    for (const step of [-1, -2, -3, 1, 2, 3]) {
      const place = at + step;
      if (!without.has(gather.low(place)) || gather.clauseAt(place).sentence !== gather.clauseAt(at).sentence)
        continue;
      if (
        step > 0 &&
        !headed.has(gather.low(at + 1)) &&
        gather.low(at + 1) !== 'none' &&
        gather.low(at + 1) !== 'were'
      )
        continue;
      const [from, end] = [Math.min(at, place), Math.max(at, place) + 1];
      if (isLimited(gather, from, end)) break;
      gather.put({ level: 'procedure', key: ['complications'], value: 'none', at: from, end, several: true });
      break;
    }
  }
}
