/** How the name of every note ends. */
export const noteEnding = '.wheal.yaml';
/** The name of the file in which a practice says what it has and how it works. */
export const practiceName = `practice${noteEnding}`;
/** Most characters of a note, and bytes of its file. 512 KiB: far above any note, far below what makes an editor stutter. */
export const largest = 512 * 1024;

/** In a folder, names that begin with a dot are skipped, and nothing else: copies of what a folder was before, half-written files. */
export const isSkipped = (name: string): boolean => name.startsWith('.');
