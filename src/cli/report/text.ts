import { overLimit } from '../../dose/judge.ts';
import { plain } from '../../documents/one-line.ts';
import type { Severity } from '../../note/tree/finding.ts';
import type { Checked, LineRange, Reported } from '../notes/judge.ts';

import { excerpt } from './excerpt.ts';
import { hasErrors, type Look, type Report, type Tally } from './report.ts';

type Paint = (style: Style, text: string) => string;
type Style = Severity | 'bold' | 'dim';

const codes: Readonly<Record<Style, string>> = {
  error: '31',
  warning: '33',
  information: '34',
  hint: '36',
  bold: '1',
  dim: '2',
};

const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/** The findings of files as a person reads them, each with its line, and a count at the end. */
export function textReport({ color, quiet }: Look): Report {
  const paint: Paint = (style, text) => (color ? `\u001b[${codes[style]}m${text}\u001b[0m` : text);
  const count = new Count();
  return {
    begin: () => '',
    entry(checked) {
      const shown = checked.shown();
      return {
        text: shown.map((finding) => `${entry(checked, finding, paint)}\n\n`).join(''),
        errors: hasErrors(checked),
        tally: tallyOf(checked, shown),
      };
    },
    add({ text, tally }) {
      if (tally !== undefined) count.add(tally);
      return text;
    },
    end: () => (quiet ? '' : `${count.line()}\n`),
  };
}

const tallyOf = ({ kind, path, dose }: Checked, shown: readonly Reported[]): Tally => ({
  kind,
  path,
  severities: shown.map(({ severity }) => severity),
  accepted: shown.filter(({ accepted }) => accepted !== undefined).length,
  dose: dose && { judged: dose.judged, over: overLimit(dose) },
});

function entry(checked: Checked, finding: Reported, paint: Paint): string {
  const { severity, message, code, range, related, accepted } = finding;
  return [
    `${paint('bold', place(checked.path, range))}  ${paint(severity, severity)}  ${plain(message)}  ${paint('dim', `[${code}]`)}`,
    ...marked(checked, range, paint, severity),
    ...(accepted === undefined
      ? []
      : [`      accepted by ${plain(accepted.by || '(nobody named)')}: ${plain(accepted.reason)}`]),
    ...related.flatMap((one) => [
      `      ${place(checked.path, one.range)}  ${plain(one.message)}`,
      ...marked(checked, one.range, paint, 'dim').map((row) => `    ${row}`),
    ]),
  ].join('\n');
}

/** The line with marks; nothing where there is no text, as in a file that can't be read. */
function marked(checked: Checked, range: LineRange, paint: Paint, style: Style): readonly string[] {
  const row = checked.row(range.start.line);
  if (row === '') return [];
  const [shown, marks] = excerpt(row, range);
  return [shown, paint(style, marks)];
}

const place = (path: string, { start }: LineRange): string =>
  `${plain(path)}:${start.line + 1}:${start.character + 1}`;

/** Counts as files go by. */
class Count {
  private readonly files = { note: 0, practice: 0 };
  private readonly found = new Map<Severity, number>();
  private accepted = 0;
  private over = 0;
  private unjudged = 0;
  private readonly notRead: string[] = [];

  add({ kind, dose, path, severities, accepted }: Tally): void {
    this.files[kind] += 1;
    for (const severity of severities) this.found.set(severity, (this.found.get(severity) ?? 0) + 1);
    this.accepted += accepted;
    if (kind === 'note' && dose === null) this.notRead.push(path);
    if (kind === 'note' && dose?.judged !== true) this.unjudged += 1;
    if (dose?.over === true) this.over += 1;
  }

  line(): string {
    const { note, practice } = this.files;
    const files = [counted(note, 'note'), ...(practice === 0 ? [] : [counted(practice, 'practice file')])];
    const findings = severities.flatMap((severity) => {
      const number = this.found.get(severity) ?? 0;
      return number === 0
        ? []
        : [severity === 'information' ? `${number} information` : counted(number, severity)];
    });
    const said = findings.length === 0 ? 'nothing found' : findings.join(', ');
    return `${files.join(' and ')}: ${said}${this.accepted === 0 ? '' : ` (${this.accepted} accepted)`}.${this.missing()}${this.dose()}`;
  }

  /** Why is said at each of them. */
  private missing(): string {
    const { length } = this.notRead;
    return length === 0
      ? ''
      : ` ${counted(length, 'note')} could not be read: ${this.notRead.map(plain).join(', ')}.`;
  }

  private dose(): string {
    const parts = [
      ...(this.over === 0 ? [] : [`over the limit in ${counted(this.over, 'note')}`]),
      ...(this.unjudged === 0 ? [] : [`not judged in ${counted(this.unjudged, 'note')}`]),
    ];
    return parts.length === 0 ? '' : ` Dose ${parts.join(', ')}.`;
  }
}

const counted = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
