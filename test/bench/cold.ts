import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { round3, type Row } from './measure.ts';

const rounds = 31;

const seconds = (args: readonly string[]): number => {
  const start = process.hrtime.bigint();
  spawnSync(process.execPath, args, { stdio: 'ignore' });
  return Number(process.hrtime.bigint() - start) / 1e9;
};

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

/** A first `wheal check` of one note in a new process, against a Node process that does nothing. */
export function coldStart(command: string, note: string): Row {
  const folder = mkdtempSync(join(tmpdir(), 'wheal-bench-'));
  try {
    const empty = join(folder, 'empty.cjs');
    const path = join(folder, 'one.wheal.yaml');
    writeFileSync(empty, '');
    writeFileSync(path, note);
    const pairs = Array.from(
      { length: rounds },
      () => [seconds([command, 'check', path]), seconds([empty])] as const,
    );
    const base = median(pairs.map(([, nothing]) => nothing));
    const ratios = pairs.map(([check]) => check / base).sort((a, b) => a - b);
    return {
      name: 'wheal check on one note, cold, to an empty Node script',
      ratio: round3(median(ratios)),
      goal: 1.8,
      better: 'lower',
      spread: [round3(ratios[rounds >> 2] ?? NaN), round3(ratios[(rounds * 3) >> 2] ?? NaN)],
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
