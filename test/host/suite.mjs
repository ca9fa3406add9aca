// Runs test/host/suite in a real extension host, and believes only the result that the suite itself reports.
import { cpSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { clearTimeout, setTimeout } from 'node:timers';
import { format } from 'node:util';
import { build } from 'esbuild';
import { scratch, startServer } from '../../src/build/host/host-server.mjs';
import { root } from '../../src/build/setup.mjs';
import { openWindow } from './window.mjs';

const folder = join(root, 'test', 'host', 'suite');
/** Milliseconds for a whole run, start of the editor included. */
const patience = 1_200_000;

// Its package says that it is a module, which it is not: unwrapped it would take the place of the suite's exports.
const mochaForBrowsers = {
  name: 'mocha',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]mocha[\\/]mocha\.js$/ }, ({ path }) => ({
      contents: `(function (exports, module) {${readFileSync(path, 'utf8')}\n}).call(globalThis);`,
    }));
  },
};

const samples = () =>
  Object.fromEntries(
    readdirSync(join(root, 'samples')).map((file) => [
      file,
      readFileSync(join(root, 'samples', file), 'utf8'),
    ]),
  );

/**
 * Bundles the tests of the suite into one file that runs in Node and in a browser's worker; the samples, as texts by
 * their names, are in it as SAMPLES.
 * @param only a word that the names of the tests' files have
 */
export async function bundleSuite(only = '') {
  const tests = readdirSync(folder).filter((file) => file.endsWith('.test.ts') && file.includes(only));
  const outfile = join(root, 'dist', 'host', 'suite.cjs');
  await build({
    stdin: {
      contents: [
        `import { start } from './start.ts';`,
        `export const run = () => start(() => { ${tests.map((file) => `require('./${file}');`).join(' ')} });`,
      ].join('\n'),
      resolveDir: folder,
    },
    bundle: true,
    platform: 'browser',
    format: 'cjs',
    target: 'es2022',
    external: ['vscode'],
    define: { SAMPLES: JSON.stringify(samples()) },
    plugins: [mochaForBrowsers],
    outfile,
    logLevel: 'warning',
  });
  return outfile;
}

/** Reads the lines of a suite out of what an editor logs. */
export function listener(say = console.log) {
  const heard = { result: undefined };
  return {
    heard,
    /** Takes a line of the log; returns whether it was one of the suite's. */
    hear(line) {
      const [, text] = /^suite\| (.*)$/s.exec(line) ?? [];
      if (text === undefined) return false;
      if (text.startsWith('RESULT ')) heard.result = JSON.parse(text.slice('RESULT '.length));
      else say(text);
      return true;
    },
  };
}

/** What is wrong with a run that ended with this exit code and this result; nothing where all is well. */
export function complaint(code, result) {
  if (result === undefined)
    return `it ended (exit code ${code}) without a result: it crashed, or could not be loaded`;
  if (result.failures > 0) return `${result.failures} of ${result.tests} tests failed`;
  if (result.passes === 0 || result.passes !== result.tests)
    return `${result.passes} of ${result.tests} tests passed`;
  return code === 0 ? undefined : `exit code ${code} although every test passed`;
}

/** A copy of the workspace of the tests, which they may write to. */
export function workspace(into) {
  const copy = join(into, 'workspace');
  cpSync(join(root, 'test', 'host', 'workspace'), copy, { recursive: true });
  return copy;
}

/**
 * Runs the suite in the extension host of the server (`node`) or of the page (`worker`).
 * @returns the number of tests that passed; throws if any failed, or if the host did
 */
export async function runSuite(kind, suite) {
  const own = scratch();
  const { publisher, name } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const more = kind === 'worker' ? { 'remote.extensionKind': { [`${publisher}.${name}`]: ['web'] } } : {};
  const server = await startServer({ folder: own, more, driver: true });
  const { heard, hear } = listener();
  const noise = [];
  const onLog = (_level, args) => {
    const line = format(...args);
    // The server's own log files need a compiled package, which it does without.
    if (!hear(line) && !line.includes('spdlog')) noise.push(line);
  };
  let window;
  let timer;
  try {
    const remote = (path) => `vscode-remote://${server.url.host}${path}`;
    const code = await new Promise((resolve, reject) => {
      timer = setTimeout(() => reject(new Error(`no result within ${patience / 1000} s`)), patience);
      server.ended.then((why) => reject(new Error(`the VS Code server: ${why.message}`)));
      openWindow(server, {
        scratch: own,
        folder: workspace(own),
        start: [
          ['extensionDevelopmentPath', remote(root)],
          ['extensionTestsPath', remote(suite)],
        ],
        onLog,
        onExit: resolve,
      }).then((opened) => {
        window = opened;
        window.page.once('crash', () => reject(new Error('the page crashed')));
      }, reject);
    });
    const wrong = complaint(code, heard.result);
    if (wrong !== undefined) throw new Error(wrong);
    return heard.result.passes;
  } catch (error) {
    if (heard.result === undefined) console.error(noise.slice(-40).join('\n'));
    throw error;
  } finally {
    clearTimeout(timer);
    await window?.close();
    server.stop();
  }
}
