import type { DoseJudgement } from '../dose/judge.ts';
import type { Finding, Fix, Problem, Report, Severity } from '../note/tree/finding.ts';
import type { Sourced } from '../reference/types.ts';
import type { Note, Procedure } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';

/** What a check may ask. */
export interface Subject {
  readonly note: Note;
  readonly source: Source<Note>;
  readonly tables: Tables;
  /** The day on which the note is judged; undefined where nobody said. */
  readonly today: IsoDate | undefined;
  /** The dose of the visit, worked out once. */
  readonly dose: DoseJudgement;
  /** What the words of a procedure's site say, worked out once. */
  readonly siteOf: (procedure: Procedure) => SiteReading | undefined;
  /** What reading and the schema noticed under a code. */
  readonly problems: (code: string) => readonly Problem[];
  /** What was worked out for several checks, by the function that did it. */
  readonly answers: Map<unknown, object>;
  /** The codes of every check that there is. */
  readonly codes: readonly string[];
}

/** What a fix may ask: the text of its finding, and the words of the practice. */
export interface FixPlace {
  readonly text: string;
  readonly tables: Tables;
}

/** Another reading of what was typed; `service/code-actions/alternatives.ts` has a function for each. */
export type AlternativeName =
  'tenth' | 'tenth-of-one-dose' | 'point-moved' | 'in-ml' | 'zero-more' | 'other-date' | 'working-day';

/** How the record itself may be wrong where a check finds something. */
export interface Alternatives {
  /** How else the typed text may be read, the likeliest first; with none only `??` is offered for the value. */
  readonly readAs: readonly AlternativeName[];
  /** The only forms of the finding that put the value in doubt; all where none is named. */
  readonly forms?: readonly string[];
  /** Whether `??` is offered even if a milder finding shows then, which this one hid. */
  readonly mayLeaveMilder?: true;
}

/** Where published sources differ: what is followed here, and which keys of the practice file follow another. */
export interface SourcesDiffer {
  /** How the sources differ, and which is followed. */
  readonly how: string;
  /** Keys of the practice file, a key inside of another after a point; none where nothing may follow another. */
  readonly settings: readonly string[];
}

/** A danger that a text leaves open: the key of the patient under which an entry belongs, and what it names. */
export interface Unclear {
  readonly key: 'allergies' | 'implants' | 'conditions' | 'medications';
  readonly name: string;
}

/** One thing that can be wrong with a note: what it is called, why it matters, and how it is found. */
export interface Check {
  /** `family/what`, never changed once published. */
  readonly code: string;
  readonly severity: Severity;
  /** What it finds, in a few words. */
  readonly title: string;
  /** Why it matters, in one or two sentences. */
  readonly why: string;
  readonly sources: readonly Sourced[];
  /** Templates by form, with `{name}` for arguments; the form `main` is used where none is named. */
  readonly messages: Readonly<Record<string, string>>;
  /** Severities of forms that are less grave than the check. */
  readonly milder?: Readonly<Partial<Record<string, Severity>>>;
  /** Absent where the check only gives words and severity to what reading noticed under its code. */
  readonly find?: (subject: Subject) => readonly Report[];
  /** The key whose absence a finding of this check reports, so that it can be put in as `??`. */
  readonly misses?: (finding: Finding) => string | undefined;
  /** Whether it finds a value that is only begun; then the finding waits until its part is left. */
  readonly unfinished?: true;
  /** Fixes for one finding of this check, made for the text that it was found in. */
  readonly fix?: (place: FixPlace, finding: Finding) => readonly Fix[];
  /** Absent where the value that is found is no matter of doubt. */
  readonly alternatives?: Alternatives;
  /** Absent where the sources agree, or there is one. */
  readonly sourcesDiffer?: SourcesDiffer;
  /** What a finding of this check leaves open; undefined where it leaves nothing open. */
  readonly unclear?: (finding: Finding) => Unclear | undefined;
  /** What is to be done now by form, where no edit undoes what happened. */
  readonly nextStep?: Readonly<Partial<Record<string, string>>>;
}
