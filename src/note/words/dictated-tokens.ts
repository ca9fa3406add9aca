import { unitOf, type Kind } from '../values/units.ts';

/** A piece of a dictated line, at characters `from` to `to` of it. */
export interface Token {
  readonly kind: 'quantity' | 'ratio' | 'number' | 'word' | 'mark';
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** Of a quantity: what its unit measures. */
  readonly of?: Kind;
  /** Of a quantity in words: the same in figures. */
  readonly says?: string;
}

const blanks = /\s*/y;
/** `1:100,000`, `9:1`, `10:13`, `1 in 100,000`; only thousands may be after a space. */
const ratio =
  /\d{1,4}(?:\s?:\s?|\s+in\s+)\d+(?:(?:[,.'\u00a0\u202f]\d{3}|\s000)(?!\d))*(?:k\b)?(?:\s?[ap]\.?m\b\.?)?/iy;
/** A number, or two with a sign of a range or fraction between them: the reader of the quantity says what is wrong with that. */
const number =
  /(?:(?:\d+\s?)?[½¼¾](?!\d)|\d(?:[\d.,]*\d)?|[.,]\d+)(?:\s?[-–/]\s?(?:\d(?:[\d.,]*\d)?|[.,]\d+))?/y;
const unit = /\s?(%|[a-zµμ]+(?:\s?\/\s?|\s+per\s+)[a-z]+|(?:sq|square)\s+[a-z]+|per\s?cent|[a-zµμ]+[2²]?)/iy;
const shortUnit = /\s?([a-zµμ]+)/iy;
/** Digits that follow letters are no amount, nor are their decimals: of `x1.5 mL` nobody knows the volume. */
const word = /[wW]\/(?:[oO]\b)?|[\p{L}][\p{L}\d]*(?:['’-]\p{L}+)*\d*(?:(?<=\d)[.,]\d+)*/uy;
/** Names such as 2-chloroprocaine. */
const wordWithLocant = /\d-[A-Za-z]{3,}/y;

const digits = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const ten = [...digits, 'ten'];
const digitWord = digits.join('|');
/** `one percent`, `half a mL`, `point five mL`, `one and a half mL`, `one point two five percent`. */
const spelled = new RegExp(
  `(?:(?:(${ten.join('|')})\\s+)?point((?:\\s+(?:${digitWord}))+)|(?:(${ten.join('|')})\\s+and\\s+)?(?:an?\\s+|one\\s+)?(half|quarter)(?:\\s+of)?(?:\\s+an?)?|(${ten.join('|')}))` +
    `\\s+(ml|cc|milliliters?|millilitres?|percent|per\\s+cent)\\b`,
  'iy',
);
/** After these a number in words is only the rest of one. */
const inNumber =
  /(?:\b(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty|hundred|thousand|point|and(?:\s+an?)?|half|quarter|minus)|[\d.,/½¼¾-])\s*$/i;

/** A quantity in words; undefined where none begins, or where it is the rest of a longer number. */
function spelledAt(text: string, at: number): Token | undefined {
  spelled.lastIndex = at;
  const match = spelled.exec(text);
  if (match === null || inNumber.test(text.slice(Math.max(0, at - 20), at))) return undefined;
  const [typed, before, decimals, whole, part, alone, unitText = ''] = match;
  const valueOf = (word: string | undefined): number =>
    word === undefined ? 0 : ten.indexOf(word.toLowerCase());
  const fraction = part === undefined ? 0 : part.toLowerCase() === 'half' ? 0.5 : 0.25;
  const amount =
    decimals === undefined
      ? String(valueOf(alone ?? whole) + fraction)
      : `${valueOf(before)}.${decimals.trim().split(/\s+/).map(valueOf).join('')}`;
  const isStrength = /^per/i.test(unitText);
  return {
    ...token('quantity', text, at, typed.length),
    of: isStrength ? 'concentration' : 'volume',
    says: `${amount}${isStrength ? '%' : ' mL'}`,
  };
}

/** The kinds of amount that an injection can have. `cm` and `mm` are none of them. */
const amounts: readonly Kind[] = ['volume', 'amount', 'concentration', 'area'];

const usualUnits: ReadonlyMap<string, Kind> = new Map([
  ['mL', 'volume'],
  ['ml', 'volume'],
  ['%', 'concentration'],
  ['mg/mL', 'concentration'],
  ['g', 'amount'],
]);

/** Cuts a line into quantities, ratios, numbers, words and marks. Nothing but spaces is left out. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = matchAt(blanks, text, 0)?.length ?? 0;
  while (at < text.length) {
    const token = tokenAt(text, at);
    tokens.push(token);
    at = token.to + (matchAt(blanks, text, token.to)?.length ?? 0);
  }
  return tokens;
}

function tokenAt(text: string, at: number): Token {
  if (!/[\d.,½¼¾]/.test(text[at]!)) {
    const inWords = spelledAt(text, at);
    if (inWords !== undefined) return inWords;
    const wordText = matchAt(word, text, at);
    return token(wordText === undefined ? 'mark' : 'word', text, at, wordText?.length ?? 1);
  }
  const ratioText = matchAt(ratio, text, at);
  if (ratioText !== undefined) return token('ratio', text, at, ratioText.length);
  const name = matchAt(wordWithLocant, text, at);
  if (name !== undefined) return token('word', text, at, name.length);
  const numberText = matchAt(number, text, at);
  if (numberText === undefined) return token('mark', text, at, 1);
  return quantityAt(text, at, numberText.length) ?? token('number', text, at, numberText.length);
}

function quantityAt(text: string, at: number, numberLength: number): Token | undefined {
  for (const form of [unit, shortUnit]) {
    const typed = matchAt(form, text, at + numberLength);
    const of = typed && kindOf(typed.trim());
    if (of) return { ...token('quantity', text, at, numberLength + typed.length), of };
  }
  return undefined;
}

function kindOf(unitText: string): Kind | undefined {
  const known = usualUnits.get(unitText);
  if (known !== undefined) return known;
  const words = unitText.replace(/\s+/g, ' ');
  return amounts.find((kind) => unitOf(kind, words) !== undefined);
}

function token(kind: Token['kind'], text: string, from: number, length: number): Token {
  return { kind, text: text.slice(from, from + length), from, to: from + length };
}

function matchAt(form: RegExp, text: string, at: number): string | undefined {
  form.lastIndex = at;
  return form.exec(text)?.[0];
}
