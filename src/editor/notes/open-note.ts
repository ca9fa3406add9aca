import type * as vscode from 'vscode';
import type { Finding } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import {
  afterEdit,
  afterMove,
  afterNews,
  afterPause,
  atRest,
  diagnosticsOf,
  type Analysis,
  type Caret,
  type Change,
  type Diagnostic,
  type ElsewhereOf,
  shownFindings,
  type Shown,
} from '../../service/index.ts';
import { Timer } from '../host/clock.ts';
import type { FoundPractice } from '../host/practices.ts';
import { changeBetween, overRows } from './change.ts';

/** Milliseconds after an edit over several lines, as a paste or a line break, until the note is judged. */
const debounce = 200;
/** Milliseconds after the last key until a finished danger shows on the line that is typed. */
const pause = 1000;

/** What a text is judged by, beside itself. */
export interface Around {
  readonly practice: FoundPractice;
  readonly today: string;
  readonly elsewhereOf?: ElsewhereOf;
}

/** What an open note asks of the editor, and where it shows what it found. */
export interface Surroundings {
  readonly practiceOf: (uri: vscode.Uri) => Promise<FoundPractice>;
  readonly analyse: (uri: vscode.Uri, text: string, around: Around) => Analysis;
  readonly elsewhereOf: (uri: vscode.Uri, note: Note | null) => ReturnType<ElsewhereOf>;
  readonly today: () => string;
  readonly caret: (document: vscode.TextDocument) => Caret | undefined;
  /** Shows the diagnostics of a file in the place of those before. */
  readonly publish: (uri: vscode.Uri, diagnostics: readonly Diagnostic[]) => void;
  /** What shows of a note has changed. */
  readonly judged: (note: OpenNote) => void;
  /** A check has thrown an error. */
  readonly failed: (check: string) => void;
}

interface Known extends Pick<Around, 'practice' | 'today'> {
  readonly analysis: Analysis;
}

/** One open document, and the only owner of its text, its analysis, its timers and its diagnostics. */
export class OpenNote {
  /** The note, once its practice file is known and it was judged; undefined where it was closed before that. */
  readonly ready: Promise<OpenNote | undefined>;
  private readonly settling = new Timer();
  private readonly pausing = new Timer();
  /** Undefined until it is known; the text is read only then, so that earlier events need nothing done. */
  private practice: FoundPractice | undefined;
  private known: Known | undefined;
  private shown: Shown = { text: '', findings: [], held: [], typing: undefined };
  /** Undefined until something was published: a check of the folder may have left diagnostics. */
  private published: readonly Diagnostic[] | undefined;
  /** The text after the last edit; `shown` may lag after it. */
  private text = '';
  private isClosed = false;

  constructor(
    readonly document: vscode.TextDocument,
    private readonly around: Surroundings,
  ) {
    this.ready = this.begin();
  }

  /** The text as it is now, read and judged; only of a note that is ready. */
  get analysis(): Analysis {
    return this.analyse(this.document.getText());
  }

  /** What the editor shows of it now. */
  get diagnostics(): readonly Diagnostic[] {
    return this.published ?? [];
  }

  /** Shows everything: the note was opened, saved by hand, left, or changed by a fix. */
  rest(): void {
    if (this.practice === undefined) return;
    this.settling.clear();
    this.pausing.clear();
    this.text = this.document.getText();
    this.update(atRest(this.text, this.judge));
  }

  /** The text was edited. At once: several keys may arrive together, and each meets the text as that key has left it. */
  edited(changes: readonly vscode.TextDocumentContentChangeEvent[]): void {
    if (this.practice === undefined) return;
    const before = this.text;
    this.text = this.document.getText();
    const [first, ...others] = changes;
    if (first === undefined || before === this.text) return;
    this.pausing.set(pause, () => {
      this.paused();
    });
    const change =
      others.length === 0
        ? {
            start: first.rangeOffset,
            end: first.rangeOffset + first.rangeLength,
            inserted: first.text,
          }
        : changeBetween(before, this.text);
    if (overRows(before, change)) {
      this.settling.set(debounce, () => {
        this.catchUp(this.text, this.around.caret(this.document));
      });
      return;
    }
    // A line that is only being typed must not be judged together with the lines before it.
    if (this.settling.isSet) this.catchUp(before, first.range.start);
    this.update(afterEdit(this.shown, this.text, change, first.range.start, this.judge));
  }

  /** The caret has moved. */
  moved(caret: Caret): void {
    if (this.practice === undefined || this.settling.isSet) return;
    this.update(afterMove(this.shown, caret, this.judge));
  }

  /** Other notes of its folder have changed, and it is judged by them too. */
  reconsider(): void {
    this.known = undefined;
    if (this.practice === undefined || this.settling.isSet) return;
    this.update(afterNews(this.shown, this.around.caret(this.document), this.judge));
  }

  /** Another practice file may count by now. */
  async reload(): Promise<void> {
    await this.ready;
    const practice = await this.around.practiceOf(this.document.uri);
    if (this.isClosed || this.document.isClosed) return;
    this.practice = practice;
    this.rest();
  }

  /** The document is closed: nothing is judged or published any more. */
  dispose(): void {
    this.isClosed = true;
    this.settling.clear();
    this.pausing.clear();
  }

  private async begin(): Promise<OpenNote | undefined> {
    const practice = await this.around.practiceOf(this.document.uri);
    if (this.isClosed || this.document.isClosed) return undefined;
    this.practice = practice;
    this.text = this.document.getText();
    // A note that was just begun is being written, though its first lines came before anybody could look.
    const caret = this.document.isUntitled ? this.around.caret(this.document) : undefined;
    const begun: Shown = { text: this.text, findings: [], held: [], typing: undefined };
    this.update(caret === undefined ? atRest(this.text, this.judge) : afterNews(begun, caret, this.judge));
    return this;
  }

  private analyse(text: string): Analysis {
    const practice = this.practice!;
    const today = this.around.today();
    const { known } = this;
    if (known?.analysis.text === text && known.practice === practice && known.today === today)
      return known.analysis;
    const { uri } = this.document;
    const analysis = this.around.analyse(uri, text, {
      practice,
      today,
      elsewhereOf: (note) => this.around.elsewhereOf(uri, note),
    });
    this.known = { analysis, practice, today };
    for (const { check } of analysis.judgement.failures) this.around.failed(check);
    return analysis;
  }

  private readonly judge = (text: string): readonly Finding[] => shownFindings(this.analyse(text), true);

  private paused(): void {
    if (this.settling.isSet) return;
    const caret = this.around.caret(this.document);
    if (caret === undefined) this.rest();
    else if (caret.line === this.shown.typing) this.update(afterPause(this.shown, this.judge));
    else this.moved(caret);
  }

  /** Takes in all edits up to a text as one. */
  private catchUp(text: string, caret: Caret | undefined): void {
    this.settling.clear();
    const change: Change = changeBetween(this.shown.text, text);
    this.update(
      caret === undefined ? atRest(text, this.judge) : afterEdit(this.shown, text, change, caret, this.judge),
    );
  }

  private update(shown: Shown): void {
    if (shown === this.shown) return;
    this.shown = shown;
    const { text, findings } = shown;
    const diagnostics = diagnosticsOf(text, findings);
    // While nothing is found and nothing was, there is nothing to publish at each key.
    if (diagnostics.length > 0 || this.published?.length !== 0)
      this.around.publish(this.document.uri, diagnostics);
    this.published = diagnostics;
    this.around.judged(this);
  }
}
