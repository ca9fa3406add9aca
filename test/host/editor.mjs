// `npm run editor` as somebody meets it: the address that it prints shows the samples, and Ctrl-C leaves nothing.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { scratch } from '../../src/build/host/host-server.mjs';
import { root } from '../../src/build/setup.mjs';
import { Person, until } from './person/person.mjs';
import { openWindow } from './window.mjs';

/** Throws if one of its promises is not kept; returns how many there are. */
export async function tryEditor() {
  const own = scratch();
  const child = spawn(process.execPath, [join(root, 'src', 'build', 'editor.mjs'), '--browser'], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, TMPDIR: own },
  });
  process.prependOnceListener('exit', () => child.kill());
  const ended = new Promise((resolve) => child.once('close', resolve));
  let said = '';
  child.stdout.on('data', (text) => (said += text));
  const found = () => /http:\/\/127\.0\.0\.1:\S+/.exec(said)?.[0];
  const url = new URL(
    await until('an address', () => found() ?? (child.exitCode === null ? '' : 'http://ended')),
  );
  assert.notEqual(url.host, 'ended', said);

  assert.equal((await globalThis.fetch(new URL('/', url))).status, 403, 'it lets in whoever has no token');
  console.log('  ok asks for the token');
  await seesSamples(url, own);
  console.log('  ok shows the samples, nothing in front of them, and what is found in one');

  child.kill('SIGINT');
  assert.equal(await ended, 130);
  await assert.rejects(globalThis.fetch(url), 'the server still answers');
  assert.ok(
    readdirSync(own).every((name) => !name.startsWith('wheal-host-')),
    'files are left',
  );
  console.log('  ok ends with Ctrl-C and leaves nothing');
  return 3;
}

async function seesSamples(url, own) {
  const window = await openWindow({ url }, { scratch: own });
  try {
    const person = new Person(window.page);
    await person.sitDown();
    const [sample] = readdirSync(join(root, 'samples')).filter((name) => name.endsWith('.wheal.yaml'));
    await window.page.locator('.explorer-folders-view .monaco-list-row', { hasText: sample }).waitFor();
    assert.equal(await window.page.locator('.tab, .notification-toast').count(), 0);
    await person.quickOpen('over-the-limit.wheal.yaml');
    await window.page.locator('.statusbar-item', { hasText: 'Wheal note' }).waitFor();
    await person.seesErrors(1);
    await person.picture('editor');
  } finally {
    await window.close();
  }
}
