/**
 * The language service: pure functions over one `Analysis` of one version of a text. All results are plain data in
 * offsets of `analysis.text` (UTF-16 units); `Lines` of `note/lines.ts` turns them into lines and characters.
 *
 * `analyse` once for each version, keep the result with the version, and drop it when the text changes: edits of a fix
 * fit only the text that they were made for. `analysePractice` does the same for a practice file.
 */
export { analyse, analysePractice, type Analysis, type ElsewhereOf } from './analysis.ts';
export { beginningAt, type Beginning } from './beginning.ts';
export type { Completion } from './completion.ts';
export { completionsAt } from './completions.ts';
export { diagnosticsOf, type Diagnostic, type LineRange } from './diagnostics.ts';
export { fixAll, fixesAt } from './fixes.ts';
export { foldsOf, type Fold } from './folding.ts';
export { hintsIn, type Hint } from './hints.ts';
export { hoverAt, type Hover } from './hovers.ts';
export { lensesOf, type Lens } from './lenses.ts';
export { definitionAt, linksOf, selectionsAt, type Definition, type Link } from './navigation.ts';
export type { OfferedFix } from './offered-fix.ts';
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
} from './quiet-row.ts';
export { statusOf, type Status } from './status.ts';
export { watched, type Watched } from './watched.ts';
export type { Writing } from './writing.ts';
