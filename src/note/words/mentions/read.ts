import type { WordRow } from '../../../reference/types.ts';
import { tokensOf, type Token } from '../phrase-tokens.ts';
import { clausesOf, hasRole, rolesOf, type Clause } from './clauses.ts';
import { cueAt, role, turns, type Roles } from './cue-index.ts';
import { governedIn, type Denial, type Governed } from './governed.ts';
import type { Lookup } from './lookup.ts';
import { allPartsOf, partsOf, type Part } from './parts.ts';

/** What a text says of a danger that it names: it is so, it surely is not, or it is left open. */
export type Answer = 'said' | 'denied' | 'unclear';

/** Why an answer is not plainly `said`. */
export type Why = Denial | 'other person' | 'doubt' | 'in the past' | 'order' | 'not sure' | 'slip';

/** A name of a table in a free text, at characters `from` to `to`, with what the text says of it. */
export interface Mention<Row> {
  readonly row: Row;
  readonly from: number;
  readonly to: number;
  readonly answer: Answer;
  /** Undefined where it is plainly said. */
  readonly why: Why | undefined;
}

type Verdict = Pick<Mention<unknown>, 'answer' | 'why'>;

const said: Verdict = { answer: 'said', why: undefined };
const denied = (why: Why): Verdict => ({ answer: 'denied', why });
const unclear = (why: Why): Verdict => ({ answer: 'unclear', why });

/**
 * The dangers that a free text names, in its order, each with what the text says of it. Only a sure denial is
 * `denied`: a denial with nothing but names in its clause, an answer, another person, what is over, what was
 * tolerated. Everything else that holds a cue is `unclear`. Takes time linear in the text.
 */
export function readMentions<Row extends WordRow>(
  text: string,
  lookup: Lookup<Row>,
  tokens: readonly Token[] = wordsOf(text),
): readonly Mention<Row>[] {
  const parts = partsOf(text, lookup, tokens);
  if (parts === undefined) return [];
  const clauses = clausesOf(parts);
  const mentions = clauses.flatMap((clause) => mentionsIn(clause, lookup));
  return (clauses.some((clause) => isOfPatientToo(text, clause)) ? mentions.map(asked) : mentions).sort(
    (one, other) => one.from - other.from,
  );
}

/** "In the family, tested positive herself": then what is said of others may be so of the patient too. */
const reflexive = /^(?:him|her|them)sel(?:f|ves)$/;
const isOfPatientToo = <Row>(text: string, clause: Clause<Row>): boolean =>
  clause.parts.some(({ from, to }) => reflexive.test(text.slice(from, to).toLowerCase())) &&
  (cuesIn(clause) & (role.yes | role.reaction | role.verb | role.auxiliary)) !== 0;
const asked = <Row>(one: Mention<Row>): Mention<Row> =>
  one.answer === 'denied' && one.why === 'other person' ? { ...one, ...unclear('other person') } : one;

/** The words and marks of a text, taken apart once for several lookups. */
export const wordsOf = (text: string): readonly Token[] =>
  tokensOf(text.includes('’') ? text.replaceAll('’', "'") : text);

/** Whether a word of a text may mention another person. Most texts have none, and need not be read for it. */
export function mayTellOfAnother<Row extends WordRow>(text: string, { cues }: Lookup<Row>): boolean {
  const tokens = wordsOf(text);
  return tokens.some(
    (_, at) => ((cueAt(cues, tokens, at)?.value ?? 0) & (role.family | role.relative)) !== 0,
  );
}

/** Whether a text denies all that it names, known or not: "no device of any kind", "flux capacitor removed". */
export function isAllDenied<Row extends WordRow>(text: string, lookup: Lookup<Row>): boolean {
  const clauses = clausesOf(withNames(allPartsOf(text.replaceAll('’', "'"), lookup)));
  const verdicts = clauses.flatMap((clause) => {
    const reader = new ClauseReader(clause);
    return clause.parts.flatMap(({ name }, at) => (name ? [reader.verdict(at, false)] : []));
  });
  if (verdicts.length > 0) return verdicts.every(({ answer }) => answer === 'denied');
  return clauses.some((clause) => (cuesIn(clause) & (role.none | role.denies)) !== 0);
}

/** Words that mean nothing here may be the name of anything. */
function withNames<Row>(parts: readonly Part<Row>[]): readonly Part<Row>[] {
  const all: Part<Row>[] = [];
  for (const part of parts) {
    const isWord =
      (part.roles === 0 || part.roles === role.place) && part.mark === undefined && part.number === undefined;
    const last = all.at(-1);
    if (isWord && last?.name === true) all[all.length - 1] = { ...last, to: part.to };
    else all.push(isWord ? { ...part, name: true } : part);
  }
  return all;
}

