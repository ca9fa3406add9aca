import { check } from '../../checks/index.ts';
import type { Judgement } from '../../checks/running/run.ts';
import type { Injection, Note, PracticeProduct, Procedure } from '../../note/generated/types.ts';
import { readNote, readPractice, type Source } from '../../note/read.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Cursor } from './cursor.ts';
import type { Writing } from './writing.ts';

/** What the rest of a file says while one value of it is being typed: read only if somebody asks. */
export class Known {
  private readonly text: string;
  private read: Source<Note> | undefined;
  private judged: Judgement | undefined;

  /** The half-typed value counts as not yet known, so that it can break nothing. */
  constructor(
    text: string,
    private readonly at: Pick<Cursor, 'start' | 'end'>,
    private readonly writing: Writing,
  ) {
    const gap = text[at.start - 1] === ':' ? ' ' : '';
    this.text = `${text.slice(0, at.start)}${gap}??${text.slice(at.end)}`;
  }

  get source(): Source<Note> {
    return (this.read ??= readNote(this.text));
  }

  get note(): Note | null {
    return this.source.value;
  }

  get judgement(): Judgement {
    return (this.judged ??= check(this.source, this.writing));
  }

  /** The day of the visit, which needs no reading of the whole. */
  get visit(): IsoDate | undefined {
    return /^visit:[ \t]*(\d{4}-\d{2}-\d{2})/m.exec(this.text)?.[1];
  }

  /** The procedure in which the value is. */
  get procedure(): Procedure | undefined {
    return this.note?.procedures?.find((one) => this.holds(one));
  }

  /** The injection in which the value is. */
  get injection(): Injection | undefined {
    const { anesthetic = [], procedures = [], events = [] } = this.note ?? {};
    return [...anesthetic, ...[...procedures, ...events].flatMap((one) => one.anesthetic ?? [])].find((one) =>
      this.holds(one),
    );
  }

  /** The product of a practice's stock in which the value is. */
  get product(): PracticeProduct | undefined {
    return readPractice(this.text).value?.stock?.find((one) => this.holds(one));
  }

  private holds({ start, end }: Range): boolean {
    return start <= this.at.start && this.at.start <= end;
  }
}
