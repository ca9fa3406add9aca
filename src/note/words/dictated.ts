import type { Problem } from '../tree/finding.ts';
import { agents, type AgentRow } from '../../reference/agents.ts';
import { withTradeNames } from '../../reference/trade-names.ts';
import { tokensOf, type Token } from './dictated-tokens.ts';
import { nearest } from '../text/nearest.ts';
import { isBicarbonateStrength } from '../values/ratios.ts';
import { problemAt, trimmed } from '../values/reading.ts';
import { WordTable } from './word-table.ts';

/** One key of an injection that a dictated line states, at characters `from` to `to` of it. */
export interface DictatedField {
  readonly key: string;
  readonly from: number;
  readonly to: number;
  /** What is read for the key where the words typed mean it in another form: `yes` for `preservative-free`. */
  readonly says?: string;
}

/** What a dictated line says, key by key of the schema. */
export interface DictatedLine {
  /** Empty where the line says that nothing was given. */
  readonly fields: readonly DictatedField[];
  readonly problems: readonly Problem[];
}

const knownAgents = new WordTable<AgentRow>(withTradeNames(agents));
const longestLine = 500;

/** How many words the names of agents have at most, by their first word. */
const nameLengths: ReadonlyMap<string, number> = (() => {
  const lengths = new Map<string, number>();
  for (const name of knownAgents.wordsRead) {
    const words = name.split(' ');
    lengths.set(words[0]!, Math.max(lengths.get(words[0]!) ?? 0, words.length));
  }
  return lengths;
})();

type Role =
  | 'filler'
  | 'epinephrine'
  | 'plain'
  | 'without'
  | 'buffer'
  | 'unbuffered'
  | 'preservative'
  | 'preservativeFree'
  | 'route'
  | 'clock'
  | 'lot'
  | 'form';

const wordsOfRole: Readonly<Record<Role, string>> = {
  filler:
    'with w/ w c and of in over for the a an as total given injected using solution injection free sodium by via local anesthetic anesthesia anaesthetic anaesthesia',
  epinephrine: 'epinephrine epi adrenaline adrenalin',
  plain: 'plain',
  without: 'without w/o no not non sans',
  buffer: 'buffered buffer bicarbonate bicarb nahco3',
  unbuffered: 'unbuffered',
  preservative: 'preservative preservatives',
  preservativeFree: 'preservative-free pf',
  route:
    'intradermal intradermally subcutaneous subcutaneously infiltration infiltrated topical topically block digital ring field nerve',
  clock: 'at on off',
  lot: 'lot',
  form: 'cream gel ointment',
};

const roles: ReadonlyMap<string, Role> = new Map(
  (Object.entries(wordsOfRole) as [Role, string][]).flatMap(([role, words]) =>
    words.split(' ').map((one): [string, Role] => [one, role]),
  ),
);

/** What is numbed by a block that is named after it. */
const blocked: ReadonlySet<string> = new Set(
  'finger toe thumb penile wing wrist ankle mental infraorbital supraorbital supratrochlear auricular ear scalp regional'.split(
    ' ',
  ),
);

/** Words that can multiply a dose. */
const multiplying: ReadonlySet<string> = new Set(
  'each every per both bilateral bilaterally twice thrice double x times sides sites spots lesions another more additional further repeated'.split(
    ' ',
  ),
);

const nothingGiven =
  /^(?:none(?: (?:needed|required|used|given|necessary))?|no|not (?:used|needed|required|given|necessary)|(?:no|without) (?:local )?an(?:a)?esthe(?:tic|sia)(?: (?:was )?(?:used|given|needed|required|necessary))?)$/i;

/** Whether a text in the place of an anesthetic says that none was given. */
export const saysNothingGiven = (text: string): boolean => nothingGiven.test(text.trim());

/**
 * Reads an injection dictated in one line: `1.5 mL lidocaine 1% with epinephrine 1:100,000`. The parts may be in
 * any order. Every word is placed, passed over because it says nothing, or reported.
 *
 * Which lines are a product of the practice: one without a volume or amount, unless it is nothing but a known agent,
 * a cold spray, or a known agent with its strength; and after a volume, words without a strength that are no agent
 * and near none.
 */
