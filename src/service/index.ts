/**
 * The language service: pure functions over one `Analysis` of one version of a text. All results are plain data in
 * offsets of `analysis.text` (UTF-16 units); `Lines` of `note/lines.ts` turns them into lines and characters.
 *
 * `analyse` once for each version, keep the result with the version, and drop it when the text changes: edits of a fix
 * fit only the text that they were made for. `analysePractice` does the same for a practice file.
 */
export { analyse, analysePractice, type Analysis, type ElsewhereOf } from './analysis/analysis.ts';
export { beginningAt, type Beginning } from './completion/beginning.ts';
export type { Completion } from './completion/completion.ts';
export { completionsAt } from './completion/completions.ts';
export { diagnosticsOf, shownFindings, type Diagnostic, type LineRange } from './diagnostics/diagnostics.ts';
export { fixAll, fixesAt } from './code-actions/fixes.ts';
export { foldsOf, type Fold } from './folding.ts';
export { hintsIn, type Hint } from './hints.ts';
export { hoverAt, type Hover } from './hover/hovers.ts';
export { lensesOf, type Lens } from './lenses.ts';
export { definitionAt, linksOf, selectionsAt, type Definition, type Link } from './hover/navigation.ts';
export type { OfferedFix } from './code-actions/offered-fix.ts';
export { outlineOf, type Symbol } from './outline.ts';
export {
  afterEdit,
  afterMove,
  afterNews,
  afterPause,
  atRest,
  type Caret,
  type Change,
  type Shown,
} from './diagnostics/while-typing.ts';
export { panelOf, procedureAt, type PanelSection, type PanelView } from './panel.ts';
export { statusOf, type Status } from './status.ts';
export type { Writing } from './completion/writing.ts';
