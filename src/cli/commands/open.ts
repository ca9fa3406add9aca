import { openListData, openListFormats, type OpenList } from '../../documents/open-list/open-list.ts';
import type { CsvLook } from '../../documents/csv.ts';
import type { NotRead } from '../../documents/not-read.ts';
import { Caseload, unreadFacts, type NoteFacts } from '../../followup/caseload.ts';
import { inSlices } from '../../followup/slices.ts';
import { dateOption, formatOption } from '../options/arguments.ts';
import { csvLook, csvOptions } from '../options/csv-options.ts';
import { FactsReader } from '../notes/facts.ts';
import { filesOf, isPractice } from '../notes/files.ts';
import { gapsOf, Practices } from '../notes/practices.ts';
import { tablesFor } from '../notes/notes.ts';
import { factsInThreads } from '../threads/list-work.ts';
import { threadsFor, threadsOption } from '../threads/pool.ts';
import { Progress } from '../terminal/progress.ts';
import { asOf, formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import { ndjsonOf } from '../report/ndjson.ts';
import type { Command } from '../options/command.ts';

const { text, json, csv, html } = openListFormats;
const forms: Readonly<
  Record<'text' | 'json' | 'ndjson' | 'csv' | 'html', (list: OpenList, look: CsvLook) => string>
> = {
  text: text.write,
  json: json.write,
  ndjson: (list) => ndjsonOf({ asOf: list.asOf }, openListData(list)),
  csv: csv.write,
  html: html.write,
};

const pace = {
  now: () => performance.now(),
  pause: () => new Promise<void>((resume) => setImmediate(resume)),
};

export const open: Command = {
  takes: 'PATH…',
  options: [formatOf(Object.keys(forms)), asOf, ...csvOptions, threadsOption, out],
  about:
    'Lists what is still open over many notes, by what is to be done. With WHEAL_CACHE=FOLDER it keeps what it read there, health data, and the next run is quick.',
  async run(given, console) {
    const format = formatOption(given, forms);
    const look = csvLook(given, format);
    const today = dateOption(given, 'as-of', console.today);
    const paths = filesOf(given.paths, console).filter((path) => !isPractice(path));
    const practices = new Practices(console.cwd);
    const reader = await FactsReader.for(given.paths, today, console, practices);
    for (const path of paths) tablesFor(path, practices);
    const progress = new Progress(console, paths.length);
    const caseload = new Caseload();
    const notRead: NotRead[] = [];
    const take = (path: string, facts: NoteFacts): void => {
      caseload.set(path, facts);
      if (facts.unread !== undefined) notRead.push({ path, why: facts.unread });
    };
    const threads = reader.keeps ? 1 : await threadsFor(given, paths, console);
    if (threads > 1) await factsInThreads(paths, threads, console, take);
    else
      await inSlices(
        paths,
        (path) => {
          progress.at(caseload.size);
          const facts = reader.of(path);
          if (facts instanceof Promise)
            return facts.then((read) => {
              take(path, read);
            });
          take(path, facts);
          return undefined;
        },
        pace,
      );
    for (const { path, why } of gapsOf(practices)) take(path, unreadFacts(why));
    progress.clear();
    const items = caseload.openOn(today);
    const text = forms[format]({ asOf: today, notes: paths.length, items, notRead }, look);
    await deliver(text, given.options.get('out'), console);
    await reader.keep();
    return items.some(({ group }) => group === 'look') ? 1 : 0;
  },
};
