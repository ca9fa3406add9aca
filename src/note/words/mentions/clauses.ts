import { answers, role, type Roles } from './cue-index.ts';
import type { Part } from './parts.ts';

/** What parts a clause from the one before it. */
export type Link =
  'start' | 'stop' | 'comma' | 'answer' | 'question' | 'bracket' | 'contrast' | 'except' | 'relative';

/** A stretch of a text in which its cues work. */
export interface Clause<Row> {
  readonly parts: Part<Row>[];
  readonly link: Link;
  readonly before: Clause<Row> | undefined;
  /** Whether it ends with a question mark that nothing answers. */
  asked: boolean;
}

export const hasRole = <Row>({ roles }: Part<Row>, wanted: Roles): boolean => (roles & wanted) !== 0;

/** All roles of the parts of a clause. */
export const rolesOf = <Row>(parts: readonly Part<Row>[]): Roles =>
  parts.reduce((all, { roles }) => all | roles, 0);

const statement =
  role.verb |
  role.auxiliary |
  role.place |
  role.reaction |
  role.yes |
  role.denies |
  role.ended |
  role.tolerated |
  role.doubt |
  role.family |
  role.relative |
  role.subject |
  role.tells |
  role.past |
  role.keeps |
  role.asked |
  role.none;
const listed = role.filler | role.tail | role.or | role.and;
const closing = role.denies | role.ended | role.tolerated | role.doubt | role.keeps;
const opening = role.denies | role.ended | role.tolerated | role.doubt | role.family | role.asked;
const lead = role.filler | role.auxiliary | role.subject;

/** Whether parts without a name are an answer to what was named last: "removed 2019", "tolerated well", "workup pending". */
function answersBefore<Row>(parts: readonly Part<Row>[]): boolean {
  const first = parts.findIndex(
    (part) => part.number === undefined && (!hasRole(part, lead) || hasRole(part, closing)),
  );
  const cue = parts[first];
  if (cue === undefined) return isWhen(parts);
  if (!hasRole(cue, closing)) return false;
  if (hasRole(cue, role.denies) && !hasRole(cue, answers)) return false;
  for (const part of parts.slice(first + 1)) {
    if (part.name) return false;
    if (hasRole(part, role.trail)) return true;
    if (part.number !== undefined || hasRole(part, listed | closing | lead | role.past)) continue;
    if (!hasRole(part, role.yes)) return false;
  }
  return true;
}

/** Whether parts answer the clause before them: not "patient none" where that is of another person. */
function answersTo<Row>(before: readonly Part<Row>[], parts: readonly Part<Row>[]): boolean {
  const ofPatient = (rolesOf(parts) & role.subject) !== 0;
  if (ofPatient && (rolesOf(before) & (role.relative | role.family)) !== 0) return false;
  return answersBefore(parts);
}

/** Whether parts after a comma are of another person, who is named before it: "his wife, who has". */
const goesOnAbout = <Row>(before: readonly Part<Row>[], [first]: readonly Part<Row>[]): boolean =>
  first !== undefined &&
  hasRole(first, role.which) &&
  (rolesOf(before) & (role.relative | role.subject)) === role.relative;

/** Whether parts say only what was done and when: "resected 2015". */
const isWhen = <Row>(parts: readonly Part<Row>[]): boolean =>
  parts.some((part) => hasRole(part, role.auxiliary));

/** Whether parts are names and words joined as in a list, so that they can't be alone. */
const isList = <Row>(parts: readonly Part<Row>[]): boolean =>
  parts.every(
    (part) =>
      part.number === undefined &&
      !hasRole(part, role.tells) &&
      (part.name || hasRole(part, listed) || (part.roles & statement) === 0),
  );

/** Whether a clause ends within a list that one of its cues governs. */
function isOpen<Row>(parts: readonly Part<Row>[]): boolean {
  if (parts.some((part) => hasRole(part, role.none))) return false;
  const cue = parts.findLastIndex((part) => hasRole(part, opening) && !part.name);
  const rest = parts.slice(cue + 1).filter((part) => part.mark === undefined && part.roles !== role.place);
  return cue >= 0 && cue < parts.length - 1 && isList(rest);
}

/** Brackets within more brackets than this end a statement, as in no text that somebody wrote. */
const deepest = 3;
/** A clause with more parts than this is no list that somebody wrote: nothing in it is sure. */
export const longest = 400;

/** Cuts the parts of a text into clauses. */
export function clausesOf<Row>(parts: readonly Part<Row>[]): readonly Clause<Row>[] {
  const cutter = new Cutter(parts);
  return cutter.cut('start', undefined);
}

class Cutter<Row> {
  private readonly clauses: Clause<Row>[] = [];
  private current: Clause<Row> = { parts: [], link: 'start', before: undefined, asked: false };
  /** What is in brackets and names something, read after the clause that holds it. */
  private brackets: (readonly Part<Row>[])[] = [];

  constructor(
    private readonly parts: readonly Part<Row>[],
    private readonly depth = 0,
  ) {}

  cut(link: Link, before: Clause<Row> | undefined): readonly Clause<Row>[] {
    this.current = { parts: [], link, before, asked: false };
    for (let at = 0; at < this.parts.length;) at = this.step(at);
    this.end('stop');
    return this.clauses;
  }

  private step(at: number): number {
    const part = this.parts[at]!;
    if (part.mark === 'open' && this.depth < deepest) return this.bracket(at);
    if (part.mark === 'comma') return this.comma(at);
    if (part.mark !== undefined) this.mark(part, at);
    else if (!part.name && hasRole(part, role.except)) this.end('except');
    else if (!part.name && hasRole(part, role.contrast)) this.end('contrast');
    else this.current.parts.push(part);
    return at + 1;
  }

