import type { Picture } from '../pictures/picture.ts';
import type { Plan } from '../../followup/schedule.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Language } from '../../note/words/language.ts';
import type { Avoided, Ointment } from './ointment.ts';
import type { Wording } from './wording.ts';
import type { Wound } from './wounds.ts';

export interface Section {
  readonly heading: string;
  readonly items: readonly string[];
}

/** What a patient takes home, as plain data in one language. */
export interface Handout {
  readonly readable: true;
  readonly language: Language;
  readonly title: string;
  /** Of a mail: read over shoulders, so neither patient nor procedure are in it. */
  readonly subject: string;
  /** Name of the practice; empty where it has none. */
  readonly practice: string;
  /** Day of the visit and chart number, as far as they are known. */
  readonly header: readonly string[];
  /** Day and chart number alone, for the foot of every page. */
  readonly whose: string;
  readonly sections: readonly Section[];
  readonly foot: readonly string[];
  /** Where the wounds are, drawn when it is asked for; without the genital area. */
  readonly place: () => Picture | undefined;
  readonly largePrint: boolean;
  /** Address for a mail draft, where the note has one that can be used. */
  readonly mailTo: string | undefined;
  /** For whoever hands it out, in English: what to look at first. None of it is for the patient. */
  readonly remarks: readonly string[];
}

export interface NoHandout {
  readonly readable: false;
  readonly why: string;
}

/** All that the sections are made of. */
export interface Facts {
  readonly note: Note;
  readonly tables: Tables;
  readonly plan: Plan;
  readonly wounds: readonly Wound[];
  readonly avoided: Avoided;
  readonly ointment: Ointment;
  readonly wording: Wording;
}
