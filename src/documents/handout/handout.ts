import { factsOn } from '../../dose/patient.ts';
import { planOf } from '../../followup/schedule.ts';
import { messageOf, type Judgement } from '../../checks/index.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Source } from '../../note/read.ts';
import type { Tables } from '../../practice/tables.ts';
import { mailAddress } from '../mail/draft.ts';
import { plain } from '../one-line.ts';
import { placePicture } from '../pictures/place.ts';
import type { Picture } from '../pictures/picture.ts';
import { careSection, normalSection, treatedSection } from './care.ts';
import { resultSection, stitchesSection } from './dates.ts';
import { doneSection } from './done.ts';
import { languageOf, type Language } from '../../note/words/language.ts';
import { dateWords } from './language.ts';
import type { Facts, Handout, NoHandout, Section } from './model.ts';
import { avoidedBy, ointmentFor } from './ointment.ts';
import { bleedingSection, callSection, emergencySection, medicineSection, scarSection } from './watch.ts';
import { faultsOfOwn, Wording } from './wording.ts';
import { placeWords } from './places.ts';
import { woundOf, type Wound } from './wounds.ts';

export interface HandoutContext {
  readonly tables: Tables;
  /** The language asked for; undefined for that of the note or the practice. */
  readonly language: Language | undefined;
}

/**
 * What a patient takes home after a visit: only what applies to this patient and follows from this note. Of what is
 * not yet known (`??`) nothing is said.
 */
export function handoutOf(
  { value: note }: Source<Note>,
  { findings }: Judgement,
  { tables, language }: HandoutContext,
): Handout | NoHandout {
  const errors = findings.filter(({ severity }) => severity === 'error');
  if (note === null) {
    const why = errors[0] === undefined ? 'There is no note in this file.' : messageOf(errors[0]);
    return { readable: false, why };
  }
  if ((note.procedures ?? []).length === 0) return { readable: false, why: 'The note names no procedure.' };
  const facts = factsOf(note, tables, language);
  const { wording } = facts;
  const practice = plain(tables.practice.name);
  const sections = sectionsOf(facts);
  return {
    readable: true,
    language: wording.language,
    title: wording.say('title'),
    subject: practice === '' ? wording.say('subject') : wording.say('subject-from', { practice }),
    practice,
    header: [...whoseOf(facts), ...headerOf(facts)],
    whose: whoseOf(facts).join(' '),
    sections,
    foot: [wording.say('foot-told'), ...(wording.isDraft ? [wording.say('foot-review')] : [])],
    place: () => placeOf(facts),
    largePrint: tables.practice.handout.largePrint,
    mailTo: mailAddress(note.patient?.email?.value ?? ''),
    remarks: [
      ...(errors.length === 0
        ? []
        : [`the note has ${errors.length === 1 ? 'an error' : `${errors.length} errors`}`]),
      ...remarksOf(facts),
    ],
  };
}

function factsOf(note: Note, tables: Tables, asked: Language | undefined): Facts {
  const noted = languageOf(note.aftercare?.language?.value ?? '');
  const avoided = avoidedBy(note, tables);
  return {
    note,
    tables,
    plan: planOf(note, tables),
    wounds: (note.procedures ?? []).map((procedure) => woundOf(procedure, tables)),
    avoided,
    ointment: ointmentFor(tables.practice.woundCare.ointment, avoided, tables),
    wording: new Wording(asked ?? noted ?? tables.practice.language, tables.practice.handout.sentences),
  };
}

function sectionsOf(facts: Facts): readonly Section[] {
  return [
    doneSection(facts),
    careSection(facts),
    treatedSection(facts),
    stitchesSection(facts),
    normalSection(facts),
    bleedingSection(facts),
    callSection(facts),
    emergencySection(facts),
    medicineSection(facts),
    resultSection(facts),
    scarSection(facts),
    phoneSection(facts),
  ].filter((section) => section !== undefined);
}

/** Where the wounds are, in plain words; what may be private is not on a paper that is about at home. */
function placeOf({ note, tables, wounds, wording }: Facts): Picture | undefined {
  const { language } = wording;
  return placePicture(note, tables, {
    language,
    intimate: false,
    nameOf: (index) => {
      const reading = wounds[index]?.reading;
      return reading && placeWords(reading, language);
    },
  });
}

/** Younger than this, somebody else reads it for the patient. */
const childMonths = 12 * 12;

function whoseOf({ note, wording }: Facts): readonly string[] {
  const visit = note.visit?.value?.date;
  const chart = note.patient?.id?.value;
  return [
    ...(visit === undefined ? [] : [wording.say('visit', { date: dateWords(visit, wording.language) })]),
    ...(chart === undefined ? [] : [wording.say('chart', { chart })]),
  ];
}

function headerOf({ note, wording }: Facts): readonly string[] {
  const { months } = factsOn(note, note.visit?.value?.date);
  return months !== undefined && months < childMonths ? [wording.say('for-child')] : [];
}

function phoneSection({ tables, wording }: Facts): Section {
  const { telephone, afterHours } = tables.practice;
  return {
    heading: wording.say('phone-title'),
    items: [
      telephone === '' ? wording.say('phone-blank') : wording.say('phone', { phone: telephone }),
      ...(afterHours === '' ? [] : [wording.say('phone-after-hours', { phone: afterHours })]),
    ],
  };
}

/** What whoever hands it out should look at first. */
function remarksOf(facts: Facts): readonly string[] {
  const { note, tables, wording, plan } = facts;
  const { telephone, handout } = tables.practice;
  const wanted = note.aftercare?.language?.value ?? '';
  const email = note.patient?.email?.value ?? '';
  const remarks: readonly (readonly [boolean, string])[] = [
    [telephone === '', 'there is no telephone number in the practice file: write one into the blank'],
    [
      wanted !== '' && languageOf(wanted) === undefined,
      `the note asks for "${wanted}", and there are handouts in English and Spanish only`,
    ],
    [email !== '' && mailAddress(email) === undefined, 'the mail address of the note can not be used'],
    [
      wording.language === 'es' && tables.practice.language !== 'es' && facts.wounds.some(isWithoutWords),
      'a site of the note has no Spanish words and is left out: say where it is',
    ],
    [
      plan.undated.some(({ kind }) => kind === 'suture removal'),
      'no day is known for taking the stitches out',
    ],
  ];
  return [
    ...remarks.flatMap(([applies, words]) => (applies ? [words] : [])),
    ...ointmentRemarks(facts),
    ...faultsOfOwn(handout.sentences, wording.language),
  ].map(plain);
}

/** Whether a wound has a site for which there are no words in Spanish. */
const isWithoutWords = ({ reading, procedure }: Wound): boolean =>
  procedure.site?.value !== undefined && (reading === undefined || placeWords(reading, 'es') === undefined);

function ointmentRemarks({ ointment, tables }: Facts): readonly string[] {
  if (ointment.kind !== 'exchanged') return [];
  const usual = tables.practice.woundCare.ointment || 'petrolatum';
  return [
    ointment.why === 'allergy'
      ? `"${usual}" does not go with the patient's allergies and is left out`
      : `the note does not settle the patient's allergies, so petrolatum stands in place of "${usual}"`,
  ];
}
