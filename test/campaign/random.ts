/** Numbers that look random and follow from a seed alone. */
export class Random {
  constructor(private state: number) {}

  /** From 0 to below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  of<Item>(items: readonly Item[]): Item {
    return items[this.below(items.length)]!;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  /** The same items in another order. */
  mixed<Item>(items: readonly Item[]): readonly Item[] {
    const left = [...items];
    return items.map(() => left.splice(this.below(left.length), 1)[0]!);
  }
}
