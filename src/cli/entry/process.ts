import type { Main } from './command-line.ts';
import type { Console } from '../terminal/console.ts';
import { wantsColor } from '../terminal/color.ts';
import { exit } from '../terminal/exit.ts';
import { standardOutput } from '../terminal/standard-output.ts';

const now = new Date();
const two = (part: number): string => String(part).padStart(2, '0');

// Whoever reads the output may have read enough (`| head`); that is no fault to complain about.
const output = standardOutput((error) => {
  if (error.code !== 'EPIPE') process.stderr.write(`wheal: the output can't be written: ${error.message}\n`);
  process.exit(exit.nothing);
});

async function readInput(limit: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of process.stdin as AsyncIterable<Buffer>) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > limit) break;
  }
  return Buffer.concat(chunks);
}

async function ask(question: string): Promise<boolean> {
  const { createInterface } = await import('node:readline/promises');
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  try {
    return /^y(es)?$/i.test((await lines.question(`${question} [y/N] `)).trim());
  } finally {
    lines.close();
  }
}

let complained = false;

const console = (threadFile: string | undefined): Console => ({
  threadFile,
  write: output.write,
  error(text) {
    // Nobody is left to be told that nobody reads.
    if (!complained) process.stderr.on('error', () => undefined);
    complained = true;
    process.stderr.write(text);
  },
  color: wantsColor(process.env, () => output.isTerminal),
  // Asked for only where it matters: to open a stream takes a while.
  get errorIsTerminal() {
    return process.stderr.isTTY;
  },
  readInput,
  get ask() {
    return process.stdin.isTTY && process.stderr.isTTY ? ask : undefined;
  },
  today: () => `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
  now: () => now,
  cache: process.env['WHEAL_CACHE'],
  cwd: process.cwd(),
});

/**
 * Runs the command that this process was started with, in its terminal, and ends with its exit code.
 * @param threadFile the program of a thread that reads notes
 */
export function runCommand(main: Main, threadFile?: string): void {
  main(process.argv.slice(2), console(threadFile)).then(
    (code) => {
      // Where no stream was opened nothing is left to be done, and to put everything away would take a while.
      if (output.isEmpty && !complained) process.exit(code);
      process.exitCode = code;
    },
    (error: unknown) => {
      process.stderr.write(`wheal: this should not have happened: ${String(error)}\n`);
      process.exitCode = exit.nothing;
    },
  );
}