  private mark(part: Part<Row>, at: number): void {
    if (part.mark === 'answer') this.colon();
    else if (part.mark === 'question') this.question(part, at);
    else this.end('stop');
  }

  /** A heading governs what follows its colon; after a name the colon is followed by what is said of it. */
  private colon(): void {
    const { parts, link } = this.current;
    const named = parts.some(({ name }) => name);
    // "Stent removed? No - pacemaker placed": the answer governs nothing after it.
    const governs =
      link !== 'question' &&
      !named &&
      (rolesOf(parts) & (opening | role.relative)) !== 0 &&
      (rolesOf(parts) & role.none) === 0;
    if (!governs) this.end(named ? 'answer' : 'stop');
  }

  /** "?latex" and "latex?" are both in doubt. */
  private question(part: Part<Row>, at: number): void {
    const { parts } = this.current;
    const last = parts.at(-1);
    const more = this.parts[at + 1];
    if (last !== undefined && (last.to === part.from || more === undefined || more.mark !== undefined)) {
      this.current.asked = true;
      this.end('question');
    } else {
      if (last !== undefined) this.end('stop');
      this.current.parts.push({ ...part, mark: undefined, roles: role.doubt });
    }
  }

  private bracket(at: number): number {
    let end = at + 1;
    for (let depth = 1; end < this.parts.length; end += 1) {
      const { mark } = this.parts[end]!;
      if (mark === 'open') depth += 1;
      else if (mark === 'close' && --depth === 0) break;
    }
    const inner = this.parts.slice(at + 1, end);
    if (inner.some(({ rows }) => rows.length > 0)) this.brackets.push(inner);
    else if (inner.length === 1 && inner[0]!.mark === 'question') this.current.asked = true;
    else {
      const words = inner.filter(({ mark }) => mark === undefined);
      if (answersBefore(words)) this.current.parts.push(...words);
    }
    return end + 1;
  }

  private comma(at: number): number {
    const next = this.segment(at + 1);
    if (next.length === 0) return at + 1;
    const { parts } = this.current;
    if (goesOnAbout(parts, next)) return at + 1;
    if (parts.length > 0 && !next.some(({ name }) => name) && answersTo(parts, next)) return at + 1;
    if (!this.isTold(at + 1 + next.length) && parts.length < longest && isList(next) && isOpen(parts))
      parts.push(this.parts[at]!);
    else this.end((rolesOf(parts) & role.relative) !== 0 && isList(next) ? 'relative' : 'comma');
    return at + 1;
  }

  /** Whether what follows a name says something of it: "lidocaine: yes", "lidocaine, documented 2015". */
  private isTold(at: number): boolean {
    const mark = this.parts[at]?.mark;
    if (mark === 'open') return this.isToldInBracket(at + 1);
    if (mark !== 'comma') return mark === 'answer' && (rolesOf(this.current.parts) & role.asked) === 0;
    const next = this.segment(at + 1);
    return (
      next.some(({ number }) => number === 'year') && !next.some(({ name }) => name) && !answersBefore(next)
    );
  }

  /** Whether a bracket says what happened, or when: "(hives 2014)". */
  private isToldInBracket(at: number): boolean {
    const inner = this.segment(at);
    const says = inner.some((part) => part.number === 'year' || hasRole(part, role.reaction | role.verb));
    return says && !answersBefore(inner);
  }

  /** The parts up to the next mark or cue that ends a clause. */
  private segment(from: number): readonly Part<Row>[] {
    let to = from;
    while (to < this.parts.length && !this.endsAt(this.parts[to]!)) to += 1;
    return this.parts.slice(from, to);
  }

  private endsAt(part: Part<Row>): boolean {
    return part.mark !== undefined || (!part.name && hasRole(part, role.except | role.contrast));
  }

  /** Ends the clause: one without a name may be about what was named before it. */
  private end(next: Link): void {
    const { parts, link } = this.current;
    const last = this.placed(this.current);
    for (const bracket of this.brackets)
      for (const one of new Cutter(bracket, this.depth + 1).cut('bracket', last)) this.clauses.push(one);
    this.brackets = [];
    const kept = parts.length === 0 && link !== 'start' && next === 'stop' ? link : next;
    this.current = { parts: [], link: kept, before: last, asked: false };
  }

  /** Adds a clause to those of the text, or to the one before it that it is about. Returns the last one with words. */
  private placed(clause: Clause<Row>): Clause<Row> | undefined {
    const { parts, before, link } = clause;
    if (parts.length === 0) return before;
    if (before === undefined || !this.isAbout(clause)) {
      this.clauses.push(clause);
      return clause;
    }
    for (const part of parts) before.parts.push(part);
    if (link === 'question') before.asked = false;
    return before;
  }

  /** Whether a clause says something of what the clause before it names. */
  private isAbout({ parts, link, before }: Clause<Row>): boolean {
    if (parts.some(({ name }) => name)) return false;
    if (link === 'question' && hasRole(parts[0]!, role.yes)) return true;
    if (link === 'contrast' && (rolesOf(parts) & (role.reaction | role.keeps | role.doubt)) !== 0)
      return true;
    const keeps = parts.some((part) => hasRole(part, role.keeps));
    return keeps || (link !== 'stop' && answersTo(before?.parts ?? [], parts));
  }
}
