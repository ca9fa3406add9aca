// `npm test`: installs, then runs every test and every check of the code.
import { install, run, tool, tsx } from './setup.mjs';

const step = (title, action) => {
  console.log(`\n== ${title}`);
  action();
};

install();
step('build', () => tsx('src/build/bundle.ts'));
step('types', () => {
  tool('typescript/bin/tsc', '--noEmit');
  tool('typescript/bin/tsc', '--noEmit', '--project', 'src/editor/panel');
});
step('lint', () => tool('eslint/bin/eslint.js', '.'));
step('format', () => tool('prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'));
step('imports', () => tool('dependency-cruiser/bin/dependency-cruise.mjs', 'src', '--output-type', 'err'));
step('unused code', () => tool('knip/bin/knip.js'));
step('tests', () => tool('c8/bin/c8.js', 'node_modules/mocha/bin/mocha.js'));
// Apart from the rest, since it takes a minute: each prefix of every sample, and each with one character taken out.
step('each state of every sample', () =>
  run(
    process.execPath,
    [
      ...['node_modules/mocha/bin/mocha.js', '--no-config', '--node-option', 'import=tsx'],
      ...['--reporter', 'dot', '--grep', 'each part of', 'test/note/any-text.test.ts'],
    ],
    { env: { ...process.env, WHEAL_EXHAUSTIVE: '1' } },
  ),
);
step('host', () => run(process.execPath, ['test/host/run.mjs']));
