import { requisitionFormats } from '../../documents/requisition/forms.ts';
import { requisitionOf } from '../../documents/requisition/requisition.ts';
import { plain } from '../../documents/one-line.ts';
import { formatOption, onlyPath, UsageError } from '../options/arguments.ts';
import { needNote } from '../notes/files.ts';
import { openNote } from '../notes/judge.ts';
import { deliver } from '../notes/output.ts';
import { Practices } from '../notes/practices.ts';
import { formatOf, out } from '../options/options.ts';
import { remark } from '../terminal/remark.ts';
import type { Command } from '../options/command.ts';

export const requisition: Command = {
  takes: 'NOTE',
  options: [formatOf(Object.keys(requisitionFormats)), out],
  about:
    'Writes the request for the laboratory and the container label of each specimen. What the note lacks is left open.',
  async run(given, console) {
    const format = formatOption(given, requisitionFormats);
    const path = onlyPath(given, 'requisition');
    needNote(path, console);
    const opened = await openNote(path, console.today(), console, new Practices(console.cwd));
    const note = 'fault' in opened ? null : opened.source.value;
    if ('fault' in opened || note === null) {
      const why = 'fault' in opened ? opened.fault.words : 'there is no note in it';
      console.error(`wheal: ${plain(path)} can't be read: ${why}\n`);
      return 1;
    }
    const model = requisitionOf(note, opened.tables);
    if (model.requests.length === 0) throw new UsageError(`${path} has no specimen that is sent`);
    await deliver(requisitionFormats[format].write(model), given.options.get('out'), console);
    const faulty = opened.judgement.findings.some(({ severity }) => severity === 'error');
    if (faulty) remark(`${plain(path)} has errors; see wheal check before this leaves`, console);
    return faulty ? 1 : 0;
  },
};