export function readInjectionLine(text: string): DictatedLine {
  const typed = trimmed(text);
  if (nothingGiven.test(typed.typed)) return { fields: [], problems: [] };
  if (typed.typed.length > longestLine)
    return {
      fields: [],
      problems: [
        problemAt(typed, 'quantity/unreadable', {
          args: { wanted: 'one injection', example: '1.5 mL lidocaine 1% with epinephrine 1:100,000' },
        }),
      ],
    };
  const whole: DictatedField = { key: 'product', from: typed.from, to: typed.from + typed.typed.length };
  if (knownAgents.find(typed.typed) !== undefined)
    return { fields: [{ ...whole, key: 'agent' }], problems: [] };
  const line = new Line(text);
  return line.isDictated ? line.read : { fields: [whole], problems: [] };
}

/** The work on one line: tokens are taken from left to right, what is left over is named or reported. */
class Line {
  private readonly tokens: readonly Token[];
  private readonly fields = new Map<string, DictatedField>();
  private readonly left: number[] = [];
  private readonly repeated: Token[] = [];
  private agent: AgentRow | undefined;
  private epinephrine: Token | undefined;
  private buffer: Token | undefined;
  private form: number | undefined;

  constructor(private readonly text: string) {
    this.tokens = tokensOf(text);
    for (let at = 0; at < this.tokens.length;) at += this.take(at);
    this.settle();
  }

  get isDictated(): boolean {
    if (this.fields.has('volume') || this.fields.has('amount') || this.agent?.form === 'spray') return true;
    return this.agent !== undefined && this.fields.has('concentration');
  }

  get read(): DictatedLine {
    const fields = [...this.fields.values()].sort((a, b) => a.from - b.from);
    return { fields, problems: [...this.repeats(), ...this.leftovers()] };
  }

  /** Places the token at `at`, and those that belong to it; returns how many. */
  private take(at: number): number {
    const token = this.tokens[at]!;
    if (token.kind === 'quantity') return this.takeQuantity(token, at);
    if (token.kind === 'ratio') return this.takeRatio(token, at);
    if (token.kind === 'word') return this.takeName(at) || this.takeWord(token, at);
    if (token.kind === 'number' || !this.isSeparator(token, at)) this.left.push(at);
    return 1;
  }

  /** Marks part the words of a line and say nothing, but `/site` multiplies. */
  private isSeparator({ text }: Token, at: number): boolean {
    if (text !== '/') return /[,;.()+&–-]/.test(text);
    const next = this.tokens[at + 1];
    return (
      next?.kind !== 'word' || this.roleAt(at + 1) !== undefined || knownAgents.find(next.text) !== undefined
    );
  }

  private takeQuantity(token: Token, at: number): number {
    if (token.of !== 'concentration') return this.put(token.of ?? 'volume', token, token, token.says);
    const strong = /(?:%|cent|pct)$/i.test(token.text);
    if (strong && this.isMixed && isBicarbonateStrength(token.text)) return 1;
    if (!strong && this.isSameStrength(at, 'ratio')) return this.widen('epinephrine', at);
    const ofEpinephrine =
      !strong &&
      (this.roleAt(at - 1) === 'epinephrine' ||
        (this.roleAt(at + 1) === 'epinephrine' && /(?:[µμu]|mc)g/i.test(token.text)));
    return this.put(ofEpinephrine ? 'epinephrine' : 'concentration', token, token, token.says);
  }

  private takeRatio(token: Token, at: number): number {
    const key = this.keyOfRatio(token, at);
    const isSame = key === 'epinephrine' && this.isSameStrength(at, 'quantity');
    return isSame ? this.widen(key, at) : this.put(key, token);
  }

