import type { Pace } from '../../followup/slices.ts';

/** How long work goes on before everything else in the editor has its turn. */
export const pace: Pace = {
  now: () => performance.now(),
  pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
};

/** A date as the calendar on the wall shows it, not as UTC counts. */
export const localDate = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');

/** Date and time as they are written in a note: `2026-03-02 16:40`. */
export const localMoment = (now: Date): string =>
  `${localDate(now)} ${[now.getHours(), now.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':')}`;

/** Does one thing later; setting it again puts off what was set. */
export class Timer {
  private handle: ReturnType<typeof setTimeout> | undefined;

  get isSet(): boolean {
    return this.handle !== undefined;
  }

  set(milliseconds: number, work: () => void): void {
    this.clear();
    this.handle = setTimeout(() => {
      this.handle = undefined;
      work();
    }, milliseconds);
  }

  clear(): void {
    clearTimeout(this.handle);
    this.handle = undefined;
  }
}
