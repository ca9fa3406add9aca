import { check, checkPractice } from '../../checks/index.ts';
import type { Context, Judgement } from '../../checks/running/run.ts';
import type { Note } from '../../note/generated/types.ts';
import { noteIndex, practiceIndex, readNote, readPractice, type Source } from '../../note/read.ts';
import type { KeyIndex } from '../../note/tree/shape.ts';
import type { MapNode } from '../../note/tree/tree.ts';
import type { Trust } from '../../practice/tables.ts';

/** One version of a text, read and judged once. Every feature takes it; none changes it. */
export interface Analysis {
  readonly kind: 'note' | 'practice';
  /** What was read. Edits made for it fit no other text. */
  readonly text: string;
  /** As the note was read; null for a practice file. */
  readonly source: Source<Note> | null;
  readonly root: MapNode | null;
  /** Null where the text can't be taken for a note, and for a practice file. */
  readonly note: Note | null;
  /** Where the parser stumbled. */
  readonly damage: readonly number[];
  readonly judgement: Judgement;
  readonly context: Context;
  /** The keys of each map of the file, by the map's name. */
  readonly shapes: ReadonlyMap<string, KeyIndex>;
}

/** What other notes say of the patient of a note; undefined where nobody looked. */
export type ElsewhereOf = (note: Note | null) => Context['elsewhere'];

/** Reads and judges a note. Never throws. */
export function analyse(text: string, alone: Context, elsewhereOf?: ElsewhereOf): Analysis {
  const source = readNote(text);
  const elsewhere = elsewhereOf?.(source.value);
  const context = elsewhere === undefined ? alone : { ...alone, elsewhere };
  const { root, value: note, damage } = source;
  return {
    kind: 'note',
    text,
    source,
    root,
    note,
    damage,
    judgement: check(source, context),
    context,
    shapes: noteIndex,
  };
}

/** Reads and judges a practice file. */
export function analysePractice(text: string, context: Context, trust?: Trust): Analysis {
  const source = readPractice(text);
  const { root, damage } = source;
  const judgement = { findings: checkPractice(source, trust), dose: null, failures: [] };
  return {
    kind: 'practice',
    text,
    source: null,
    root,
    note: null,
    damage,
    judgement,
    context,
    shapes: practiceIndex,
  };
}
