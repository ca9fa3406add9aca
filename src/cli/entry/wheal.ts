import { loadCore } from './load-core.ts';
import { runCommand } from './process.ts';

runCommand(loadCore(__dirname, process.argv.slice(2), require).main, `${__dirname}/wheal-worker.cjs`);
