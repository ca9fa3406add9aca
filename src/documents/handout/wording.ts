import { plain } from '../one-line.ts';
import type { HandoutFacts } from '../../practice/settings.ts';
import type { Language } from '../../note/words/language.ts';
import { argumentsIn, catalogue, type Sentence } from './sentences/index.ts';

type Arguments = Readonly<Record<string, string | number>>;

const oneLine = (text: string): string => plain(text).replace(/\s+/g, ' ').trim();

/** Says the sentences of the catalogue in one language, in the practice's words where it has its own. */
export class Wording {
  private draft = false;

  constructor(
    readonly language: Language,
    private readonly own: HandoutFacts['sentences'],
  ) {}

  /** A sentence with its gaps filled in, on one line and free of characters that command. */
  say(id: string, args: Arguments = {}): string {
    const sentence = sentenceOf(id);
    const own = this.own[this.language].get(id);
    if (own === undefined || own === '') this.draft ||= sentence.review === 'draft';
    const template = own === undefined || own === '' ? sentence[this.language] : own;
    return oneLine(template).replace(
      /\{(\w+)\}(?:( \p{L}+)|(\.))?/gu,
      (gap, name: string, noun?: string, point?: string) => {
        const value = Object.hasOwn(args, name) ? args[name] : undefined;
        if (value === undefined) return gap;
        return afterwards(oneLine(String(value)), noun, point);
      },
    );
  }

  /** Whether anything said so far has not been reviewed. */
  get isDraft(): boolean {
    return this.draft;
  }
}

/** A value with what is after its gap: a noun agrees with 1, and a name that ends in a point needs no other. */
function afterwards(value: string, noun = '', point = ''): string {
  if (value === '1') return `${value}${ofOne.get(noun) ?? noun}${point}`;
  return `${value}${noun}${value.endsWith('.') ? '' : point}`;
}

/** Nouns after a number, as they are after 1. */
const ofOne: ReadonlyMap<string, string> = new Map([
  [' hours', ' hour'],
  [' days', ' day'],
  [' minutes', ' minute'],
  [' times', ' time'],
  [' horas', ' hora'],
  [' días', ' día'],
  [' minutos', ' minuto'],
  [' veces', ' vez'],
]);

function sentenceOf(id: string): Sentence {
  const sentence = catalogue.get(id);
  if (sentence === undefined) throw new Error(`no sentence is called ${id}`);
  return sentence;
}

/** What is wrong with the practice's own sentences, in words for whoever hands them out. */
export function faultsOfOwn(own: HandoutFacts['sentences'], language: Language): readonly string[] {
  return [...own[language]].flatMap(([id, text]) => {
    const sentence = catalogue.get(id);
    if (sentence === undefined)
      return [`the practice file replaces the sentence "${id}", and there is none of that name`];
    const known = argumentsIn(sentence.en);
    const lost = [...argumentsIn(text)].filter((name) => !known.has(name));
    return lost.map((name) => `the practice's sentence "${id}" has {${name}} in it, which nothing fills in`);
  });
}
