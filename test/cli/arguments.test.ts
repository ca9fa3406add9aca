import assert from 'node:assert/strict';
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { readArguments } from '../../src/cli/arguments.ts';

describe('readArguments', () => {
  const names = ['format', 'as-of'];
  const words = [
    'a',
    '',
    '-',
    '--',
    '--format',
    '--format=',
    '--format=x=y',
    '--as-of',
    '--other',
    '--other=1',
    '-x',
  ];

  /** What Node's own reader answers, or the first line of its complaint. */
  const byNode = (argv: readonly string[]): unknown => {
    try {
      const options = Object.fromEntries(names.map((name) => [name, { type: 'string' as const }]));
      const { values, positionals } = parseArgs({ args: [...argv], options, allowPositionals: true });
      return { paths: positionals, options: new Map(Object.entries(values)) };
    } catch (error) {
      return String((error as Error).message.split(/\n|\. /)[0]);
    }
  };

  const byOurs = (argv: readonly string[]): unknown => {
    try {
      return readArguments(argv, names);
    } catch (error) {
      return (error as Error).message;
    }
  };

  it('reads and refuses what Node does', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { maxLength: 5 }), (argv) => {
        assert.deepEqual(byOurs(argv), byNode(argv));
      }),
      { numRuns: 1000 },
    );
  });
});
