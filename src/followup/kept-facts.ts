import type { IsoDate } from '../note/values/values.ts';
import type { NoteFacts, Spot } from './caseload.ts';

declare const WHEAL_BUILD: string;

/**
 * A digest of the code and the tables that facts follow from. Undefined where they run unbuilt: they may change at any
 * moment, so nothing that an earlier process kept can be believed.
 */
export const builtFrom: string | undefined = typeof WHEAL_BUILD === 'string' ? WHEAL_BUILD : undefined;

type Rest = Pick<NoteFacts, 'bornAt' | 'unread' | 'labels' | 'planned' | 'undated'>;

/** Characters of a date, or of the spaces that mean none. */
const dateLength = 10;
const settledAt = 1;
const visitAt = settledAt + dateLength;
const birthAt = visitAt + dateLength;
const patientAt = birthAt + dateLength;

const dated = (date = ''): string => date.padEnd(dateLength);
const dateIn = (text: string, at: number): IsoDate => text.slice(at, at + dateLength).trimEnd();

/**
 * The facts of a note as one row of text without line breaks: first what is asked of every note, at fixed places, then
 * the rest, which is read only where something is open. What is done is left out: from the day on which the last of it
 * was done the row says the same as the note, and before that day it says nothing.
 */
export function rowOfFacts({
  patient,
  visit,
  born,
  bornAt,
  closedFrom,
  unread,
  labels,
  planned,
  undated,
}: NoteFacts): string {
  const settled = planned
    .map(({ done = '' }) => done)
    .reduce((last, done) => (done > last ? done : last), '');
  const open = planned.filter(({ done }) => done === undefined);
  const rest: Rest = { bornAt, unread, labels, planned: open, undated };
  const head = `${closedFrom === undefined ? 'o' : 'c'}${dated(settled)}${dated(visit)}${dated(born)}`;
  return `${head}${patient === undefined ? '' : JSON.stringify(patient)}\t${JSON.stringify(rest)}`;
}

/**
 * The facts that a row keeps, for a day; undefined where the row does not reach so far back. What is asked for is cut
 * out of the text only then, since there may be thousands of rows.
 * @param text holds the row from `start` to `end`
 */
export function factsOfRow(
  text: string,
  today: IsoDate,
  start = 0,
  end = text.length,
): NoteFacts | undefined {
  return dateIn(text, start + settledAt) > today ? undefined : new KeptFacts(text, start, end);
}

class KeptFacts implements NoteFacts {
  private read: Rest | undefined;

  constructor(
    private readonly text: string,
    private readonly start: number,
    private readonly end: number,
  ) {}

  get patient(): string | undefined {
    const written = this.text.slice(this.start + patientAt, this.patientEnd);
    if (written === '') return undefined;
    return written.includes('\\') ? (JSON.parse(written) as string) : written.slice(1, -1);
  }

  get visit(): IsoDate | undefined {
    return dateIn(this.text, this.start + visitAt) || undefined;
  }

  get born(): IsoDate | undefined {
    return dateIn(this.text, this.start + birthAt) || undefined;
  }

  get bornAt(): Spot | undefined {
    return this.rest.bornAt;
  }

  get closedFrom(): IsoDate | undefined {
    return this.text[this.start] === 'c' ? dateIn(this.text, this.start + settledAt) : undefined;
  }

  get unread(): string | undefined {
    return this.rest.unread;
  }

  get labels(): NoteFacts['labels'] {
    return this.rest.labels;
  }

  get planned(): NoteFacts['planned'] {
    return this.rest.planned;
  }

  get undated(): NoteFacts['undated'] {
    return this.rest.undated;
  }

  private get patientEnd(): number {
    return this.text.indexOf('\t', this.start + patientAt);
  }

  private get rest(): Rest {
    return (this.read ??= JSON.parse(this.text.slice(this.patientEnd + 1, this.end)) as Rest);
  }
}
