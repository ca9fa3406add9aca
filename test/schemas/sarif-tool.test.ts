import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { folder, inLimit, overLimit, wheal } from '../cli/run.ts';

interface Log {
  readonly runs: readonly {
    readonly results: readonly { readonly ruleId: string; readonly level?: string }[];
  }[];
}

/** The program of the package, which is of one system; undefined where there is none for this one. */
function program(): string | undefined {
  try {
    const path = createRequire(import.meta.url)('@microsoft/sarif-multitool') as string;
    if (!existsSync(path)) return undefined;
    // Packages are installed without their scripts, one of which would do this.
    chmodSync(path, 0o755);
    return path;
  } catch {
    return undefined;
  }
}

/** The errors and warnings that the tool has about a log. */
function faultsIn(cwd: string, tool: string, log: string): readonly string[] {
  writeFileSync(join(cwd, 'given.sarif'), log);
  const { status, stderr } = spawnSync(
    tool,
    [
      'validate',
      'given.sarif',
      '--output',
      'found.sarif',
      '--log',
      'ForceOverwrite',
      '--rule-kind',
      'Sarif;Ghas',
    ],
    { cwd, encoding: 'utf8', env: { ...process.env, DOTNET_SYSTEM_GLOBALIZATION_INVARIANT: '1' } },
  );
  assert.ok(existsSync(join(cwd, 'found.sarif')), `${status ?? ''} ${stderr}`);
  const { runs } = JSON.parse(readFileSync(join(cwd, 'found.sarif'), 'utf8')) as Log;
  return runs.flatMap(({ results }) => results.map(({ ruleId, level }) => `${level ?? 'warning'} ${ruleId}`));
}

describe('SARIF by a tool for it', () => {
  it('has no errors and no warnings, and the tool would find one', async function () {
    this.timeout(60_000);
    const tool = program();
    if (tool === undefined) {
      console.log('      no SARIF tool is made for this system');
      return;
    }
    const cwd = folder({ 'a.wheal.yaml': overLimit, 'b.wheal.yaml': inLimit, 'c.wheal.yaml': '- a\n' });
    const { out } = await wheal(['check', '.', '--format', 'sarif'], { cwd });
    assert.deepEqual(faultsIn(cwd, tool, out), []);
    assert.notDeepEqual(faultsIn(cwd, tool, out.replace('"startLine":', '"startLine":-')), []);
  });
});
