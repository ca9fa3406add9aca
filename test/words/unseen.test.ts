import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { judge } from '../checks/tester.ts';

interface Entry {
  readonly kind: string;
  readonly key: string;
  readonly text: unknown;
  readonly note: string;
}

interface Collection {
  readonly bases: Readonly<Record<string, string>>;
  readonly entries: readonly Entry[];
}

const read = (name: string): Collection =>
  parse(readFileSync(new URL(`../fixtures/unseen/${name}.yaml`, import.meta.url), 'utf8')) as Collection;

/** What a key holds where nothing is the matter. */
const harmless = ({ key }: Entry): unknown =>
  key === 'events.injected'
    ? { drug: 'triamcinolone', concentration: '10 mg/mL', volume: '0.2 mL' }
    : key === 'lesion'
      ? 'tan papule 6 mm'
      : key.startsWith('events') || key === 'addenda'
        ? 'seen, all well'
        : 'none';

const filled = ({ bases }: Collection, entry: Entry, text: unknown): string => {
  const base = bases[entry.note];
  if (base === undefined) throw new Error(`no base ${entry.note}`);
  return base.replaceAll('«TEXT»', () => JSON.stringify(text));
};

const gravity: Readonly<Record<string, number>> = { hint: 0, information: 1, warning: 2, error: 3 };

/** The findings of a note by their codes and severities, with how often each is there. */
function found(note: string, least: number): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { code, severity } of judge(note).findings) {
    if (gravity[severity]! < least) continue;
    const key = `${code} ${severity}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

/** The findings that a note has because of one text. */
function because(collection: Collection, entry: Entry, least: number): readonly string[] {
  const before = found(filled(collection, entry, harmless(entry)), least);
  return [...found(filled(collection, entry, entry.text), least)]
    .filter(([key, count]) => count > (before.get(key) ?? 0))
    .map(([key]) => key);
}

const shown = ({ kind, key, text, note }: Entry): string =>
  `${kind} · ${key} · ${note}: ${JSON.stringify(text)}`;

/** Prints the share of texts that are read right, of all and of each kind, and asserts the share of all. */
function measure(
  name: string,
  level: 'warning' | 'information',
  isRight: (count: number) => boolean,
  least: number,
): void {
  const collection = read(name);
  const wrong: string[] = [];
  const kinds = new Map<string, { right: number; all: number }>();
  for (const entry of collection.entries) {
    const codes = because(collection, entry, gravity[level]!);
    const kind = kinds.get(entry.kind) ?? { right: 0, all: 0 };
    kinds.set(entry.kind, kind);
    kind.all += 1;
    if (isRight(codes.length)) kind.right += 1;
    else wrong.push(`${shown(entry)} ${codes.join(', ')}`);
  }
  const { length } = collection.entries;
  const share = (100 * (length - wrong.length)) / length;
  const each = [...kinds].map(([kind, { right, all }]) => `${kind} ${right}/${all}`).join(', ');
  console.log(`      ${length - wrong.length} of ${length} (${share.toFixed(1)} of 100): ${each}`);
  assert.ok(share >= least, wrong.join('\n'));
}

describe('texts written without sight of the reader', function () {
  this.timeout(120_000);

  it('that tell of a danger are reported', () => {
    measure('dangers', 'information', (count) => count > 0, 98);
  });

  it('that tell of a danger are errors or warnings, where the tables let them', () => {
    measure('dangers', 'warning', (count) => count > 0, 93);
  });

  it('that are their nearest right neighbors are no error and no warning', () => {
    measure('neighbors', 'warning', (count) => count === 0, 98);
  });
});
