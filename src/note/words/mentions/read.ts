import type { WordRow } from '../../../reference/types.ts';
import { clausesOf, hasRole, rolesOf, type Clause } from './clauses.ts';
import { role, turns } from './cue-index.ts';
import { governedIn, type Denial, type Governed } from './governed.ts';
import type { Lookup } from './lookup.ts';
import { partsOf, type Part } from './parts.ts';

/** What a text says of a danger that it names: it is so, it surely is not, or it is left open. */
export type Answer = 'said' | 'denied' | 'unclear';

/** Why an answer is not plainly `said`. */
export type Why = Denial | 'other person' | 'doubt' | 'in the past' | 'not sure';

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
): readonly Mention<Row>[] {
  const parts = partsOf(text.includes('’') ? text.replaceAll('’', "'") : text, lookup);
  if (parts === undefined) return [];
  return clausesOf(parts)
    .flatMap((clause) => mentionsIn(clause, lookup))
    .sort((one, other) => one.from - other.from);
}

function mentionsIn<Row extends WordRow>(clause: Clause<Row>, lookup: Lookup<Row>): readonly Mention<Row>[] {
  const found: Mention<Row>[] = [];
  let governed: Governed | undefined;
  clause.parts.forEach(({ rows, from, to }, at) => {
    for (const row of rows) {
      governed ??= governedIn(clause);
      found.push({ row, from, to, ...verdictOn(clause, at, governed, lookup.lasts(row)) });
    }
  });
  return found;
}

function verdictOn<Row>(clause: Clause<Row>, at: number, governed: Governed, lasts: boolean): Verdict {
  const roles = cuesIn(clause);
  if ((roles & (role.family | role.relative)) !== 0 && !isInformant(clause))
    return (roles & role.subject) !== 0 ? unclear('other person') : denied('other person');
  const own = ownVerdict(clause, at, governed, lasts, roles);
  if (clause.link === 'except' && own.answer !== 'denied') return exceptVerdict(clause);
  if (clause.link === 'relative' && own.answer === 'said') return unclear('other person');
  return own;
}

/** The roles of the words of a clause that name nothing. */
const cuesIn = <Row>({ parts }: Clause<Row>): number => rolesOf(parts.filter(({ name }) => !name));

function ownVerdict<Row>(
  clause: Clause<Row>,
  at: number,
  { denied: surely, open }: Governed,
  lasts: boolean,
  roles: number,
): Verdict {
  const why = surely.get(at);
  if ((roles & role.keeps) !== 0) return why !== undefined || open ? unclear('not sure') : said;
  const inDoubt = clause.asked || (roles & role.doubt) !== 0;
  if (why !== undefined && !inDoubt) return endedVerdict(clause, why, lasts);
  if (inDoubt) return unclear('doubt');
  if ((roles & role.asked) !== 0) return askedVerdict(clause);
  if (open) return unclear('not sure');
  return (roles & role.past) !== 0 && !lasts && !isStillSo(roles) ? unclear('in the past') : said;
}

/** "History of" beside a place or a day is a device that was put in. */
const isStillSo = (roles: number): boolean => (roles & (role.place | role.yes)) !== 0;

function endedVerdict<Row>(clause: Clause<Row>, why: Denial, lasts: boolean): Verdict {
  if (why === 'past' && lasts) return unclear('in the past');
  return isTurned(clause) ? said : denied(why);
}

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

/** Whether the person in a clause tells of the patient: "wife says he has", "per daughter". */
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
