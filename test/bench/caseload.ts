import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { round3, type Row } from './measure.ts';
import { noteOf } from './notes.ts';

const notes = 10_000;
const rounds = 2;

/** Reads every file of a folder and does nothing but parse it. */
const parseAll = (subject: string): string => `
const { readdirSync, readFileSync } = require('node:fs');
const { parseDocument } = require(${JSON.stringify(subject)});
for (const name of readdirSync(process.argv[2]))
  if (name.endsWith('.yaml')) parseDocument(readFileSync(process.argv[2] + '/' + name, 'utf8'));
`;

/** Writes what a process has cost, where it ends. */
const tellCost = (path: string): string => `
process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  require('node:fs').writeFileSync(${JSON.stringify(path)}, JSON.stringify({ maxRSS, userCPUTime, systemCPUTime }));
});
`;

interface Cost {
  /** Of the processor, so that other work on the machine matters little. */
  readonly seconds: number;
  readonly peakMb: number;
  /** Seconds on the wall: only where several threads are compared with one, on a machine that does nothing else. */
  readonly elapsed: number;
}

/** `wheal open` over many notes: to parsing alone, and a second start from what the first one kept. */
export function caseloadRows(dist: string): readonly Row[] {
  const root = mkdtempSync(join(tmpdir(), 'wheal-bench-'));
  try {
    const [folder, cache, base] = [join(root, 'notes'), join(root, 'cache'), join(root, 'base.cjs')];
    writeMany(folder);
    writeFileSync(base, parseAll(join(dist, 'bench-subject.cjs')));
    const run = runner(root, cache);
    const open = [join(dist, 'wheal.cjs'), 'open', folder, '--as-of', '2026-04-30'];
    const measured = Array.from({ length: rounds }, () => {
      rmSync(cache, { recursive: true, force: true });
      const parsing = run([base, folder]);
      const first = run(open);
      const second = Math.min(run(open).seconds, run(open).seconds);
      return { speed: parsing.seconds / first.seconds, gain: first.seconds / second, first };
    });
    const check = (threads: string): Cost =>
      run([join(dist, 'wheal.cjs'), 'check', folder, '--as-of', '2026-04-30', '--threads', threads]);
    const both = Array.from({ length: rounds }, () => ({ one: check('1'), two: check('2') }));
    const { peakMb, seconds } = measured[0]!.first;
    const name = `${notes} notes, ${Math.round(notes / seconds)} a second, peak memory ${peakMb} MB`;
    return [
      row(
        `wheal open on ${name}: speed to parsing alone`,
        0.6,
        measured.map(({ speed }) => speed),
      ),
      row(
        'the same again from what was kept: times as fast',
        10,
        measured.map(({ gain }) => gain),
      ),
      row(
        `wheal check on ${notes} notes, peak memory ${both[0]!.two.peakMb} MB: two threads, times as fast as one`,
        1.7,
        both.map(({ one, two }) => one.elapsed / two.elapsed),
      ),
    ];
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}

function row(name: string, goal: number, ratios: readonly number[]): Row {
  const sorted = [...ratios].sort((a, b) => a - b);
  const spread = [round3(sorted[0]!), round3(sorted.at(-1)!)] as const;
  return {
    name,
    ratio: round3(ratios.reduce((sum, one) => sum + one, 0) / ratios.length),
    goal,
    better: 'higher',
    spread,
  };
}

function writeMany(folder: string): void {
  mkdirSync(folder);
  // Nothing above the folder may count as its practice.
  mkdirSync(join(folder, '.git'));
  const text = noteOf(60);
  for (let at = 0; at < notes; at++) {
    const day = String((at % 28) + 1).padStart(2, '0');
    const open = at % 7 === 0 ? text.replace(/, told: [^}]*/, '') : text;
    writeFileSync(
      join(folder, `${at}.wheal.yaml`),
      open.replaceAll('@', String(at)).replace('visit: 2026-03-02', `visit: 2026-02-${day}`),
    );
  }
}

/** Runs Node on a script in a process of its own and answers what it cost. */
function runner(root: string, cache: string): (args: readonly string[]) => Cost {
  const [preload, told] = [join(root, 'cost.cjs'), join(root, 'cost.json')];
  writeFileSync(preload, tellCost(told));
  return (args) => {
    const began = performance.now();
    const { status, stderr } = spawnSync(process.execPath, ['--require', preload, ...args], {
      stdio: ['ignore', 'ignore', 'pipe'],
      env: { ...process.env, WHEAL_CACHE: cache },
      encoding: 'utf8',
    });
    const elapsed = (performance.now() - began) / 1000;
    // Errors in the notes are none of the bench.
    if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} answered ${status}: ${stderr}`);
    const { maxRSS, userCPUTime, systemCPUTime } = JSON.parse(
      readFileSync(told, 'utf8'),
    ) as NodeJS.ResourceUsage;
    return { seconds: (userCPUTime + systemCPUTime) / 1e6, peakMb: Math.round(maxRSS / 1024), elapsed };
  };
}
