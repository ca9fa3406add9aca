import type { CsvLook } from '../../documents/csv.ts';
import { UsageError, type Arguments } from './arguments.ts';
import type { Option } from './options.ts';

/** How a table is written. */
export const csvOptions: readonly Option[] = [
  {
    name: 'csv-bom',
    about: 'Begins the table with a byte order mark, by which some spreadsheets know UTF-8.',
  },
  {
    name: 'csv-text-ids',
    about:
      'Writes chart numbers, labels and request numbers as ="…", so that a spreadsheet keeps 0042 as it is.',
  },
];

/** How the table is wanted. @throws UsageError where no table is written */
export function csvLook({ flags }: Arguments, format: string): CsvLook {
  const [first] = csvOptions.filter(({ name }) => flags.has(name));
  if (first !== undefined && format !== 'csv') throw new UsageError(`--${first.name} goes with --format csv`);
  return { mark: flags.has('csv-bom'), textIds: flags.has('csv-text-ids') };
}
