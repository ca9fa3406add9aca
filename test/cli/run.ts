import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Console } from '../../src/cli/terminal/console.ts';
import { main } from '../../src/cli/entry/main.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs one command line as a user would, on 2026-03-02 unless told otherwise. */
export async function wheal(
  argv: readonly string[],
  given: Partial<Console> & { readonly input?: string | Uint8Array } = {},
): Promise<Ran> {
  let out = '';
  let err = '';
  const { input = '', ...rest } = given;
  const code = await main(argv, {
    write: (text) => {
      out += text;
    },
    error: (text) => {
      err += text;
    },
    color: false,
    errorIsTerminal: false,
    readInput: () => Promise.resolve(Buffer.from(input)),
    today: () => '2026-03-02',
    now: () => new Date('2026-03-02T10:05:00Z'),
    cwd: '/nowhere',
    ...rest,
  });
  return { code, out, err };
}

/** A folder of its own with the given files, gone when the tests of the suite are done. */
export function folder(files: Readonly<Record<string, string | Uint8Array>>): string {
  const root = mkdtempSync(join(tmpdir(), 'wheal-'));
  // Nothing above the folder may count as its practice.
  mkdirSync(join(root, '.git'));
  for (const [name, content] of Object.entries(files)) {
    const path = join(root, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  after(() => {
    rmSync(root, { recursive: true, force: true });
  });
  return root;
}

/** 144% of the limit: two times 200 mg for 62 kg. */
export const overLimit = `wheal: 1
visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: punch
    anesthetic:
      - {agent: lidocaine, concentration: 1%, volume: 20 mL}
      - {agent: lidocaine, concentration: 1%, volume: 20 mL}
`;

export const inLimit = overLimit.replaceAll('20 mL', '1 mL');
