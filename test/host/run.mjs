// `npm run test:host [node|worker|person|editor …]`: the extension in a real VS Code. With nothing said, all of it;
// `node/typing` or `person/punch` plays only the files with that word in their name.
// Where WHEAL_VSCODE names a desktop VS Code (or says `download`), the suite runs there too.
import { bundleSuite, runSuite } from './suite.mjs';
import { runDesktop } from './desktop.mjs';
import { tryEditor } from './editor.mjs';
import { playScenes } from './person/scenes.mjs';
import { scratch } from '../../src/build/host/host-server.mjs';
import { Missing } from '../../src/build/host/host-tools.mjs';
import { install, tsx } from '../../src/build/setup.mjs';

const parts = {
  node: ['the Node extension host', async (only) => runSuite('node', await bundleSuite(only))],
  worker: ["the browser's extension host", async (only) => runSuite('worker', await bundleSuite(only))],
  person: ['at the keyboard', (only) => playScenes(only)],
  editor: ['npm run editor', () => tryEditor()],
  desktop: [
    'a desktop VS Code',
    async (only) => runDesktop(process.env.WHEAL_VSCODE, await bundleSuite(only)),
  ],
};
const usual = ['node', 'worker', 'person', 'editor', ...(process.env.WHEAL_VSCODE ? ['desktop'] : [])];

async function main(wanted) {
  const asked = (wanted.length > 0 ? wanted : usual).map((word) => word.split('/'));
  const unknown = asked.map(([part]) => part).filter((part) => !(part in parts));
  if (unknown.length > 0)
    throw new Missing(`Unknown: ${unknown.join(', ')}. There are: ${usual.join(', ')}.`);
  // What drives Chromium leaves folders here when it is interrupted.
  process.env.TMPDIR = scratch();
  install();
  tsx('src/build/bundle.ts');
  for (const [part, only] of asked) {
    const [title, play] = parts[part];
    console.log(`\n-- ${title}`);
    const began = Date.now();
    const passed = await play(only);
    console.log(`${passed} passed in ${((Date.now() - began) / 1000).toFixed(1)} s`);
  }
}

main(process.argv.slice(2)).then(
  () => process.exit(0),
  (error) => {
    console.error(error instanceof Missing ? error.message : error);
    process.exit(error instanceof Missing ? 2 : 1);
  },
);
