// The same suite in a desktop VS Code: WHEAL_VSCODE names its executable, or says `download`.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { hostPackage, installPackages } from '../../src/build/host/host-tools.mjs';
import { scratch } from '../../src/build/host/host-server.mjs';
import { root } from '../../src/build/setup.mjs';
import { complaint, listener, workspace } from './suite.mjs';

/** Milliseconds for a whole run. */
const patience = 420_000;

async function executable(wanted) {
  if (wanted !== 'download') return wanted;
  installPackages();
  const { downloadAndUnzipVSCode } = hostPackage('@vscode/test-electron');
  return downloadAndUnzipVSCode({ cachePath: join(root, 'test', 'host', 'node_modules', '.vscode-test') });
}

/** Runs the suite; answers the number of tests that passed, throws if any failed. */
export async function runDesktop(wanted, suite) {
  const own = scratch();
  const child = spawn(
    await executable(wanted),
    [
      `--extensionDevelopmentPath=${root}`,
      `--extensionTestsPath=${suite}`,
      `--user-data-dir=${join(own, 'user')}`,
      `--extensions-dir=${join(own, 'extensions')}`,
      ...['--disable-gpu', '--disable-telemetry', '--disable-updates', '--disable-workspace-trust'],
      ...['--no-sandbox', '--skip-release-notes', '--skip-welcome'],
      workspace(own),
    ],
    { stdio: ['ignore', 'pipe', 'inherit'], timeout: patience, killSignal: 'SIGKILL' },
  );
  const { heard, hear } = listener();
  createInterface({ input: child.stdout }).on('line', hear);
  const code = await new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (exit, signal) => resolve(exit ?? signal));
  });
  const wrong = complaint(code, heard.result);
  if (wrong !== undefined) throw new Error(wrong);
  return heard.result.passes;
}
