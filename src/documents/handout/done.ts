import type { Facts, Section } from './model.ts';
import { placeWords } from './places.ts';
import { stitchCount, type Wound } from './wounds.ts';
import { plainWord } from '../../note/words/word-table.ts';

/**
 * Where a wound is, in plain words and in those of the note; undefined where the note does not say. In another language
 * than that of the note its words are left out.
 */
function placeOf({ reading, procedure }: Wound, { wording, tables }: Facts): string | undefined {
  const typed = procedure.site?.value;
  if (typed === undefined) return undefined;
  const place = reading === undefined ? undefined : placeWords(reading, wording.language);
  if (wording.language !== 'en') return place ?? (tables.practice.language === 'es' ? typed : undefined);
  if (place === undefined || plainWord(place) === plainWord(typed)) return typed;
  return wording.say('place-noted', { place, typed });
}

/** A sentence after the place that it is about. */
export function atPlace(wound: Wound, what: string, facts: Facts): string {
  const place = placeOf(wound, facts);
  return capital(place === undefined ? what : facts.wording.say('at-place', { place, what }));
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What was done, where, and how it was closed. */
export function doneSection(facts: Facts): Section {
  const { wounds, wording } = facts;
  return {
    heading: wording.say('done-title'),
    items: wounds.map((wound) =>
      atPlace(wound, [wording.say(wound.done), ...closureOf(wound, facts)].join(' '), facts),
    ),
  };
}

function closureOf(wound: Wound, { tables, wording }: Facts): readonly string[] {
  const count = stitchCount(wound, tables);
  const stitches = (): string => {
    if (wound.stitches === 'absorbable') return wording.say('closed-absorbable');
    if (wound.running) return wording.say('closed-running');
    if (count === undefined) return wording.say('closed-stitches');
    return count === 1 ? wording.say('closed-one-stitch') : wording.say('closed-count', { count });
  };
  return [
    ...wound.held.map((held) => (held === 'stitches' ? stitches() : wording.say(`closed-${held}`))),
    ...(wound.deep ? [wording.say('closed-deep')] : []),
  ];
}
