/** How the name of every note ends. */
export const noteEnding = '.wheal.yaml';
/** Whether a file of that name is a note; some systems write names in capitals. */
export const isNoteName = (name: string): boolean => /\.wheal\.yaml$/i.test(name);
/** The name of the file in which a practice says what it has and how it works. */
export const practiceName = `practice${noteEnding}`;
/** Most characters of a note, and bytes of its file. 512 KiB: far above any note, far below what makes an editor stutter. */
export const largest = 512 * 1024;

/** In a folder, names that begin with a dot are skipped, and nothing else: copies of what a folder was before, half-written files. */
export const isSkipped = (name: string): boolean => name.startsWith('.');
