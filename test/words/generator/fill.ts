import { placesOf, reactions, relatives, type Group } from './cues.ts';
import { otherKind, sameKind } from './harmless.ts';
import type { Random } from './random.ts';

export interface Names {
  readonly group: Group;
  readonly row: string;
  readonly word: string;
  /** Another danger of the same kind. */
  readonly other: string;
}

const afterArticle =
  /\b(?:has|had|having|have|with|w\/|than|but|except|of|mention|mentioned|reports|denies)$/;

/** The name as something that one has: an allergy to it, or a device with its article. */
function possession({ group, word }: Names, before: string, random: Random): string {
  if (group === 'allergy') return random.chance(0.7) ? `${word} allergy` : `allergy to ${word}`;
  if (
    group !== 'implant' ||
    word.endsWith('stimulation') ||
    !afterArticle.test(before.trim()) ||
    random.chance(0.3)
  )
    return word;
  return `${/^[aeiou]|^(?:ICD|ILR|ICM|LVAD|SNS|SCS)\b/i.test(word) ? 'an' : 'a'} ${word}`;
}

/** Two or three names with the danger among them. */
function names({ word, other, group }: Names, least: number, random: Random): readonly string[] {
  const harmless = random.pick(sameKind[group]);
  const chosen =
    least === 2 && random.chance(0.4) ? [word, random.pick([other, harmless])] : [word, other, harmless];
  return random.shuffled(chosen);
}

function joined(list: readonly string[], word: string, random: Random): string {
  const last = list.at(-1) ?? '';
  const comma = list.length > 2 && random.chance(0.4) ? ',' : '';
  return `${list.slice(0, -1).join(', ')}${comma} ${word} ${last}`;
}

/** Fills the placeholders of a wording; `{Y}` is a year after `{y}`. */
export function fill(template: string, words: Names, random: Random): string {
  const year = random.between(1998, 2021);
  const parts: Readonly<Record<string, (before: string) => string>> = {
    x: () => words.word,
    z: () => words.other,
    n: (before) => possession(words, before, random),
    o: () => random.pick(sameKind[words.group]),
    m: () => random.pick(otherKind[words.group]),
    r: () => random.pick(reactions),
    k: () => random.pick(relatives),
    p: () => random.pick(placesOf(words.row)),
    y: () => String(year),
    Y: () => String(year + random.between(1, 3)),
    any: () => joined(names(words, 2, random), 'or', random),
    all: () => joined(names(words, 2, random), 'and', random),
    comma: () => names(words, 3, random).join(', '),
  };
  return template.replaceAll(/\{(\w+)\}/g, (hole, name: string, at: number) => {
    const part = parts[name];
    if (part === undefined) throw new Error(`nothing fills ${hole}`);
    return part(template.slice(0, at));
  });
}
