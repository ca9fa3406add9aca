// `npm run editor`: the samples in VS Code with the extension. The desktop one where `code` is installed,
// otherwise (or with `-- --browser`) the server build from npm, to be opened in a browser on this machine.
// Ctrl-C ends it.
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Missing, onPath } from './host/host-tools.mjs';
import { installExtension, scratch, settings, startServer } from './host/host-server.mjs';
import { pack } from './package.mjs';
import { install, root, tsx } from './setup.mjs';

const samples = join(root, 'samples');

/** Opens the desktop VS Code with a profile of its own, and waits until its window is closed. */
async function desktop(code) {
  const profile = scratch();
  mkdirSync(join(profile, 'User'), { recursive: true });
  writeFileSync(join(profile, 'User', 'settings.json'), JSON.stringify(settings, undefined, 2));
  const child = spawn(
    code,
    [
      `--extensionDevelopmentPath=${root}`,
      `--user-data-dir=${profile}`,
      `--extensions-dir=${join(profile, 'extensions')}`,
      ...['--skip-welcome', '--skip-release-notes', '--disable-telemetry', '--new-window', '--wait'],
      samples,
    ],
    { stdio: 'inherit', shell: process.platform === 'win32' },
  );
  console.log('VS Code opens the samples; close its window when you are done.');
  const ended = new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', resolve);
  });
  process.once('exit', () => child.kill());
  return ended;
}

/** Starts the server and says where to look; ends when it does. */
async function browser() {
  const folder = scratch();
  installExtension(folder, await pack(folder));
  const token = randomBytes(24).toString('hex');
  const { url, ended } = await startServer({ folder, token });
  url.searchParams.set('tkn', token);
  url.searchParams.set('folder', samples);
  console.log(`
Open this address in a browser on this machine:

  ${url.href}

Then choose a sample on the left. Ctrl-C ends it. The samples are invented.`);
  throw await ended;
}

async function main() {
  install();
  tsx('src/build/bundle.ts');
  const code = process.argv.includes('--browser') ? undefined : onPath('code');
  await (code === undefined ? browser() : desktop(code));
}

main().then(
  () => process.exit(0),
  (error) => {
    console.error(error.message);
    process.exit(error instanceof Missing ? 2 : 1);
  },
);
