import type { Console } from './console.ts';

/** From how many files on it is worth saying how far things are. */
const many = 50;
const step = 25;

/** One line on standard error that says how far a long run is; only on a terminal, and gone at the end. */
export class Progress {
  private shown = false;

  constructor(
    private readonly console: Console,
    private readonly total: number,
  ) {}

  at(done: number): void {
    if (this.total < many || done % step !== 0 || !this.console.errorIsTerminal) return;
    this.console.error(`\r\u001b[KChecking ${done} of ${this.total} …`);
    this.shown = true;
  }

  clear(): void {
    if (this.shown) this.console.error('\r\u001b[K');
    this.shown = false;
  }
}
