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
const harmless = ({ key }: Entry): string =>
  key === 'lesion'
    ? 'tan papule 6 mm'
    : key.startsWith('events') || key === 'addenda'
      ? 'seen, all well'
      : 'none';

const filled = ({ bases }: Collection, entry: Entry, text: unknown): string => {
  const base = bases[entry.note];
  if (base === undefined) throw new Error(`no base ${entry.note}`);
  return base.replaceAll('«TEXT»', () => JSON.stringify(text));
};

/** The errors and warnings of a note by their codes and severities, with how often each is there. */
function loud(note: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { code, severity } of judge(note).findings) {
    if (severity !== 'error' && severity !== 'warning') continue;
    const key = `${code} ${severity}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

/** The errors and warnings that a note has because of one text. */
function because(collection: Collection, entry: Entry): readonly string[] {
  const before = loud(filled(collection, entry, harmless(entry)));
  return [...loud(filled(collection, entry, entry.text))]
    .filter(([key, count]) => count > (before.get(key) ?? 0))
    .map(([key]) => key);
}

const shown = ({ kind, key, text, note }: Entry): string =>
  `${kind} · ${key} · ${note}: ${JSON.stringify(text)}`;

function measure(name: string, isRight: (found: readonly string[]) => boolean, least: number): void {
  const collection = read(name);
  const wrong = collection.entries.filter((entry) => !isRight(because(collection, entry)));
  const { length } = collection.entries;
  const share = (100 * (length - wrong.length)) / length;
  console.log(`      ${length - wrong.length} of ${length} (${share.toFixed(1)} of 100)`);
  const list = wrong.map((entry) => `${shown(entry)} ${because(collection, entry).join(', ')}`).join('\n');
  assert.ok(share >= least, list);
}

describe('texts written without sight of the reader', function () {
  this.timeout(120_000);

  it('that tell of a danger are reported', () => {
    measure('dangers', (found) => found.length > 0, 98);
  });

  it('that are their nearest right neighbors are silent', () => {
    measure('neighbors', (found) => found.length === 0, 98);
  });
});
