import type { Sourced } from '../reference/types.ts';

/** The rules of the note format itself, for what no publication has to say. */
export const format: Sourced = { source: 'format', mark: 'format' };
