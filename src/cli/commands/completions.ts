import { UsageError } from '../options/arguments.ts';
import { optionsOf } from '../options/help.ts';
import { out, type Option } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import type { Command } from '../options/command.ts';

type Commands = ReadonlyMap<string, Command>;

/** What a shell has to know of one command. */
interface Row {
  readonly name: string;
  readonly about: string;
  readonly options: readonly Option[];
}

const rowsOf = (commands: Commands): readonly Row[] =>
  [...commands].map(([name, command]) => ({ name, about: command.about, options: optionsOf(command) }));

/** Between single quotes of any of the shells. */
const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;

/** In a list of zsh a colon and brackets have a meaning. */
const escaped = (text: string): string => text.replace(/[[\]:]/g, '\\$&');

const long = ({ name }: Option): string => `--${name}`;

function bash(rows: readonly Row[]): string {
  const cases = rows.map(
    ({ name, options }) => `    ${name}) words=${quoted(options.map(long).join(' '))} ;;\n`,
  );
  const values = rows.flatMap(({ name, options }) =>
    options.flatMap((option) =>
      option.words === undefined
        ? []
        : [`    ${name}:${long(option)}) words=${quoted(option.words.join(' '))} ;;\n`],
    ),
  );
  return `_wheal() {
  local current=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} words=
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W ${quoted(rows.map(({ name }) => name).join(' '))} -- "$current"))
    return
  fi
  case \${COMP_WORDS[1]}:$before in
${values.join('')}  esac
  if [ -z "$words" ] && [ "\${current#-}" != "$current" ]; then
    case \${COMP_WORDS[1]} in
${cases.join('')}    esac
  fi
  if [ -n "$words" ]; then COMPREPLY=($(compgen -W "$words" -- "$current")); fi
}
complete -o default -F _wheal wheal
`;
}

/** One option as zsh describes it. */
function zshSpec({ name, about, value, words }: Option): string {
  const wanted =
    words === undefined ? (value === undefined ? '' : `:${value}:_files`) : `:${name}:(${words.join(' ')})`;
  return quoted(`--${name}[${escaped(about)}]${wanted}`);
}

function zsh(rows: readonly Row[]): string {
  const cases = rows.map(
    ({ name, options }) =>
      `    ${name}) _arguments ${[...options.map(zshSpec), "'*:file:_files'"].join(' \\\n      ')} ;;\n`,
  );
  const names = rows.map(({ name, about }) => `    ${quoted(`${name}:${escaped(about)}`)}\n`);
  return `#compdef wheal
_wheal() {
  local -a commands=(
${names.join('')}  )
  if (( CURRENT == 2 )); then
    _describe command commands
    return
  fi
  local command=$words[2]
  shift words
  (( CURRENT-- ))
  case $command in
${cases.join('')}  esac
}
compdef _wheal wheal
`;
}

function fish(rows: readonly Row[]): string {
  const names = rows.map(
    ({ name, about }) => `complete -c wheal -n __fish_use_subcommand -f -a ${name} -d ${quoted(about)}\n`,
  );
  const options = rows.flatMap((row) =>
    row.options.map((option) => {
      const short = option.short === undefined ? '' : ` -s ${option.short}`;
      const value =
        option.words === undefined
          ? option.value === undefined
            ? ''
            : ' -r'
          : ` -x -a ${quoted(option.words.join(' '))}`;
      return `complete -c wheal -n '__fish_seen_subcommand_from ${row.name}' -l ${option.name}${short}${value} -d ${quoted(option.about)}\n`;
    }),
  );
  return [...names, ...options].join('');
}

const shells: Readonly<Record<string, (rows: readonly Row[]) => string>> = { bash, zsh, fish };

/** The command that writes what a shell completes. */
export const completionsOf = (commands: () => Commands): Command => ({
  takes: 'SHELL',
  options: [out],
  about: 'Writes what a shell needs to complete the words of wheal: for bash, zsh or fish.',
  async run(given, console) {
    const [name = '', ...more] = given.paths;
    const write = Object.hasOwn(shells, name) ? shells[name] : undefined;
    if (write === undefined || more.length > 0)
      throw new UsageError('completions takes one shell: bash, zsh or fish');
    await deliver(write(rowsOf(commands())), given.options.get('out'), console);
    return 0;
  },
});
