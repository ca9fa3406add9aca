import type { Command } from './command.ts';
import { common, filesFrom, force, inputName, out, type Option } from './options.ts';

const width = 80;

/** All options of a command, its own first. */
export const optionsOf = ({ options, takes }: Command): readonly Option[] => [
  ...options,
  ...(options.includes(out) ? [force] : []),
  ...(takes === 'PATH…' ? [filesFrom] : []),
  ...(takes === 'NOTE' || takes === 'PATH…' ? [inputName] : []),
  ...common,
];

/** How a command is typed, in one line: what it needs, and that there are options. */
export function usageOf(name: string, { takes, options }: Command): string {
  const needed = options.filter((option) => option.needed === true).map(typed);
  return ['wheal', name, takes, ...needed, '[OPTION]…'].filter((word) => word !== '').join(' ');
}

/** An option as it is typed: its value is a name in capitals, or one of some words. */
function typed({ name, value, words }: Option): string {
  const given = words?.join('|') ?? value;
  return given === undefined ? `--${name}` : `--${name} ${given}`;
}

/** The help of one command. */
export function helpOf(name: string, command: Command): string {
  const rows = optionsOf(command).map((option) => {
    const short = option.short === undefined ? '' : `-${option.short}, `;
    return `  ${short}${typed(option)}\n${wrapped(option.about, 6)}`;
  });
  return `${usageOf(name, command)}\n\n${wrapped(command.about, 0)}\nOptions:\n${rows.join('')}`;
}

/** The help of all commands. */
export function helpOfAll(commands: ReadonlyMap<string, Command>): string {
  const rows = [...commands].map(
    ([name, command]) => `  ${usageOf(name, command)}\n${wrapped(command.about, 6)}`,
  );
  const more =
    'wheal COMMAND --help lists the options of a command; wheal --version says which version this is.';
  return `wheal checks procedure notes of skin biopsies (*.wheal.yaml).\n\n${rows.join('')}\n${wrapped(more, 0)}`;
}

/** Text in lines that are no longer than a terminal is wide, each after some spaces. */
function wrapped(text: string, indent: number): string {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    if (line !== '' && indent + line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.map((line) => `${' '.repeat(indent)}${line}\n`).join('');
}
