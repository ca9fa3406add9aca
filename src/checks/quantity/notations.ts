import type { Check } from '../check.ts';
import { respell } from './_respell.ts';

type Row = Pick<Check, 'code' | 'title' | 'why'> & {
  readonly message: string;
  readonly sources?: Check['sources'];
};

const errorProne = { source: 'ismp-error-prone', mark: 'Q' } as const;

/** Notations that are read as meant, but are known to be misread by people. */
const rows: readonly Row[] = [
  {
    code: 'quantity/leading-zero',
    title: 'No zero before the decimal point',
    why: 'Where the point is not seen, .5 is read as 5: ten times as much.',
    message: 'Write {instead} instead of {typed}: without the zero the point is easily missed.',
  },
  {
    code: 'quantity/trailing-zero',
    title: 'A zero at the end of a dose',
    why: 'Where the point is not seen, 1.0 is read as 10: ten times as much. A measured size may keep its zero.',
    sources: [errorProne, { source: 'do-not-use-list', mark: 'Q2' }],
    message:
      'Write {instead} instead of {typed}: if the point is missed, the number reads larger than it is.',
  },
  {
    code: 'quantity/misread-unit',
    title: 'A unit that is known to be misread',
    why: 'cc can be read as units or as two zeros.',
    message: 'Write {instead} instead of {typed}, which is known to be misread.',
  },
];

export const checks: readonly Check[] = rows.map(({ code, title, why, message, sources = [errorProne] }) => ({
  code,
  severity: 'information',
  title,
  why,
  sources,
  messages: { main: message },
  fix: respell,
}));
