import { check as judge } from '../../checks/index.ts';
import { readNote } from '../../note/read.ts';
import { referenceTables } from '../../practice/tables.ts';
import { choice, readArguments, UsageError } from '../arguments.ts';
import { notePaths, readText } from '../files.ts';
import { jsonReport } from '../report/json.ts';
import { textReport } from '../report/text.ts';
import type { Checked } from '../report/checked.ts';
import type { Command } from './command.ts';

export const check: Command = {
  usage: 'wheal check PATH… [--format text|json|sarif] [--as-of DATE]',
  about: 'Checks notes; a folder means every *.wheal.yaml below it, - reads one note from standard input.',
  async run(argv, console) {
    const given = readArguments(argv, ['format', 'as-of']);
    const format = choice(given, 'format', ['text', 'json', 'sarif']);
    if (given.paths.length === 0) throw new UsageError('check needs a path');
    const today = given.options.get('as-of') ?? console.today();
    const checked: Checked[] = [];
    for (const path of await notePaths(given.paths, console.cwd)) {
      const source = readNote(await readText(path));
      checked.push({ path, source, judgement: judge(source, { tables: referenceTables, today }) });
    }
    console.write(format === 'json' ? jsonReport(checked) : textReport(checked, console.color));
    return checked.some(({ judgement }) => judgement.findings.some(({ severity }) => severity === 'error'))
      ? 1
      : 0;
  },
};
