/** What work in slices needs from outside. */
export interface Pace {
  /** Milliseconds from any fixed time. */
  readonly now: () => number;
  /** Lets everything else that waits have its turn. */
  readonly pause: () => Promise<void>;
  /** Whether the work is still wanted; asked between slices. Always where it is absent. */
  readonly wanted?: () => boolean;
}

const sliceMs = 10;

/**
 * Does something with each of many items, and lets others have their turn every 10 ms.
 * @returns how many were done: all, unless the work was no longer wanted
 */
export async function inSlices<Item>(
  items: Iterable<Item>,
  work: (item: Item) => void | Promise<void>,
  { now, pause, wanted = () => true }: Pace,
): Promise<number> {
  let done = 0;
  let began = now();
  for (const item of items) {
    const waiting = work(item);
    if (waiting !== undefined) await waiting;
    done += 1;
    if (now() - began < sliceMs) continue;
    await pause();
    if (!wanted()) return done;
    began = now();
  }
  return done;
}

/** How many items are sorted at once, which takes well under a slice. */
const runLength = 256;

/** Items in an order, those that are equal as they came; others get their turn meanwhile. */
export async function sortInSlices<Item>(
  items: readonly Item[],
  order: (a: Item, b: Item) => number,
  { now, pause }: Pace,
): Promise<readonly Item[]> {
  const pace = { now, pause };
  const starts = Array.from({ length: Math.ceil(items.length / runLength) }, (_, run) => run * runLength);
  let runs: (readonly Item[])[] = [];
  const sortRun = (start: number): void => {
    runs.push(items.slice(start, start + runLength).sort(order));
  };
  await inSlices(starts, sortRun, pace);
  while (runs.length > 1) {
    const merged: (readonly Item[])[] = [];
    for (let at = 0; at < runs.length; at += 2)
      merged.push(await mergeInSlices(runs[at] ?? [], runs[at + 1] ?? [], order, pace));
    runs = merged;
  }
  return runs[0] ?? [];
}

async function mergeInSlices<Item>(
  first: readonly Item[],
  second: readonly Item[],
  order: (a: Item, b: Item) => number,
  pace: Pace,
): Promise<readonly Item[]> {
  const merged: Item[] = [];
  let taken = 0;
  const take = (item: Item): void => {
    for (let next = second[taken]; next !== undefined && order(next, item) < 0; next = second[taken]) {
      merged.push(next);
      taken += 1;
    }
    merged.push(item);
  };
  await inSlices(first, take, pace);
  return merged.concat(second.slice(taken));
}
