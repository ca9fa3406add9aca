import { resolve } from 'node:path';
import { dateOption, formatOption, UsageError, type Arguments } from '../options/arguments.ts';
import { filesOf } from '../notes/files.ts';
import { fixNotes, fixOptions, fixWanted, type Fixer } from '../fixing/fix-notes.ts';
import { checkFile, checkPracticeFile, type Checked } from '../notes/judge.ts';
import { tablesFor } from '../notes/notes.ts';
import { outputOf } from '../notes/output.ts';
import { dayDosesOf } from '../notes/same-day.ts';
import { Practices } from '../notes/practices.ts';
import { Progress } from '../terminal/progress.ts';
import { reportForms } from '../report/forms.ts';
import { hasErrors, type Entry } from '../report/report.ts';
import { checkInThreads } from '../threads/check-work.ts';
import { Pool, threadsFor, threadsOption } from '../threads/pool.ts';
import { asOf, formatOf, out, type Option } from '../options/options.ts';
import type { Command } from '../options/command.ts';

const pages: Option = {
  name: 'pages',
  value: 'ADDRESS',
  about: 'The address below which the pages of the checks are, for the links in --format sarif.',
};

/** The check of notes. @param fixer for --fix; absent where another bundle has it */
export const checkWith = (fixer?: Fixer): Command => ({
  takes: 'PATH…',
  options: [formatOf(Object.keys(reportForms)), asOf, pages, ...fixOptions, threadsOption, out],
  about:
    'Checks notes; a folder means every *.wheal.yaml below it but what begins with a dot, - reads one note from standard input.',
  async run(given, console) {
    const format = formatOption(given, reportForms);
    const today = dateOption(given, 'as-of', console.today);
    const paths = filesOf(given.paths, console);
    const practices = new Practices(console.cwd);
    let refused = 0;
    if (await fixWanted(given, paths.length, console)) {
      refused = await fixNotes(paths, given, needed(fixer), today, console, practices);
      if (given.flags.has('dry-run')) return refused > 0 ? 1 : 0;
    }
    const progress = new Progress(console, paths.length);
    const output = outputOf(given, console);
    const look = {
      color: console.color && !output.isFile,
      quiet: console.quiet === true,
      pages: pagesIn(given),
    };
    const report = reportForms[format](look);
    let withErrors = 0;
    let done = 0;
    const write = (entry: Entry): void => {
      progress.at(done++);
      const text = report.add(entry);
      if (text !== '') progress.clear();
      output.write(text);
      if (entry.errors) withErrors += 1;
    };
    // In one order, whoever reads them first.
    for (const path of paths) tablesFor(path, practices);
    output.write(report.begin());
    const threads = await threadsFor(given, paths, console);
    if (threads > 1) {
      const pool = await Pool.of(threads, console);
      await checkInThreads(paths, { form: format, look, today }, pool, write);
      await pool.end();
    } else {
      const days = await dayDosesOf(paths, console, practices);
      for (const path of paths) {
        if (done > 0) await othersTurn();
        write(report.entry(await checkFile(path, today, console, practices, days)));
      }
    }
    for (const checked of unnamed(practices, paths, console.cwd)) write(report.entry(checked));
    progress.clear();
    output.write(report.end());
    await output.end();
    return withErrors + refused > 0 ? 1 : 0;
  },
});

function needed(fixer: Fixer | undefined): Fixer {
  if (fixer === undefined) throw new Error('the bundle that fixes was not loaded');
  return fixer;
}

/** @throws UsageError for what is no absolute address */
function pagesIn({ options }: Arguments): string | undefined {
  const address = options.get(pages.name);
  if (address === undefined) return undefined;
  if (!URL.canParse(address)) throw new UsageError(`--${pages.name} is an address; "${address}" is none`);
  return address.replace(/\/*$/, '/');
}

/** Between notes, so that what happens meanwhile is heard: whoever reads the output may have read enough. */
const othersTurn = (): Promise<void> => new Promise((resume) => setImmediate(resume));

/** Practice files that were laid under notes without being named, where something is wrong with them. */
function unnamed(practices: Practices, paths: readonly string[], cwd: string): readonly Checked[] {
  const named = new Set(paths.map((path) => resolve(cwd, path)));
  return practices
    .used()
    .filter(({ full }) => !named.has(full))
    .flatMap((practice) => {
      const checked = checkPracticeFile(practice.path, practice);
      return practice.tables.gap !== undefined || hasErrors(checked) ? [checked] : [];
    });
}
