import { allClauses, allPairs } from './clauses.ts';
import { allCues, groupOf, standsAlone, type Answer, type Cue, type Group } from './cues.ts';
import { fill, type Names } from './fill.ts';
import { besides, elsewhere, entriesBeside, sameKind, type Harmless } from './harmless.ts';
import { aways, homes, noteOf, quoted, value, type Key } from './notes.ts';
import { Random } from './random.ts';
import { styled } from './style.ts';
import { things, type Kind, type Thing } from './things.ts';

/** A note with one text about one danger, and what the text says of it. */
export interface Case {
  readonly note: string;
  readonly key: Key;
  readonly text: string;
  readonly kind: Kind;
  /** The row of the table, and the word of it that is in the text. */
  readonly row: string;
  readonly word: string;
  readonly answer: Answer;
  /**
   * Checks that count: of what is said or unclear one of them must fire, of what is denied none may be a warning or
   * an error.
   */
  readonly codes: readonly string[];
  /** How loud the loudest of them must at least be; information only where the plain entry is no more. */
  readonly least: 'warning' | 'information';
  /** The wording before it was filled. */
  readonly cue: string;
  readonly shape: string;
}

interface Chosen {
  readonly thing: Thing;
  readonly group: Group;
  readonly names: Names;
  readonly answer: Answer;
  readonly random: Random;
}

interface Written {
  /** The clauses, each an entry of a list where the key takes one. */
  readonly texts: readonly string[];
  /** Where the value is a map: what is written. */
  readonly map?: string;
  readonly cue: string;
  readonly shape: string;
  readonly home: boolean;
}

/** A bare "no G6PD" can mean the enzyme, which is the disease itself. */
const deniable = (word: string): boolean => word !== 'G6PD';

const thingsOf: ReadonlyMap<Group, readonly Thing[]> = new Map(
  (['allergy', 'implant', 'condition', 'medicine'] as const).map((group) => [
    group,
    things.filter(({ kind }) => groupOf(kind) === group),
  ]),
);

function fits({ answer, groups, lasting, tumor }: Cue, { thing, group, answer: wanted }: Chosen): boolean {
  if (answer !== wanted || !groups.includes(group)) return false;
  return (lasting === undefined || lasting === thing.lasts) && (tumor !== true || thing.tumor);
}

const known = new Map<string, readonly Cue[]>();

/** The cues that fit, sought once for each kind of danger and answer. */
function cuesFor(chosen: Chosen): readonly Cue[] {
  const { answer, group, thing } = chosen;
  const key = `${answer} ${group} ${String(thing.lasts)} ${String(thing.tumor)}`;
  const found = known.get(key) ?? allCues.filter((one) => fits(one, chosen));
  known.set(key, found);
  return found;
}

/** What parts two statements; after a stop that is there already only a space. */
const parting = (text: string, marks: readonly string[], random: Random): string =>
  text.endsWith('.') ? ' ' : random.pick(marks);

const stops = ['; ', '. '];
const anyMark = [...stops, ', ', ', '];

/** What is of another person is parted from the patient's own by a stop only. */
const ofAnother = ({ text }: Harmless): boolean => /^(?:FHx|father|mother|mom|sister|wife)/.test(text);

/** A statement before the danger, with what parts them. */
function before(one: Harmless, cue: Cue, random: Random): string {
  const comma = !one.reaches || (standsAlone(cue.text) && !ofAnother(one));
  return `${one.text}${parting(one.text, comma ? anyMark : stops, random)}`;
}

const besideOf = ({ group }: Chosen, home: boolean): readonly Harmless[] =>
  home ? besides[group] : elsewhere;

/** The cue, with harmless statements around it. */
function single(chosen: Chosen): Written {
  const { random, names } = chosen;
  const fitting = cuesFor(chosen);
  // Only one row is a tumor, so that what is said of tumors would otherwise be rare.
  const ofTumors = fitting.filter(({ tumor }) => tumor === true);
  const cue = random.pick(ofTumors.length > 0 && random.chance(0.3) ? ofTumors : fitting);
  const home = cue.home === true || random.chance(0.4);
  const text = fill(cue.text, names, random);
  const shape = random.pick(['alone', 'before', 'after', 'both', 'entries']);
  const [one, other] = [random.pick(besideOf(chosen, home)), random.pick(besideOf(chosen, home))];
  const written = { cue: cue.text, shape, home };
  if (shape === 'entries') {
    const entry = home ? random.pick(entriesBeside[chosen.group]) : one;
    return { ...written, texts: random.shuffled([text, entry.text]) };
  }
  const head = shape === 'before' || shape === 'both' ? before(one, cue, random) : '';
  const tail =
    shape === 'after' || shape === 'both'
      ? `${parting(text, other.alone ? anyMark : stops, random)}${other.text}`
      : '';
  return { ...written, texts: [`${head}${text}${tail}`] };
}

const informant = /\b(?:wife|husband|daughter|mother)\b/;

/** Whether the words of a cue say the danger in every order; a bare name has no order. */
const saysInAnyOrder = ({ plain, text }: Cue): boolean =>
  plain === true && !informant.test(text) && /[a-z]/.test(text.replaceAll(/\{\w+\}/g, ''));

