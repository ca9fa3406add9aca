// Runs the scenes: each gets a window of its own, with the .vsix installed, and copies of the samples and of
// the workspace of the suite.
import assert from 'node:assert/strict';
import { cpSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { installExtension, scratch, startServer } from '../../../src/build/host/host-server.mjs';
import { pack } from '../../../src/build/package.mjs';
import { root } from '../../../src/build/setup.mjs';
import { openWindow } from '../window.mjs';
import { Person } from './person.mjs';

const scenes = import.meta.dirname;

/**
 * Plays every `*.scene.mjs` of this folder; returns how many there were, throws if one fails.
 * @param only a word that the names of their files have
 */
export async function playScenes(only = '') {
  const files = readdirSync(scenes).filter((file) => file.endsWith('.scene.mjs') && file.includes(only));
  const own = scratch();
  installExtension(own, await pack(own));
  for (const file of files) await play(file, own);
  if (files.length === 0) throw new Error('there are no scenes');
  return files.length;
}

async function play(file, own) {
  const { title, scene, settings, place } = await import(`./${file}`);
  const name = file.replace('.scene.mjs', '');
  const folder = join(own, name);
  for (const notes of ['samples', join('test', 'host', 'workspace')])
    cpSync(join(root, notes), folder, { recursive: true });
  const began = Date.now();
  const server = await startServer({ folder: own, more: settings });
  const window = await openWindow(server, { scratch: own, folder: place?.(folder) ?? folder });
  const person = new Person(window.page);
  try {
    await person.sitDown();
    await scene(person, folder);
    assert.deepEqual(window.refused, [], 'something asked another host');
    console.log(`  ok ${title} (${Date.now() - began} ms, ${person.keys} keys)`);
  } catch (error) {
    await person.picture(`${name}-failed`).catch(() => undefined);
    console.log(`  FAILED ${title}; see test/host/shots/${name}-failed.png`);
    throw error;
  } finally {
    await window.close();
    server.stop();
  }
}
