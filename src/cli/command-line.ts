import type { Command } from './commands/command.ts';
import { UsageError } from './arguments.ts';
import { exit } from './exit.ts';
import type { Console } from './console.ts';
import { plain } from '../documents/one-line.ts';
import { version } from './version.ts';

/**
 * Runs one command line and answers its exit code.
 * @param argv the words behind the program's name
 */
export type Main = (argv: readonly string[], console: Console) => Promise<number>;

/** A command line with these commands. */
export const commandLine =
  (commands: ReadonlyMap<string, Command>): Main =>
  (argv, console) =>
    run(commands, argv, console);

async function run(
  commands: ReadonlyMap<string, Command>,
  argv: readonly string[],
  console: Console,
): Promise<number> {
  const [name, ...rest] = argv;
  try {
    if (name === '--version') return said(console, `${version}\n`);
    if (name === undefined) throw new UsageError('nothing to do; try wheal --help');
    if (name === '--help' || name === 'help') return said(console, help(commands));
    const command = commands.get(name);
    if (command === undefined) throw new UsageError(`there is no command "${name}"; try wheal --help`);
    if (rest.includes('--help')) return said(console, `${command.usage}\n\n${command.about}\n`);
    if (rest.includes('--version')) return said(console, `${version}\n`);
    return await command.run(rest, console);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    console.error(`wheal: ${plain(error.message)}\n`);
    return exit.nothing;
  }
}

function said(console: Console, text: string): number {
  console.write(text);
  return exit.clean;
}

function help(commands: ReadonlyMap<string, Command>): string {
  const rows = [...commands.values()].map((command) => `  ${command.usage}\n      ${command.about}`);
  return `wheal checks procedure notes of skin biopsies (*.wheal.yaml).\n\n${rows.join('\n')}\n\n  --help and --version work with every command.\n`;
}
