import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createContext, Script } from 'node:vm';
import { pack } from '../../src/build/package.mjs';
import { catalogue } from '../../src/checks/index.ts';
import { unzip } from './zip.ts';

const root = join(import.meta.dirname, '..', '..');
const bundle = join(root, 'dist', 'extension.cjs');

/** All that a package may hold; the number says of which there is exactly one. */
const content: readonly (readonly [RegExp, 1 | 'any'])[] = [
  [/^\[Content_Types\]\.xml$/, 1],
  [/^extension\.vsixmanifest$/, 1],
  [/^extension\/package\.json$/, 1],
  [/^extension\/package\.nls(\.[a-z-]+)?\.json$/, 'any'],
  [/^extension\/readme\.md$/, 1],
  [/^extension\/changelog\.md$/, 1],
  [/^extension\/LICENSE\.txt$/, 1],
  [/^extension\/dist\/extension\.cjs$/, 1],
  [/^extension\/dist\/pages\.json$/, 1],
  [/^extension\/dist\/client\.js$/, 1],
  [/^extension\/dist\/panel\.css$/, 1],
  [/^extension\/snippets\/[a-z-]+\.json$/, 'any'],
  [/^extension\/src\/editor\/language-configuration\.json$/, 1],
  [/^extension\/src\/editor\/wheal\.tmLanguage\.json$/, 1],
  [/^extension\/src\/editor\/icons\/wheal\.png$/, 1],
  [/^extension\/src\/editor\/icons\/[a-z-]+\.svg$/, 'any'],
  [/^extension\/src\/editor\/l10n\/bundle\.l10n(\.[a-z-]+)?\.json$/, 'any'],
  [/^extension\/src\/editor\/walkthrough\/[a-z0-9-]+\.(md|svg)$/, 'any'],
];

describe('the package', () => {
  let folder: string;
  let file: string;
  let files: ReadonlyMap<string, Buffer>;

  before(async function () {
    this.timeout(60_000);
    folder = mkdtempSync(join(tmpdir(), 'wheal-package-'));
    file = await pack(folder);
    files = unzip(readFileSync(file));
  });

  after(() => {
    rmSync(folder, { recursive: true });
  });

  it('is named after the version and is at most 525 KiB', () => {
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
    assert.equal(file, join(folder, `wheal-${version}.vsix`));
    assert.ok(statSync(file).size <= 525 * 1024, `${statSync(file).size} bytes`);
  });

  it('holds what users need and nothing else', () => {
    const names = [...files.keys()];
    const strange = names.filter((name) => !content.some(([pattern]) => pattern.test(name)));
    assert.deepEqual(strange, []);
    for (const [pattern, times] of content)
      if (times === 1) assert.equal(names.filter((name) => pattern.test(name)).length, 1, String(pattern));
  });

  it('holds every file that its manifest names, and the bundle as built', () => {
    const manifest: unknown = JSON.parse(files.get('extension/package.json')!.toString());
    const { main, browser, icon, contributes } = manifest as Record<string, unknown>;
    const named = [...texts([main, browser, contributes]).filter((text) => text.startsWith('./')), icon];
    assert.ok(named.length >= 5);
    for (const path of named)
      assert.ok(files.has(`extension/${String(path).replace('./', '')}`), String(path));
    assert.deepEqual(files.get('extension/dist/extension.cjs'), readFileSync(bundle));
  });

  it('holds the examples of every check', () => {
    const pages = JSON.parse(files.get('extension/dist/pages.json')!.toString()) as Record<string, string>;
    assert.deepEqual(Object.keys(pages).sort(), catalogue.map(({ code }) => code).sort());
    for (const [code, page] of Object.entries(pages)) assert.notEqual(page.trim(), '', code);
  });

  it('has an icon of at least 128 by 128 pixels', () => {
    const icon = files.get('extension/src/editor/icons/wheal.png')!;
    assert.ok(icon.readUInt32BE(16) >= 128 && icon.readUInt32BE(20) >= 128);
  });
});

describe('the bundle of the extension', () => {
  let code: string;

  before(() => {
    code = readFileSync(bundle, 'utf8');
  });

  it('asks for nothing but vscode', () => {
    const asked = [...code.matchAll(/\b(?:require|import)\s*\(\s*(["'`])(.*?)\1\s*\)/g)].map(
      ([, , name]) => name,
    );
    assert.deepEqual([...new Set(asked)], ['vscode']);
  });

  it('is the same for the desktop and for the browser, and reaches for no network', () => {
    const { main, browser } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<
      string,
      unknown
    >;
    assert.equal(main, browser);
    assert.doesNotMatch(code, /\bfetch\(|XMLHttpRequest|WebSocket|sendBeacon/);
  });

  it('loads where there is no Node, as in the browser', () => {
    const module = { exports: {} as Record<string, unknown> };
    const asked: string[] = [];
    const require = (name: string): unknown => {
      asked.push(name);
      assert.equal(name, 'vscode');
      return Object.create(fake as object);
    };
    // What every browser has.
    const browser = { TextEncoder };
    new Script(code).runInContext(createContext({ ...browser, module, exports: module.exports, require }));
    assert.equal(typeof module.exports['activate'], 'function');
    assert.deepEqual([...new Set(asked)], ['vscode']);
  });
});

/** Every text in a tree of plain data. */
const texts = (data: unknown): readonly string[] => {
  if (typeof data === 'string') return [data];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(texts) : [];
};

/** Stands in for the editor: whatever is asked of it is there, and can be called, made or extended. */
const fake: unknown = new Proxy(Object, {
  get: (target, name): unknown => (name === 'prototype' ? target.prototype : fake),
  apply: () => fake,
});
