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
