import type { IsoDate } from '../note/values.ts';
import type { NoteFacts } from './caseload.ts';

type Rest = Pick<NoteFacts, 'unread' | 'labels' | 'planned' | 'undated'>;

/** Patient, visit, the day from which on the row is right, and whether anything is open. */
type Head = readonly [patient: string | null, visit: string | null, settled: IsoDate, open: boolean];

/**
 * The facts of a note as one row of text without line breaks: first what is asked of every note, then the rest, which
 * is read only where something is open. What is done is left out: from the day on which the last of it was done the row
 * says the same as the note, and before that day it says nothing.
 */
export function rowOfFacts({
  patient,
  visit,
  closedFrom,
  unread,
  labels,
  planned,
  undated,
}: NoteFacts): string {
  const settled = planned
    .map(({ done = '' }) => done)
    .reduce((last, done) => (done > last ? done : last), '');
  const head: Head = [patient ?? null, visit ?? null, settled, closedFrom === undefined];
  const rest = { unread, labels, planned: planned.filter(({ done }) => done === undefined), undated };
  return `${JSON.stringify(head)}\t${JSON.stringify(rest)}`;
}

/**
 * The facts that a row keeps, for a day; undefined where the row does not reach so far back.
 * @throws SyntaxError for what is no such row
 */
export function factsOfRow(row: string, today: IsoDate): NoteFacts | undefined {
  const end = row.indexOf('\t');
  const [patient, visit, settled, open] = JSON.parse(row.slice(0, end)) as Head;
  if (settled > today) return undefined;
  return new KeptFacts(
    patient ?? undefined,
    visit ?? undefined,
    open ? undefined : settled,
    row.slice(end + 1),
  );
}

class KeptFacts implements NoteFacts {
  private read: Rest | undefined;

  constructor(
    readonly patient: string | undefined,
    readonly visit: string | undefined,
    readonly closedFrom: string | undefined,
    private readonly text: string,
  ) {}

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

  private get rest(): Rest {
    return (this.read ??= JSON.parse(this.text) as Rest);
  }
}