  /** Whether what is before a strength of epinephrine is the same in another form: `1:100,000 (10 mcg/mL)`. */
  private isSameStrength(at: number, kind: Token['kind']): boolean {
    const before = this.tokens[at - 1];
    const other = before?.kind === 'mark' && /[(=,]/.test(before.text) ? this.tokens[at - 2] : before;
    return other?.kind === kind && other.to === this.fields.get('epinephrine')?.to;
  }

  /** Lets the words of a key reach to a token, and over a bracket that closes there; returns how many tokens. */
  private widen(key: string, at: number): number {
    const closes = this.tokens[at + 1]?.text === ')';
    if (this.left.at(-1) === at - 1) this.left.pop();
    const last = this.tokens[closes ? at + 1 : at]!;
    this.fields.set(key, { ...this.fields.get(key)!, to: last.to });
    return closes ? 2 : 1;
  }

  private get isMixed(): boolean {
    return this.tokens.some(({ text }) => roles.get(text.toLowerCase()) === 'buffer');
  }

  private keyOfRatio(token: Token, at: number): string {
    const [, second = ''] = token.text.split(/:|in/);
    const before = this.tokens[at - 1]?.text.toLowerCase();
    if (before === 'on' || before === 'off') return before;
    if (before === 'at') return 'time';
    if (second.replace(/\D/g, '').length > 2 || /k/i.test(second)) return 'epinephrine';
    const isTime = /^\s?[0-5]\d/.test(second) && (!this.isMixed || this.fields.has('buffered'));
    return isTime ? 'time' : 'buffered';
  }

  /** The longest name of a known agent that begins here. */
  private takeName(at: number): number {
    const first = /^[^-]+/.exec(this.lower(at))?.[0] ?? '';
    const longest = Math.min(nameLengths.get(first) ?? 0, this.tokens.length - at);
    for (let count = longest; count > 0; count--) {
      const words = this.tokens.slice(at, at + count);
      if (!words.every(({ kind }) => kind === 'word')) continue;
      const row = knownAgents.find(words.map(({ text }) => text).join(' '));
      if (row === undefined) continue;
      this.agent ??= row;
      this.put('agent', words[0]!, words.at(-1));
      return count;
    }
    return 0;
  }

  private takeWord(token: Token, at: number): number {
    const role = this.roleAt(at);
    const stated = statedBy.get(role);
    if (stated !== undefined) return this.put(stated.key, token, token, stated.says);
    if (role === 'route') return this.takeRoute(at);
    if (role === 'epinephrine') this.epinephrine ??= token;
    else if (role === 'buffer') this.buffer ??= token;
    else if (role === 'form') this.form = at;
    else if (role !== 'filler') return this.takePhrase(role, token, at);
    return 1;
  }

  /** Words that mean something only with the next one. */
  private takePhrase(role: Role | undefined, token: Token, at: number): number {
    const next = this.tokens[at + 1];
    if (next !== undefined) {
      if (role === 'clock' && next.kind === 'ratio') return 1;
      if (role === 'lot') return this.takeLot(at + 1) + 1;
      if (role === 'preservative' && next.text.toLowerCase() === 'free')
        return this.put('preservative-free', token, next, 'yes') + 1;
      const denied = role === 'without' ? deniedBy.get(this.roleAt(at + 1)) : undefined;
      if (denied !== undefined) return this.put(denied.key, token, next, denied.says) + 1;
    }
    this.left.push(at);
    return 1;
  }

  /** A lot number: all that is together without a space. */
  private takeLot(at: number): number {
    let end = at + 1;
    while (this.tokens[end]?.from === this.tokens[end - 1]!.to) end++;
    this.put('lot', this.tokens[at]!, this.tokens[end - 1]);
    return end - at;
  }

  private takeRoute(at: number): number {
    let end = at + 1;
    while (this.roleAt(end) === 'route') end++;
    this.put('route', this.tokens[at]!, this.tokens[end - 1]);
    return end - at;
  }

  private roleAt(at: number): Role | undefined {
    if (this.tokens[at]?.kind !== 'word') return undefined;
    const isBlocked = blocked.has(this.lower(at)) && this.lower(at + 1) === 'block';
    return isBlocked ? 'route' : roles.get(this.lower(at));
  }

  private lower(at: number): string {
    return this.tokens[at]?.text.toLowerCase() ?? '';
  }

  private put(key: string, first: Token, last: Token = first, says?: string): number {
    const [from, to] = [first.from, last.to];
    if (this.fields.has(key)) this.repeated.push(first, last);
    else this.fields.set(key, { key, from, to, ...(says === undefined ? {} : { says }) });
    return 1;
  }

  /** What could only be told once the whole line was seen. */
  private settle(): void {
    if (this.epinephrine !== undefined && !this.fields.has('epinephrine'))
      this.put('epinephrine', this.epinephrine);
    if (this.buffer !== undefined && !this.fields.has('buffered'))
      this.put('buffered', this.buffer, this.buffer, 'yes');
    if (this.agent === undefined) this.nameUnknown();
    this.settleForm();
  }

  /** `lidocaine 4% cream` names the cream, though its strength is between. */
  private settleForm(): void {
    if (this.form === undefined) return;
    const agent = this.fields.get('agent');
    const name = agent && `${this.text.slice(agent.from, agent.to)} ${this.tokens[this.form]!.text}`;
    if (agent && name !== undefined && knownAgents.find(name) !== undefined)
      this.fields.set('agent', { ...agent, says: name });
    else this.left.push(this.form);
  }

  /** The first words that nothing is known of: a misspelled agent, an agent with a strength, or a product. */
  private nameUnknown(): void {
    const [first] = this.left.filter((at) => this.tokens[at]!.kind === 'word');
    if (first === undefined) return;
    let end = first + 1;
    while (this.left.includes(end) && this.tokens[end]!.kind === 'word') end++;
    const [from, to] = [this.tokens[first]!, this.tokens[end - 1]!];
    const near = nearest(this.text.slice(from.from, to.to), knownAgents.words);
    this.put(near !== undefined || this.fields.has('concentration') ? 'agent' : 'product', from, to);
    this.left.splice(this.left.indexOf(first), end - first);
  }

  /** One problem for all that states a key once more, such as a second injection. */
  private repeats(): readonly Problem[] {
    const [first] = this.repeated;
    const last = this.repeated.at(-1);
    if (first === undefined || last === undefined) return [];
    const typed = this.text.slice(first.from, last.to);
    return [problemAt({ typed, from: first.from }, 'quantity/not-understood', { form: 'twice' })];
  }

  /** One problem for each run of tokens that no key takes. */
  private leftovers(): readonly Problem[] {
    const runs: { first: number; last: number }[] = [];
    for (const at of [...this.left].sort((a, b) => a - b)) {
      const run = runs.at(-1);
      if (run?.last === at - 1) run.last = at;
      else runs.push({ first: at, last: at });
    }
    return runs.map(({ first, last }) => {
      const { from } = this.tokens[first]!;
      const typed = this.text.slice(from, this.tokens[last]!.to);
      const words = this.tokens.slice(first, last + 1);
      const counts = words.some(({ text }) => /[\d/]/.test(text) || multiplying.has(text.toLowerCase()));
      return problemAt({ typed, from }, 'quantity/not-understood', { form: counts ? 'amount' : 'word' });
    });
  }
}

const statedBy: ReadonlyMap<Role | undefined, { readonly key: string; readonly says: string }> = new Map([
  ['plain', { key: 'epinephrine', says: 'none' }],
  ['unbuffered', { key: 'buffered', says: 'no' }],
  ['preservativeFree', { key: 'preservative-free', says: 'yes' }],
]);

/** What `no` and `without` say of the word after them. */
const deniedBy: ReadonlyMap<Role | undefined, { readonly key: string; readonly says: string }> = new Map([
  ['epinephrine', { key: 'epinephrine', says: 'none' }],
  ['preservative', { key: 'preservative-free', says: 'yes' }],
  ['buffer', { key: 'buffered', says: 'no' }],
]);
