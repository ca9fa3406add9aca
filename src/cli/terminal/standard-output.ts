import { fstatSync, statSync, writeSync, type Stats } from 'node:fs';

/** Standard output of this process. */
export interface StandardOutput {
  readonly write: (text: string) => void;
  readonly isTerminal: boolean;
  /** Whether all that was written has left this process. */
  readonly isEmpty: boolean;
}

const descriptor = 1;

/**
 * Files, pipes and the null device are written to directly, since loading what Node makes a stream of takes as long
 * as half a check. A terminal, a pipe that does not wait for its reader, and whatever else there is get the stream.
 * @param failed is called with what stops the writing
 */
export function standardOutput(failed: (error: NodeJS.ErrnoException) => void): StandardOutput {
  let direct = isDirect();
  let stream: NodeJS.WriteStream | undefined;
  const opened = (): NodeJS.WriteStream => (stream ??= process.stdout.on('error', failed));
  return {
    write(text) {
      const left = direct ? unwritten(Buffer.from(text), failed) : text;
      if (left.length === 0) return;
      direct = false;
      opened().write(left);
    },
    get isTerminal() {
      return !direct && opened().isTTY;
    },
    get isEmpty() {
      return stream === undefined;
    },
  };
}

function isDirect(): boolean {
  // There a pipe is none for the system, and a file can be a console.
  if (process.platform === 'win32') return false;
  try {
    const target = fstatSync(descriptor);
    return target.isFile() || target.isFIFO() || isNull(target);
  } catch {
    return false;
  }
}

const isNull = (target: Stats): boolean =>
  target.isCharacterDevice() && target.rdev === statSync('/dev/null').rdev;

/** Writes what the system takes at once; returns what it does not. */
function unwritten(bytes: Buffer, failed: (error: NodeJS.ErrnoException) => void): Buffer {
  let from = 0;
  try {
    while (from < bytes.length) from += writeSync(descriptor, bytes, from);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EAGAIN') return bytes.subarray(from);
    failed(error as NodeJS.ErrnoException);
  }
  return bytes.subarray(bytes.length);
}
