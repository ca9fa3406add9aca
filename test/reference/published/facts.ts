/**
 * One number, with the stretch it holds for (months of age, the end not included), so that a row for everybody and
 * two rows for children and adults can be compared.
 */
export interface Fact {
  readonly key: string;
  readonly value: string;
  readonly from?: number;
  readonly below?: number;
}

/** A stretch in which the tables and the files say different things; empty where one side says nothing. */
export interface Difference {
  readonly id: string;
  readonly product: string;
  readonly published: string;
}

const startOf = ({ from }: Fact): number => from ?? 0;
const endOf = ({ below }: Fact): number => below ?? Infinity;

/** What is said at an age, each value once. */
const saidAt = (facts: readonly Fact[], months: number): string =>
  [
    ...new Set(
      facts.filter((fact) => startOf(fact) <= months && months < endOf(fact)).map(({ value }) => value),
    ),
  ]
    .sort()
    .join(' and ');

const years = (months: number): string => String(Number((months / 12).toFixed(2)));

const stretch = (from: number, below: number): string => {
  if (from === 0 && below === Infinity) return '';
  return below === Infinity ? ` / from ${years(from)} years` : ` / ${years(from)} to ${years(below)} years`;
};

function byKey(facts: readonly Fact[]): ReadonlyMap<string, readonly Fact[]> {
  const found = new Map<string, Fact[]>();
  for (const fact of facts) found.set(fact.key, [...(found.get(fact.key) ?? []), fact]);
  return found;
}

/** Where the two sides differ, key by key; neighboring stretches with the same difference are one. */
export function differences(product: readonly Fact[], published: readonly Fact[]): readonly Difference[] {
  const ours = byKey(product);
  const theirs = byKey(published);
  return [...new Set([...ours.keys(), ...theirs.keys()])].flatMap((key) =>
    differencesOf(key, ours.get(key) ?? [], theirs.get(key) ?? []),
  );
}

function differencesOf(key: string, ours: readonly Fact[], theirs: readonly Fact[]): readonly Difference[] {
  const bounds = [...new Set([...ours, ...theirs].flatMap((fact) => [startOf(fact), endOf(fact)]))]
    .filter((bound) => bound !== Infinity)
    .sort((one, other) => one - other);
  const found: { product: string; published: string; from: number; below: number }[] = [];
  bounds.forEach((from, at) => {
    const below = bounds[at + 1] ?? Infinity;
    const product = saidAt(ours, from);
    const published = saidAt(theirs, from);
    if (product === published) return;
    const last = found.at(-1);
    if (last?.below === from && last.product === product && last.published === published) last.below = below;
    else found.push({ product, published, from, below });
  });
  return found.map(({ product, published, from, below }) => ({
    id: key + stretch(from, below),
    product,
    published,
  }));
}
