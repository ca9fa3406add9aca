// What both README commands begin with: the packages of the lock file, installed once for each lock file.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a command in the project's folder and shows its output; ends this process if it fails. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
    ...options,
  });
  if (result.error) {
    console.error(`Could not run ${command}: ${result.error.message}`);
    process.exit(2);
  }
  if (result.status !== 0) process.exit(result.status ?? 1);
}

/** Runs a tool of one of the installed packages. */
export function tool(name, ...args) {
  run(process.execPath, [join(root, 'node_modules', ...name.split('/')), ...args]);
}

export const tsx = (file, ...args) => run(process.execPath, ['--import', 'tsx', file, ...args]);

/** Installs the locked packages, without install scripts, unless they are there already. */
export function install() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) {
    console.error(`Wheal needs Node 20 or newer; this is ${process.versions.node}.`);
    process.exit(2);
  }
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  const stamp = join(root, 'node_modules', '.wheal-lock');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  console.log('Installing packages (once) …');
  run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error']);
  writeFileSync(stamp, lock);
}
