/** `npm run wheal -- check …`: the command from its sources, without a bundle. */
import { runCommand } from '../cli/process.ts';
import { generate } from './generate.ts';

generate();
// Only now: what was made is part of it.
const { main } = await import('../cli/main.ts');
runCommand(main);
