import { phrasesOf } from '../../note/words/phrases.ts';
import { scarRiskOf } from '../../followup/home-care.ts';
import type { BloodThinnerRow } from '../../reference/blood-thinners.ts';
import type { Facts, Section } from './model.ts';
import { listed } from './language.ts';
import type { Wound } from './wounds.ts';

/** What to do where it bleeds; undefined where nothing is left that could. */
export function bleedingSection({ wounds, tables, wording }: Facts): Section | undefined {
  if (!wounds.some(({ leaves }) => leaves === 'wound')) return undefined;
  const { pressMinutes, pressTimes } = tables.practice.woundCare;
  const minutes = positive(pressMinutes) ?? tables.aftercare.pressMinutes.value;
  const times = positive(pressTimes) ?? tables.aftercare.pressTimes.value;
  return {
    heading: wording.say('bleed-title'),
    items: [
      wording.say('bleed-press', { minutes }),
      ...(times > 1 ? [wording.say('bleed-again', { minutes, times })] : []),
      wording.say('bleed-call'),
    ],
  };
}

const positive = (count: number | undefined): number | undefined =>
  count === undefined || count < 1 ? undefined : count;

/** When to call. */
export function callSection({ wounds, tables, wording }: Facts): Section {
  const { feverFahrenheit, feverCelsius } = tables.aftercare;
  const sewn = wounds.some(({ held }) => held.some((one) => one !== 'open'));
  return {
    heading: wording.say('call-title'),
    items: [
      wording.say('call-fever', { fahrenheit: feverFahrenheit.value, celsius: feverCelsius.value }),
      wording.say('call-red'),
      wording.say('call-pus'),
      wording.say('call-pain'),
      ...(sewn ? [wording.say('call-open')] : []),
      ...(wounds.some(({ leaves }) => leaves === 'frozen' || leaves === 'chemical')
        ? [wording.say('call-blister')]
        : []),
      ...(wounds.some(({ covered, dressed, leaves }) => (leaves === 'wound' ? covered : dressed))
        ? [wording.say('call-rash')]
        : []),
    ],
  };
}

/** When not to wait for a call. */
export function emergencySection({ wounds, wording }: Facts): Section {
  const bleeds = wounds.some(({ leaves }) => leaves === 'wound');
  return {
    heading: wording.say('er-title'),
    items: [...(bleeds ? [wording.say('er-bleed')] : []), wording.say('er-sick'), wording.say('er-breath')],
  };
}

/** Words that say that a medicine is not taken as usual. */
const changed =
  /\b(?:stop\w*|held|hold|holding|paus\w+|off|suspend\w*|discontinu\w*|skip\w*|last dose|resum\w*|restart\w*|until|ended|finish\w*)\b/i;

interface Taken {
  readonly row: BloodThinnerRow;
  readonly asUsual: boolean;
}

/** Blood thinners that the note lists; undefined where it lists none. */
export function medicineSection({ note, tables, wording }: Facts): Section | undefined {
  const phrases = phrasesOf(tables.bloodThinners);
  const taken = (note.patient?.medications ?? []).flatMap(({ value = '' }): Taken[] => {
    const mentions = phrases.mentionsIn(value).filter(({ standing }) => standing !== 'denied');
    const named = mentions.filter(({ row }) => row.name !== 'blood thinner');
    return (named.length > 0 ? named : mentions).map(({ row, standing }) => ({
      row,
      asUsual: standing === 'asserted' && !changed.test(value),
    }));
  });
  const say = (id: string, asUsual: boolean): readonly string[] => {
    const names = taken
      .filter((one) => one.asUsual === asUsual)
      .map(({ row }) => (wording.language === 'es' ? row.spanish : row.name));
    if (names.length === 0) return [];
    return [wording.say(id, { medicine: listed([...new Set(names)], wording.language) })];
  };
  if (taken.length === 0) return undefined;
  return {
    heading: wording.say('medicine-title'),
    items: [...say('medicine-keep', true), ...say('medicine-ask', false)],
  };
}

/** The mark that a biopsy leaves, and the sun; undefined where the skin was only pricked. */
export function scarSection({ note, wounds, tables, wording }: Facts): Section | undefined {
  if (wounds.every(({ leaves }) => leaves === 'prick')) return undefined;
  const prone =
    wounds.some(({ reading }) => reading?.base.keloidProne === true) ||
    scarRiskOf(note, tables.followUp) !== undefined;
  return {
    heading: wording.say('scar-title'),
    items: [
      ...(wounds.some(({ takesTissue }) => takesTissue)
        ? [wording.say(wounds.every(isRemoval) ? 'scar-place' : 'scar-mark')]
        : []),
      wording.say('scar-sun'),
      ...(prone ? [wording.say('scar-thick')] : []),
    ],
  };
}

/** Whether something was taken off and not sent, so that nobody would call it a biopsy. */
const isRemoval = ({ procedure: { specimen = [] } }: Wound): boolean =>
  specimen.length > 0 && specimen.every(({ notSent }) => notSent?.value !== undefined);