/** The words of a text that says the danger, in another order. The name stays together. */
function reordered(chosen: Chosen): Written {
  const { random, names } = chosen;
  const cue = random.pick(cuesFor({ ...chosen, answer: 'said' }).filter(saysInAnyOrder));
  const home = cue.home === true || random.chance(0.4);
  const text = fill(cue.text, { ...names, word: '\0' }, random);
  const plain = besideOf(chosen, home).filter((one) => one.plain);
  const extra = random.chance(0.6) ? ` ${random.pick(plain).text}` : '';
  const words = random.shuffled(`${text}${extra}`.split(' ')).join(' ');
  return {
    texts: [words.replaceAll('\0', names.word)],
    cue: cue.text,
    shape: 'words in another order',
    home,
  };
}

function clause(chosen: Chosen): Written | undefined {
  const { random, group, answer, names } = chosen;
  const fitting = allClauses.filter((one) => one.answer === answer && one.groups.includes(group));
  if (fitting.length === 0) return undefined;
  const { text, shape, home } = random.pick(fitting);
  return {
    texts: [fill(text, names, random)],
    cue: text,
    shape,
    home: home === true || random.chance(0.4),
  };
}

function map(chosen: Chosen): Written | undefined {
  const { random, group, answer, names } = chosen;
  const fitting = allPairs.filter((one) => one.answer === answer && one.groups.includes(group));
  if (fitting.length === 0) return undefined;
  const { value: template } = random.pick(fitting);
  const told = fill(template, names, random);
  // People write a bare yes or no here, which YAML 1.1 takes for a truth value.
  const bare = /^(?:yes|no)$/.test(told) && random.chance(0.7);
  const entry = `${quoted(names.word, random)}: ${bare ? told : quoted(told, random)}`;
  const other = random.pick(sameKind[group]);
  return {
    texts: [`${names.word}: ${told}`],
    map: random.pick([`[{${entry}}]`, `{${entry}}`, `[{${entry}}, ${other}]`, `[${other}, {${entry}}]`]),
    cue: `map of ${template}`,
    shape: 'map',
    home: true,
  };
}

function write(chosen: Chosen): Written {
  const turn = chosen.random.next();
  if (turn < 0.1) return map(chosen) ?? single(chosen);
  // What is left open is mostly left open by one cue.
  if (turn < (chosen.answer === 'unclear' ? 0.2 : 0.35)) return clause(chosen) ?? single(chosen);
  return turn < 0.5 && chosen.answer === 'unclear' ? reordered(chosen) : single(chosen);
}

const lists: ReadonlySet<Key> = new Set(['allergies', 'implants', 'conditions', 'medications', 'remarks']);

function valueOf({ map: written }: Written, key: Key, texts: readonly string[], random: Random): string {
  if (written !== undefined) return written;
  if (key === 'lesion') return quoted(`brown papule 4 mm; ${texts.join('; ')}`, random);
  return lists.has(key) ? value(texts, random) : quoted(texts.join('; '), random);
}

/** What counts outside the key that asks is also that it is not listed there; what may be misread counts where it is unclear. */
function codesOf({ thing, group, answer }: Chosen, key: Key): readonly string[] {
  if (group !== 'allergy') return thing.codes;
  const away = key === 'allergies' ? [] : ['allergy/not-listed'];
  return [...thing.codes, ...away, ...(answer === 'said' ? [] : ['allergy/unclear-entry'])];
}

function choose(random: Random, answer: Answer): Chosen {
  const group = random.pick([
    'allergy',
    'allergy',
    'allergy',
    'implant',
    'implant',
    'condition',
    'condition',
    'medicine',
  ] as const);
  const all = thingsOf.get(group) ?? [];
  const thing = random.pick(all);
  const words = (one: Thing): readonly string[] =>
    one.words.filter((word) => answer !== 'denied' || deniable(word));
  const word = random.pick(words(thing));
  const other = random.pick(random.pick(all.filter((one) => one.row !== thing.row)).words.filter(deniable));
  return { thing, group, answer, random, names: { group, row: thing.row, word, other } };
}

function caseOf(random: Random, answer: Answer): Case {
  const chosen = choose(random, answer);
  const { thing, group, names } = chosen;
  const written = write(chosen);
  const key = written.home ? homes[group] : random.pick(aways.filter((one) => one !== homes[group]));
  const texts =
    written.map === undefined ? written.texts.map((text) => styled(text, names.word, random)) : written.texts;
  return {
    note: noteOf(key, valueOf(written, key, texts, random), thing, random),
    key,
    text: texts.join(' | '),
    kind: thing.kind,
    row: thing.row,
    word: names.word,
    answer,
    codes: codesOf(chosen, key),
    least: thing.mild ? 'information' : 'warning',
    cue: written.cue,
    shape: written.shape,
  };
}

const answers: readonly Answer[] = ['said', 'denied', 'unclear'];

/**
 * Texts of the clinic about dangers, each in a whole note, with answers that are known because each text is built for
 * its answer. The same seed gives the same cases, in turn said, denied and unclear.
 */
export function* generate(seed: number, count: number): Generator<Case> {
  const random = new Random(seed);
  for (let made = 0; made < count; made += 1) yield caseOf(random, answers[made % answers.length] ?? 'said');
}
