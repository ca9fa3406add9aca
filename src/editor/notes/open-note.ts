import type * as vscode from 'vscode';
import {
  afterEdit,
  afterMove,
  afterNews,
  afterPause,
  atRest,
  type Analysis,
  type Caret,
  type Change,
  watched,
  type Shown,
  type Watched,
} from '../../service/index.ts';
import { changeBetween, overRows } from './change.ts';
import { Timer } from '../host/clock.ts';

/** Milliseconds after an edit over several rows, as a paste or a row break, until the note is judged. */
const debounce = 200;
/** Milliseconds after the last key until a finished danger shows on the row that is typed. */
const pause = 1000;

/** What an open note needs of the editor around it. */
export interface Desk {
  readonly analyse: (document: vscode.TextDocument, text: string) => Analysis;
  readonly caret: (document: vscode.TextDocument) => Caret | undefined;
  readonly show: (note: OpenNote, shown: Shown) => void;
}

/** One open document: what is known of its text, and what of that shows while it is written. */
export class OpenNote {
  private readonly settling = new Timer();
  private readonly pausing = new Timer();
  private shown: Shown = { text: '', findings: [], held: [], typing: undefined };
  /** The text after the last edit; `shown` may lag behind it. */
  private text = '';

  constructor(
    readonly document: vscode.TextDocument,
    private readonly desk: Desk,
  ) {
    this.text = document.getText();
    // A note that was just begun is being written, though its first rows came before anybody could look.
    const caret = document.isUntitled ? desk.caret(document) : undefined;
    const begun: Shown = { text: this.text, findings: [], held: [], typing: undefined };
    this.update(caret === undefined ? atRest(this.text, this.judge) : afterNews(begun, caret, this.judge));
  }

  /** The text as it stands, read and judged. */
  get analysis(): Analysis {
    return this.desk.analyse(this.document, this.document.getText());
  }

  /** Shows everything: the note was opened, saved by hand, left, or mended by a fix. */
  rest(): void {
    this.settling.clear();
    this.pausing.clear();
    this.text = this.document.getText();
    this.update(atRest(this.text, this.judge));
  }

  edited(changes: readonly vscode.TextDocumentContentChangeEvent[]): void {
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
        this.catchUp(this.text, this.desk.caret(this.document));
      });
      return;
    }
    // A row that is only being typed must not be judged together with the rows before it.
    if (this.settling.isSet) this.catchUp(before, first.range.start);
    this.update(afterEdit(this.shown, this.text, change, first.range.start, this.judge));
  }

  /** The caret has moved. */
  moved(caret: Caret): void {
    if (!this.settling.isSet) this.update(afterMove(this.shown, caret, this.judge));
  }

  /** Something outside of the note has changed that it is judged by. */
  reconsider(): void {
    if (!this.settling.isSet) this.update(afterNews(this.shown, this.desk.caret(this.document), this.judge));
  }

  dispose(): void {
    this.settling.clear();
    this.pausing.clear();
  }

  private readonly judge = (text: string): readonly Watched[] =>
    watched(this.desk.analyse(this.document, text));

  private paused(): void {
    if (this.settling.isSet) return;
    const caret = this.desk.caret(this.document);
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
    this.desk.show(this, shown);
  }
}
