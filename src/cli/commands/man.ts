import { optionsOf, usageOf } from '../options/help.ts';
import { out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import { version } from '../terminal/version.ts';
import type { Command } from '../options/command.ts';

type Commands = ReadonlyMap<string, Command>;

/** Text that roff shows as it is. */
const plainly = (text: string): string =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/gm, '\\&');

/** The manual page of all commands. */
function pageOf(commands: Commands): string {
  const parts = [...commands].map(([name, command]) => {
    const options = optionsOf(command).map(({ name: option, short, value, words, about }) => {
      const given = words?.join('|') ?? value ?? '';
      const letter = short === undefined ? '' : `\\fB\\-${short}\\fR, `;
      return `.TP\n${letter}\\fB\\-\\-${plainly(option)}\\fR${given === '' ? '' : ` \\fI${plainly(given)}\\fR`}\n${plainly(about)}\n`;
    });
    return `.SS ${plainly(usageOf(name, command))}\n${plainly(command.about)}\n${options.join('')}`;
  });
  return `.TH WHEAL 1 "" "wheal ${plainly(version)}"
.SH NAME
wheal \\- checks procedure notes of skin biopsies
.SH SYNOPSIS
.B wheal
.I COMMAND
[OPTION]...
.SH COMMANDS
${parts.join('')}.SH EXIT STATUS
0 where no error was found, 1 where errors were found, 2 where nothing could be judged.
.SH ENVIRONMENT
.TP
.B WHEAL_CACHE
Folder in which wheal open keeps what it read of notes: health data.
.TP
.B NO_COLOR, FORCE_COLOR
Never and always colors.
`;
}

/** The command that writes the manual page. */
export const manOf = (commands: () => Commands): Command => ({
  takes: '',
  options: [out],
  about: 'Writes the manual page, for man -l or a folder of man pages.',
  async run(given, console) {
    await deliver(pageOf(commands()), given.options.get('out'), console);
    return 0;
  },
});
