// The VS Code server from npm and a Chromium: where they are, and how they get there.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { accessSync, constants, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { root } from '../setup.mjs';

const host = join(root, 'test', 'host');
const packages = join(host, 'node_modules');
const vscode = join(packages, 'code-server', 'lib', 'vscode');
const quiet = ['--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];

/** Nothing can be tested or shown without it, so it ends in words that say what to do. */
export class Missing extends Error {}

function run(command, args, cwd, instead) {
  const { error, status } = spawnSync(command, args, {
    cwd,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (error || status !== 0)
    throw new Missing(
      `\`${[command, ...args].join(' ')}\` in ${cwd} failed (${error?.message ?? status}). ${instead}`,
    );
}

/** Installs the packages of test/host, once for each lock file. */
export function installPackages() {
  const lock = createHash('sha256')
    .update(readFileSync(join(host, 'package-lock.json')))
    .digest('hex');
  const stamp = join(packages, '.wheal-lock');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  console.log('Installing the VS Code server (once, about 0.9 GB) …');
  const instead = 'The package registry must be reachable; run it again when it is.';
  run('npm', ['ci', ...quiet], host, instead);
  // The server brings a list of its own packages, which is not quite what `npm ci` accepts.
  run('npm', ['install', '--omit=dev', ...quiet], vscode, instead);
  writeFileSync(stamp, lock);
}

/** A package of test/host, which the root install does not have. */
export const hostPackage = (name) => createRequire(join(host, 'package.json'))(name);

/** The Node that runs the server and the file to run. */
export function serverCommand() {
  installPackages();
  const shipped = join(packages, `node-linux-${process.arch}`, 'bin', 'node');
  const own = Number(process.versions.node.split('.')[0]) >= 24 ? process.execPath : undefined;
  const node = process.platform === 'linux' && existsSync(shipped) ? shipped : own;
  if (node === undefined)
    throw new Missing(
      `The VS Code server needs Node 24; this is ${process.versions.node} on ${process.platform}-${process.arch}, for which npm has none. Run this with Node 24, or give the tests a desktop VS Code by WHEAL_VSCODE=<its executable>.`,
    );
  return [node, join(vscode, 'out', 'server-main.js')];
}

/** The path of the first of these commands that can be run. */
export function onPath(...names) {
  const suffixes = process.platform === 'win32' ? ['.cmd', '.exe'] : [''];
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const files = names.flatMap((name) =>
    folders.flatMap((folder) => suffixes.map((suffix) => join(folder, name + suffix))),
  );
  return files.find(runnable);
}

function runnable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

const findChromium = () =>
  process.env.WHEAL_CHROMIUM ??
  onPath('chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable');

/** Chromium's path; on Debian, as root, it is installed if it is not there. */
export function chromiumPath() {
  const found = findChromium();
  if (found !== undefined && runnable(found)) return found;
  const instead =
    'Chromium is missing: install it (Debian: apt-get install chromium), or give its path by WHEAL_CHROMIUM=<executable>.';
  if (found !== undefined || process.getuid?.() !== 0 || onPath('apt-get') === undefined)
    throw new Missing(instead);
  console.log('Installing Chromium from the packages of the system (once) …');
  run('apt-get', ['update', '-qq'], root, instead);
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], root, instead);
  const installed = findChromium();
  if (installed === undefined) throw new Missing(instead);
  return installed;
}
