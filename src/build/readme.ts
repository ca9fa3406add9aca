/** Brings the outputs that pages show up to date: run it after a change that a user can see. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { main } from '../cli/entry/main.ts';

const root = join(import.meta.dirname, '..', '..');
/** Pages that show what commands print. */
export const shownIn = ['README.md', 'docs/papers.md'].map((name) => join(root, name));

/** Text blocks that begin with a command: `$ npx wheal …`. */
const block = /^```text\n\$ npx wheal (.*)\n[\s\S]*?^```$/gm;

/**
 * A page with the output of each command that it shows, as it is now.
 * @param today the day on which the commands are run, for those that don't name one
 */
export async function renewedPage(text: string, today: string): Promise<string> {
  const outputs = new Map<string, string>();
  for (const [, command = ''] of text.matchAll(block)) outputs.set(command, await shown(command, today));
  return text.replace(
    block,
    (_, command: string) => `\`\`\`text\n$ npx wheal ${command}\n\n${outputs.get(command) ?? ''}\`\`\``,
  );
}

/** What a command prints; of a long output the part that `grep` shows, from its first match on. */
async function shown(command: string, today: string): Promise<string> {
  const [whole = '', rows, pattern = ''] = /^.* \| grep -A ?(\d+) (\S+)$/.exec(command) ?? [];
  if (rows === undefined) return await run(command, today);
  const lines = (await run(whole.slice(0, whole.indexOf(' | ')), today)).split(/\r?\n/);
  const first = lines.findIndex((line) => line.includes(pattern));
  return `${lines.slice(first, first + Number(rows) + 1).join('\n')}\n`;
}

async function run(command: string, today: string): Promise<string> {
  let output = '';
  const write = (text: string): void => {
    output += text;
  };
  await main(command.split(' '), {
    write,
    error: write,
    color: false,
    errorIsTerminal: false,
    readInput: () => Promise.resolve(new Uint8Array()),
    today: () => today,
    now: () => new Date('2026-03-10T08:00:00Z'),
    cache: undefined,
    cwd: root,
  });
  return output;
}

if (process.argv[1] === import.meta.filename)
  for (const path of shownIn)
    writeFileSync(path, await renewedPage(readFileSync(path, 'utf8'), '2026-04-30'));
