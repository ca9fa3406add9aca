// `npm start`: from a fresh clone to the first findings and the first summary.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { install, root, tsx } from './setup.mjs';

install();
tsx('src/build/bundle.ts');

const asOf = ['--as-of', '2026-04-30'];
const wheal = (...args) => {
  console.log(`\n$ wheal ${args.join(' ')}\n`);
  // Errors are what the samples are there to show, so exit code 1 is as it should be.
  const { status } = spawnSync(process.execPath, [join(root, 'dist/wheal.cjs'), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  if (status !== 0 && status !== 1) process.exit(status ?? 2);
};

wheal('check', 'samples', ...asOf);
wheal('summary', 'samples/melanocytic-deep-shave.wheal.yaml');
console.log(`
What to try next:
  npm run editor
  npx wheal dose --agent lidocaine --concentration 1% --weight 62kg
  npx wheal check samples/over-the-limit.wheal.yaml
  npx wheal summary samples/melanocytic-deep-shave.wheal.yaml --format markdown
  npx wheal --help
The samples are invented.
Decision support for trained staff: verify every value; the treating clinician, local protocol and the current
label decide.`);
