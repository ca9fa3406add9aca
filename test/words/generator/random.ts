/** A small generator of numbers (mulberry32) that gives the same ones for the same seed on every machine. */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** A number from 0 up to, not including, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from `least` to `most`, both included. */
  between(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  /** @throws RangeError where there is nothing to pick from */
  pick<T>(from: readonly T[]): T {
    const picked = from[this.between(0, from.length - 1)];
    if (picked === undefined) throw new RangeError('nothing to pick from');
    return picked;
  }

  shuffled<T>(list: readonly T[]): readonly T[] {
    return list
      .map((item) => ({ item, at: this.next() }))
      .sort((one, other) => one.at - other.at)
      .map(({ item }) => item);
  }
}
