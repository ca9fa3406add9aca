// `npm run package`: the extension as one file, dist/wheal-<version>.vsix.
import { copyFileSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { install, root, tsx } from './setup.mjs';

/** Packs what is in dist/ and what .vscodeignore lets through; returns the path of the .vsix. */
export async function pack(folder = join(root, 'dist')) {
  const { createVSIX } = await import('@vscode/vsce');
  const { name, version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  mkdirSync(folder, { recursive: true });
  const packagePath = join(folder, `${name}-${version}.vsix`);
  // README.md is for those who build it. A copy, since what is named as the readme is moved.
  const readmePath = 'dist/readme.md';
  copyFileSync(join(root, 'src/editor/walkthrough/help.md'), join(root, readmePath));
  await createVSIX({
    cwd: root,
    packagePath,
    readmePath,
    dependencies: false, // all that runs is in the bundle
    allowMissingRepository: true,
    rewriteRelativeLinks: false,
  });
  return packagePath;
}

if (process.argv[1] === import.meta.filename) {
  install();
  tsx('src/build/bundle.ts');
  const file = await pack();
  console.log(`${file}: ${Math.ceil(statSync(file).size / 1024)} KiB`);
}
