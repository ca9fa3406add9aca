// `npm run test:core` and `npm run test:one -- FILE`: runs tests from one bundle made by esbuild, since a translator of
// TypeScript would take longer than the tests of one file. Prints the CPU time that this process has used.
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import Mocha from 'mocha';
import { root } from './setup.mjs';

const out = join(root, 'node_modules', '.cache', `tests-${process.pid}`);
const given = process.argv.slice(2);
if (given.length === 0) {
  console.error('Name the test files to run: npm run test:one -- test/dose/published.test.ts');
  process.exit(2);
}
const isCore = given[0] === 'core';
const named = given.map((file) => relative(root, resolve(file)));
// Paths of tests are those of the project, wherever the command was given.
process.chdir(root);
// The whole suite tries every case; the core's run a share of those that are tried many times.
if (isCore) process.env.WHEAL_TEST_SHARE ??= '0.05';

/** Those of the floors of the core: without command line, editor, bundles, what measures texts, and the states of every sample. */
const coreTests = () =>
  readdirSync('test', { recursive: true })
    .map((name) => `test/${name.replaceAll('\\', '/')}`)
    .filter(
      (name) =>
        name.endsWith('.test.ts') && !/^test\/(build|campaign|cli|editor|host|schemas|words)\//.test(name),
    )
    .filter((name) => name !== 'test/note/any-text.test.ts')
    .sort();

/** A bundled file keeps the place of its source. */
const places = {
  name: 'places',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/](src|test)[\\/].*\.ts$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      if (!text.includes('import.meta.')) return undefined;
      const contents = text
        .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
        .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)))
        .replaceAll('import.meta.filename', JSON.stringify(path));
      return { loader: 'ts', contents };
    }),
};

const bundle = (entryPoints) =>
  build({
    absWorkingDir: root,
    entryPoints,
    outdir: out,
    outbase: '.',
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    sourcemap: 'linked',
    // Places are all that is asked of a map, and the texts are most of it.
    sourcesContent: false,
    logLevel: 'warning',
    plugins: [places],
  });
const bundled = (file) => join(out, file.replace(/\.ts$/, '.mjs'));

async function main() {
  await bundle(['src/build/generate.ts']);
  (await import(pathToFileURL(bundled('src/build/generate.ts')).href)).generate();
  const files = isCore ? coreTests() : named;
  await bundle(files);
  const mocha = new Mocha({
    ...JSON.parse(readFileSync('.mocharc.json', 'utf8')),
    reporter: isCore ? 'dot' : 'spec',
  });
  for (const file of files) mocha.addFile(bundled(file));
  await mocha.loadFilesAsync();
  return await new Promise((done) => {
    const runner = mocha.run(done);
    runner.prependListener('fail', (_, error) => {
      if (typeof error?.stack === 'string') error.stack = inSources(error.stack);
    });
    if (process.env.WHEAL_TEST_COSTS !== undefined) printCosts(runner);
  });
}

/** A stack with the places of the sources. Asked for where a test fails, since to read all maps takes a second. */
function inSources(stack) {
  return stack.replace(/(file:\S+?\.mjs):(\d+):(\d+)/g, (whole, url, line, column) => {
    const file = fileURLToPath(url);
    if (!file.startsWith(out) || !existsSync(`${file}.map`)) return whole;
    const map = new SourceMap(JSON.parse(readFileSync(`${file}.map`, 'utf8')));
    const { originalSource, originalLine, originalColumn } = map.findEntry(line - 1, column - 1);
    if (originalSource === undefined) return whole;
    const source = resolve(dirname(file), originalSource.replace(/^file:\/\//, ''));
    return `${relative(root, source)}:${originalLine + 1}:${originalColumn + 1}`;
  });
}

const cpu = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/** Prints what the costliest outer suites used, so that what makes the run slow is found without a profiler. */
function printCosts(runner) {
  const costs = [['bundling and loading', cpu()]];
  let before = 0;
  const isOuter = ({ parent }) => parent?.root === true;
  runner.on('suite', (suite) => {
    if (isOuter(suite)) before = cpu();
  });
  runner.on('suite end', (suite) => {
    if (isOuter(suite)) costs.push([suite.title, cpu() - before]);
  });
  runner.on('end', () => {
    for (const [title, seconds] of costs.sort((a, b) => b[1] - a[1]).slice(0, 30))
      console.log(`${seconds.toFixed(2)} s ${title}`);
  });
}

try {
  const failures = await main();
  console.log(`${cpu().toFixed(1)} s of CPU`);
  process.exitCode = failures > 0 ? 1 : 0;
} catch (error) {
  if (typeof error?.stack === 'string') error.stack = inSources(error.stack);
  throw error;
} finally {
  rmSync(out, { recursive: true, force: true });
}
