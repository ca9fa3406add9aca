// A VS Code server on the loopback address, which leaves nothing after: no process, no file.
import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers';
import { serverCommand } from './host-tools.mjs';

/** Milliseconds after which the server is taken for dead. */
const patience = 120_000;

/** A quiet editor: nothing is fetched, sent, suggested or saved by itself. */
export const settings = {
  'chat.disableAIFeatures': true,
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'files.autoSave': 'off',
  'git.enabled': false,
  'github.gitAuthentication': false,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'update.showReleaseNotes': false,
  'workbench.enableExperiments': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

const temporary = tmpdir();

/** A folder that is gone when this process ends, by Ctrl-C too. */
export function scratch() {
  const folder = mkdtempSync(join(temporary, 'wheal-host-'));
  process.once('exit', () => {
    remove(folder);
  });
  return folder;
}

const remove = (folder) => {
  rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
};

for (const [signal, code] of Object.entries({ SIGINT: 130, SIGTERM: 143, SIGHUP: 129 }))
  process.once(signal, () => process.exit(code));

const data = (folder) => [
  '--accept-server-license-terms',
  '--server-data-dir',
  join(folder, 'server'),
  '--extensions-dir',
  join(folder, 'extensions'),
];

/** Installs a .vsix for the server that is started in the same folder later. */
export function installExtension(folder, vsix) {
  const [node, main] = serverCommand();
  execFileSync(node, [main, '--install-extension', vsix, ...data(folder)], {
    stdio: 'pipe',
    env: environment(folder),
    timeout: patience,
  });
}

// Without a gallery of its own the server would ask a public one.
const environment = (folder) => ({ ...process.env, TMPDIR: folder, EXTENSIONS_GALLERY: '{}' });

/**
 * Starts a server on a free port.
 * @param options.folder where all its files go
 * @param options.more settings over those above
 * @param options.token asked of whoever connects; without one anybody on this machine may
 * @param options.driver lets a page load an extension and its tests from a folder; then no notification shows
 * @returns its address, a promise of how it ended, and what stops it with all its children
 */
export async function startServer({ folder, more = {}, token, driver = false }) {
  const user = join(folder, 'server', 'data', 'User');
  mkdirSync(user, { recursive: true });
  writeFileSync(join(user, 'settings.json'), JSON.stringify({ ...settings, ...more }, undefined, 2));
  const child = launch(folder, [
    ...access(folder, token),
    ...(driver ? ['--enable-smoke-test-driver'] : []),
    ...data(folder),
  ]);
  let output = '';
  const ended = new Promise((resolve) => {
    child.once('error', resolve);
    child.once('exit', (code, signal) => resolve(new Error(`it ended (${signal ?? code})`)));
  });
  const address = new Promise((resolve) => {
    const read = (text) => {
      output = (output + text).slice(-20_000);
      const [, found] = /Web UI available at (\S+)/.exec(output) ?? [];
      if (found !== undefined) resolve(new URL(found));
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
  });
  const first = await Promise.race([address, ended, late()]);
  if (first instanceof Error)
    throw new Error(`The VS Code server did not start: ${first.message}\n${output}`);
  first.hostname = '127.0.0.1';
  return { url: first, ended, stop: () => stop(child) };
}

function launch(folder, options) {
  const [node, main] = serverCommand();
  const args = ['--host', '127.0.0.1', '--port', '0', '--disable-telemetry', '--disable-experiments'];
  // With an address and no port the server starts none of its helpers for chat.
  args.push('--agent-host-bridge-host', '127.0.0.1', ...options);
  const child = spawn(node, [main, ...args], {
    detached: process.platform !== 'win32', // its own group, so that its children end with it
    stdio: ['ignore', 'pipe', 'pipe'],
    env: environment(folder),
  });
  // Before the folder goes to which it writes.
  process.prependOnceListener('exit', () => {
    stop(child);
  });
  return child;
}

// A file, because the arguments of a process can be read by everybody on the machine.
function access(folder, token) {
  if (token === undefined) return ['--without-connection-token'];
  const file = join(folder, 'token');
  writeFileSync(file, token, { mode: 0o600 });
  return ['--connection-token-file', file];
}

function stop(child) {
  try {
    process.kill(process.platform === 'win32' ? child.pid : -child.pid, 'SIGKILL');
  } catch {
    // It has ended already.
  }
}

const late = () =>
  new Promise((resolve) => {
    setTimeout(() => resolve(new Error(`it said nothing for ${patience / 1000} s`)), patience).unref();
  });
