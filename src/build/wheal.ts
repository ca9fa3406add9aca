/** `npm run wheal -- check …`: the command from its sources, without a bundle. */
import { runCommand } from '../cli/entry/process.ts';
import { generate } from './generate.ts';

generate();
// Only now: what was made is part of it.
const { main } = await import('../cli/entry/main.ts');
runCommand(main);
