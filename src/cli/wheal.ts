import { buffer } from 'node:stream/consumers';
import { main } from './main.ts';

const now = new Date();
const two = (part: number): string => String(part).padStart(2, '0');

void main(process.argv.slice(2), {
  write: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
  color: process.stdout.isTTY && process.env['NO_COLOR'] === undefined,
  errorIsTerminal: process.stderr.isTTY,
  readInput: () => buffer(process.stdin),
  today: () => `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
  cwd: process.cwd(),
}).then((code) => {
  process.exitCode = code;
});
