import { openListFormats } from '../../documents/open-list/open-list.ts';
import type { NotRead } from '../../documents/not-read.ts';
import { Caseload, unreadFacts, type NoteFacts } from '../../followup/caseload.ts';
import { inSlices } from '../../followup/slices.ts';
import { dateOption, formatOption, UsageError } from '../arguments.ts';
import { FactsReader } from '../facts.ts';
import { filesOf, isPractice } from '../files.ts';
import { gapsOf, Practices } from '../practices.ts';
import { Progress } from '../progress.ts';
import { asOf, formatOf } from '../options.ts';
import type { Command } from './command.ts';

const pace = {
  now: () => performance.now(),
  pause: () => new Promise<void>((resume) => setImmediate(resume)),
};

export const open: Command = {
  takes: 'PATH…',
  options: [formatOf(Object.keys(openListFormats)), asOf],
  about:
    'Lists what is still open over many notes, by what is to be done. With WHEAL_CACHE=FOLDER it keeps what it read there, health data, and the next run is quick.',
  async run(given, console) {
    const format = formatOption(given, openListFormats);
    const today = dateOption(given, 'as-of', console.today);
    if (given.paths.length === 0) throw new UsageError('open needs a path');
    const paths = filesOf(given.paths, console.cwd).filter((path) => !isPractice(path));
    const practices = new Practices(console.cwd);
    const reader = await FactsReader.for(given.paths, today, console, practices);
    const progress = new Progress(console, paths.length);
    const caseload = new Caseload();
    const notRead: NotRead[] = [];
    const take = (path: string, facts: NoteFacts): void => {
      caseload.set(path, facts);
      if (facts.unread !== undefined) notRead.push({ path, why: facts.unread });
    };
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
    console.write(openListFormats[format].write({ asOf: today, notes: paths.length, items, notRead }));
    await reader.keep();
    return items.some(({ group }) => group === 'look') ? 1 : 0;
  },
};
