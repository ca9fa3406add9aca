import { plain } from '../../documents/one-line.ts';
import { applyEdits } from '../../note/tree/edit.ts';
import { signatureEdit, type NotSigned } from '../../note/signature/sign.ts';
import { onlyPath, UsageError } from '../options/arguments.ts';
import { needNote, standardInput } from '../notes/files.ts';
import { openNote } from '../notes/judge.ts';
import { replaceWhole } from '../notes/output.ts';
import { Practices } from '../notes/practices.ts';
import type { Command } from '../options/command.ts';

const despite = 'despite-errors';

const whyNot: Readonly<Record<NotSigned, string>> = {
  unreadable: 'a part of it cannot be read, or an addendum has no author or time; fix it first',
  'signed already': 'it is signed already, and is not signed over; later words belong into addenda',
  'no name': '--by says who signs',
  draft: 'it says that it is a draft; take `draft` out once every value is checked',
};

export const sign: Command = {
  takes: 'NOTE',
  options: [
    { name: 'by', value: 'NAME', needed: true, about: 'Who signs.' },
    { name: despite, about: 'Signs a note that has errors, too.' },
  ],
  about:
    'Signs the visit part of a note: writes the digests by which later change shows. Refuses a draft, and a note with errors.',
  async run(given, console) {
    const signsErrors = given.flags.has(despite);
    const path = onlyPath(given, 'sign');
    const by = plain(given.options.get('by') ?? '').trim();
    if (by === '') throw new UsageError(whyNot['no name']);
    if (path === standardInput) throw new UsageError('sign writes into a file; name one note');
    needNote(path, console);
    const refused = (why: string): number => {
      console.error(`wheal: ${plain(path)} was not signed: ${why}\n`);
      return 1;
    };
    const opened = await openNote(path, console.today(), console, new Practices(console.cwd));
    if ('fault' in opened) return refused(`it can't be read: ${opened.fault.words}`);
    const { source, judgement } = opened;
    const edit = signatureEdit(source, by, momentOf(console.now()));
    if (typeof edit === 'string') return refused(whyNot[edit]);
    const errors = judgement.findings.filter(({ severity }) => severity === 'error').length;
    if (errors > 0 && !signsErrors)
      return refused(
        `it has ${errors === 1 ? 'an error' : `${errors} errors`}; wheal check shows ${errors === 1 ? 'it' : 'them'}, and --${despite} signs anyway`,
      );
    await replaceWhole(path, source.text, applyEdits(source.text, [edit]), console);
    console.write(`${plain(path)}: signed by ${by}; this shows later change, not who signed.\n`);
    return 0;
  },
};

const two = (number: number): string => String(number).padStart(2, '0');

/** Local date and time as a note has them. */
const momentOf = (now: Date): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())} ${two(now.getHours())}:${two(now.getMinutes())}`;
