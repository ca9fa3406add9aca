// Draws the extension's icon from its SVG: `node test/host/icon.mjs`, after a change to the SVG.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { scratch } from '../../src/build/host/host-server.mjs';
import { installPackages } from '../../src/build/host/host-tools.mjs';
import { root } from '../../src/build/setup.mjs';
import { launchChromium } from './window.mjs';

installPackages();
const icons = join(root, 'src', 'editor', 'icons');
const browser = await launchChromium(scratch());
const page = await browser.newPage({ viewport: { width: 128, height: 128 } });
await page.setContent(
  `<body style="margin:0;zoom:0.5">${readFileSync(join(icons, 'wheal.svg'), 'utf8')}</body>`,
);
await page.screenshot({ path: join(icons, 'wheal.png'), omitBackground: true });
await browser.close();