function mentionsIn<Row extends WordRow>(clause: Clause<Row>, lookup: Lookup<Row>): readonly Mention<Row>[] {
  const found: Mention<Row>[] = [];
  let reader: ClauseReader<Row> | undefined;
  clause.parts.forEach(({ rows, from, to, slip }, at) => {
    for (const row of rows) {
      reader ??= new ClauseReader(clause);
      const verdict = reader.verdict(at, lookup.lasts(row));
      found.push({ row, from, to, ...(slip === true && verdict === said ? unclear('slip') : verdict) });
    }
  });
  return found;
}

/** What the cues of one clause say of its names. */
class ClauseReader<Row> {
  private readonly roles: Roles;
  private readonly governed: Governed;
  private readonly ofAnother: boolean;

  constructor(private readonly clause: Clause<Row>) {
    this.roles = cuesIn(clause);
    this.governed = governedIn(clause);
    this.ofAnother = this.has(role.family | role.relative) && !isInformant(clause);
  }

  /** @param lasts whether what is said of its past is still so */
  verdict(at: number, lasts: boolean): Verdict {
    if (this.ofAnother) return this.has(role.subject) ? unclear('other person') : denied('other person');
    const own = this.own(at, lasts);
    if (this.clause.link === 'except' && own.answer !== 'denied') return exceptVerdict(this.clause);
    if (this.clause.link === 'relative' && own.answer === 'said') return unclear('other person');
    return own;
  }

  private has(wanted: Roles): boolean {
    return (this.roles & wanted) !== 0;
  }

  private own(at: number, lasts: boolean): Verdict {
    const why = this.governed.denied.get(at);
    if (this.has(role.keeps)) return this.kept(why);
    if (this.clause.asked || this.has(role.doubt)) return unclear('doubt');
    if (why !== undefined) return this.denial(why, lasts);
    if (this.has(role.asked)) return this.isAnswered() ? denied('denial') : askedVerdict(this.clause);
    if (this.governed.open !== 0) return unclear(this.governed.order ? 'order' : 'not sure');
    // "History of" beside a place is a device that was put in.
    const over = this.has(role.past) && !lasts && !this.has(role.place | role.yes);
    return over ? unclear('in the past') : said;
  }

  /** "Asked about latex and tape: none": one answer for all that was asked about. */
  private isAnswered(): boolean {
    return this.governed.denied.size > 0;
  }

  /** "Explanted 2012 and reimplanted": what is over and then is not is said; a denial beside it leaves it open. */
  private kept(why: Denial | undefined): Verdict {
    const denies = (why !== undefined && why !== 'past') || (this.governed.open & ~role.ended) !== 0;
    return denies ? unclear('not sure') : said;
  }

  private denial(why: Denial, lasts: boolean): Verdict {
    if (why === 'past' && lasts) return unclear('in the past');
    return isTurned(this.clause) ? said : denied(why);
  }
}

/** The roles of the words of a clause that name nothing. */
const cuesIn = <Row>({ parts }: Clause<Row>): Roles => rolesOf(parts.filter(({ name }) => !name));

/** "Tolerates procaine, not lidocaine": a bare "not" turns what the clause before it says. */
function isTurned<Row>({ parts, before, link }: Clause<Row>): boolean {
  const first = parts.find((part) => part.roles !== role.filler);
  if (first === undefined || before === undefined || link === 'question' || !hasRole(first, turns))
    return false;
  return before.parts.some((part) => !part.name && hasRole(part, role.tolerated));
}

/** What follows "except" is so, where the clause before it denies or names nothing. */
const exceptVerdict = <Row>({ before }: Clause<Row>): Verdict =>
  before?.parts.some(({ rows }) => rows.length > 0) === true &&
  (cuesIn(before) & (role.denies | role.none)) === 0
    ? unclear('not sure')
    : said;

/** What was asked about has the answer of the clause before it. */
function askedVerdict<Row>({ before }: Clause<Row>): Verdict {
  const denies = before !== undefined && (cuesIn(before) & (role.denies | role.none)) !== 0;
  const says = before?.parts.some(({ rows }) => rows.length > 0) === true;
  return denies && !says ? denied('denial') : unclear('doubt');
}

/** Whether the person in a clause mentions the patient: "wife says he has", "per daughter". */
function isInformant<Row>({ parts }: Clause<Row>): boolean {
  if (parts.some((part) => !part.name && hasRole(part, role.family))) return false;
  const at = parts.findIndex((part) => !part.name && hasRole(part, role.relative));
  const after = parts.slice(at + 1).find((part: Part<Row>) => part.roles !== role.filler);
  const before = parts[at - 1] ?? after;
  return (
    (after !== undefined && (hasRole(after, role.tells) || (hasRole(after, role.denies) && !after.name))) ||
    (before !== undefined && before !== after && hasRole(before, role.tells))
  );
}
