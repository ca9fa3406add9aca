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

/** Writes the peak memory of a process, in KiB, where it ends. */
const tellPeak = (path: string): string =>
  `process.on('exit', () => require('node:fs').writeFileSync(${JSON.stringify(path)}, String(process.resourceUsage().maxRSS)));`;

/** `wheal open` over many notes: to parsing alone, and a second start from what the first one kept. */
export function caseloadRows(dist: string): readonly Row[] {
  const root = mkdtempSync(join(tmpdir(), 'wheal-bench-'));
  try {
    const folder = join(root, 'notes');
    const cache = join(root, 'cache');
    const [base, peak, peakFile] = [join(root, 'base.cjs'), join(root, 'peak.cjs'), join(root, 'peak.txt')];
    writeMany(folder);
    writeFileSync(base, parseAll(join(dist, 'bench-subject.cjs')));
    writeFileSync(peak, tellPeak(peakFile));
    const open = ['--require', peak, join(dist, 'wheal.cjs'), 'open', folder, '--as-of', '2026-04-30'];
    const measured = Array.from({ length: rounds }, () => {
      rmSync(cache, { recursive: true, force: true });
      const parsing = seconds([base, folder], cache);
      const first = seconds(open, cache);
      const megabytes = Math.round(Number(readFileSync(peakFile, 'utf8')) / 1024);
      const second = Math.min(seconds(open, cache), seconds(open, cache));
      return {
        speed: parsing / first,
        gain: first / second,
        megabytes,
        perSecond: Math.round(notes / first),
      };
    });
    const { megabytes, perSecond } = measured[0]!;
    const name = `${notes} notes, ${perSecond} a second, peak memory ${megabytes} MB`;
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
      open.replace('C-20417', `C-${at}`).replace('visit: 2026-03-02', `visit: 2026-02-${day}`),
    );
  }
}

function seconds(args: readonly string[], cache: string): number {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, args, {
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, WHEAL_CACHE: cache },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`${args.join(' ')} answered ${status}: ${stderr}`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}
