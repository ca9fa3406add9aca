import type { Accepted, Note } from '../../note/generated/types.ts';
import { acceptingParts } from '../acceptance.ts';

export const allAccepted = (note: Note): readonly Accepted[] =>
  acceptingParts(note).flatMap(({ accepted = [] }) => accepted);
