import type { NoteFacts } from './caseload.ts';

/**
 * The facts of a note as one row of text without line breaks: first what is asked of every note, then the rest, which
 * is only read where something is open.
 */
export function rowOfFacts({ patient, visit, closedFrom, ...rest }: NoteFacts): string {
  return `${JSON.stringify([patient ?? null, visit ?? null, closedFrom ?? null])}\t${JSON.stringify(rest)}`;
}

type Rest = Omit<NoteFacts, 'patient' | 'visit' | 'closedFrom'>;

/** The facts that a row keeps. @throws SyntaxError for what is no such row */
export function factsOfRow(row: string): NoteFacts {
  const end = row.indexOf('\t');
  const [patient, visit, closedFrom] = JSON.parse(row.slice(0, end)) as (string | null)[];
  return new KeptFacts(patient ?? undefined, visit ?? undefined, closedFrom ?? undefined, row.slice(end + 1));
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
