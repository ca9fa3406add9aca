import type { Console } from './console.ts';

/** Says something on standard error that is no fault: nothing where the user wants quiet. */
export function remark(text: string, console: Console): void {
  if (console.quiet !== true) console.error(`wheal: ${text}\n`);
}
