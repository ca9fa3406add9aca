import * as vscode from 'vscode';
import type { Draft, Span } from '../../draft/draft.ts';
import { movedBy } from './spans.ts';

/** A value of a draft and the words that say it; undefined once its words were changed. */
interface Tie {
  readonly value: Span | undefined;
  readonly words: readonly (Span | undefined)[];
}

const border = '1px dashed';
const theirs = vscode.window.createTextEditorDecorationType({
  backgroundColor: new vscode.ThemeColor('editor.findMatchHighlightBackground'),
  border: '1px solid',
  borderColor: new vscode.ThemeColor('editor.findMatchBorder'),
});
const unplaced = vscode.window.createTextEditorDecorationType({
  border,
  borderColor: new vscode.ThemeColor('editorWarning.foreground'),
  overviewRulerColor: new vscode.ThemeColor('editorWarning.foreground'),
  overviewRulerLane: vscode.OverviewRulerLane.Right,
});
const persons = vscode.window.createTextEditorDecorationType({
  border,
  borderColor: new vscode.ThemeColor('editorInfo.foreground'),
  textDecoration: 'line-through',
});

/**
 * A text and the draft that was made of it, side by side: the caret on a value marks its words, the caret in the text
 * marks the value, and the words without a place stay marked. Ends when either of the two is closed.
 */
export class DraftLink implements vscode.Disposable {
  private ties: readonly Tie[];
  private unplaced: readonly Span[];
  private names: readonly Span[];
  private readonly subscriptions: readonly vscode.Disposable[];

  constructor(
    private readonly text: vscode.TextDocument,
    private readonly note: vscode.TextDocument,
    made: Draft,
  ) {
    this.ties = made.places.map(({ at, words }) => ({ value: at, words }));
    this.unplaced = made.unplaced;
    this.names = made.names;
    this.subscriptions = [
      vscode.workspace.onDidChangeTextDocument((event) => {
        this.edited(event);
      }),
      vscode.workspace.onDidCloseTextDocument((document) => {
        if (document === this.text || document === this.note) this.dispose();
      }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
        this.show(textEditor);
      }),
      vscode.window.onDidChangeVisibleTextEditors(() => {
        this.mark();
      }),
    ];
    this.mark();
  }

  dispose(): void {
    vscode.Disposable.from(...this.subscriptions).dispose();
    for (const editor of vscode.window.visibleTextEditors)
      if (editor.document === this.text || editor.document === this.note)
        for (const kind of [theirs, unplaced, persons]) editor.setDecorations(kind, []);
  }

  private edited({ document, contentChanges }: vscode.TextDocumentChangeEvent): void {
    const after = (span: Span | undefined): Span | undefined => span && movedBy(span, contentChanges);
    if (document === this.note)
      this.ties = this.ties.map(({ value, words }) => ({ value: after(value), words }));
    if (document !== this.text) return;
    this.ties = this.ties.map(({ value, words }) => ({ value, words: words.map(after) }));
    this.unplaced = this.unplaced.flatMap((span) => after(span) ?? []);
    this.names = this.names.flatMap((span) => after(span) ?? []);
    this.mark();
  }

  /** Marks words without a place, and names that were kept out. */
  private mark(): void {
    for (const editor of editorsOf(this.text)) {
      decorate(
        editor,
        unplaced,
        this.unplaced,
        vscode.l10n.t('These words have no place of their own: they are under remarks.'),
      );
      decorate(editor, persons, this.names, vscode.l10n.t('A name of a person: it is kept out of the note.'));
    }
  }

  /** Marks on the other side what the caret is on. */
  private show({ document, selection }: vscode.TextEditor): void {
    if (document !== this.text && document !== this.note) return;
    const caret = document.offsetAt(selection.active);
    const on = (span: Span | undefined): boolean =>
      span !== undefined && caret >= span.from && caret <= span.to;
    const isText = document === this.text;
    const found = this.ties.filter(({ value, words }) => (isText ? words.some(on) : on(value)));
    const there = found.flatMap(({ value, words }) => (isText ? [value] : words)).filter(isSpan);
    const own = found.flatMap(({ value, words }) => (isText ? words : [value])).filter(isSpan);
    for (const editor of editorsOf(isText ? this.note : this.text)) {
      decorate(editor, theirs, there);
      const [first] = there;
      if (first !== undefined) editor.revealRange(rangeOf(editor.document, first));
    }
    for (const editor of editorsOf(document)) decorate(editor, theirs, found.length === 0 ? [] : own);
  }
}

const isSpan = (span: Span | undefined): span is Span => span !== undefined;

const editorsOf = (document: vscode.TextDocument): readonly vscode.TextEditor[] =>
  vscode.window.visibleTextEditors.filter((editor) => editor.document === document);

const rangeOf = (document: vscode.TextDocument, { from, to }: Span): vscode.Range =>
  new vscode.Range(document.positionAt(from), document.positionAt(to));

function decorate(
  editor: vscode.TextEditor,
  kind: vscode.TextEditorDecorationType,
  spans: readonly Span[],
  hoverMessage?: string,
): void {
  const ranges = spans.map((span) => rangeOf(editor.document, span));
  editor.setDecorations(
    kind,
    hoverMessage === undefined ? ranges : ranges.map((range) => ({ range, hoverMessage })),
  );
}
