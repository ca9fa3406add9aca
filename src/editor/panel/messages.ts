import type { PanelSection, PanelView } from '../../service/panel.ts';

/** What the panel needs to come back after the window was reloaded: nothing of the note itself. */
export interface Remembered {
  /** Address of the note. */
  readonly note: string;
  readonly view: PanelView;
  readonly language: 'en' | 'es' | undefined;
}

/** To the panel. */
export type Shown =
  | { readonly kind: 'show'; readonly sections: readonly PanelSection[]; readonly remembered: Remembered }
  /** The procedure in which the caret is. */
  | { readonly kind: 'caret'; readonly procedure: number | undefined };

/** From the panel. */
export type Asked =
  | { readonly kind: 'ready' }
  | { readonly kind: 'view'; readonly view: PanelView }
  | { readonly kind: 'go'; readonly start: number }
  | { readonly kind: 'line'; readonly line: number; readonly character: number };

/** What came from the panel, where it is something that the panel says. */
export function askedIn(message: unknown): Asked | undefined {
  if (typeof message !== 'object' || message === null) return undefined;
  const { kind, view, start, line, character } = message as Readonly<Record<string, unknown>>;
  if (kind === 'ready') return { kind };
  if (kind === 'view' && (view === 'summary' || view === 'handout')) return { kind, view };
  if (kind === 'go' && isPlace(start)) return { kind, start };
  return kind === 'line' && isPlace(line) && isPlace(character) ? { kind, line, character } : undefined;
}

const isPlace = (value: unknown): value is number =>
  typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;

/** What an earlier window has kept of the panel; undefined where it kept nothing that can be used. */
export function rememberedIn(state: unknown): Remembered | undefined {
  if (typeof state !== 'object' || state === null) return undefined;
  const { note, view, language } = state as Readonly<Record<string, unknown>>;
  if (typeof note !== 'string' || (view !== 'summary' && view !== 'handout')) return undefined;
  return { note, view, language: language === 'en' || language === 'es' ? language : undefined };
}
