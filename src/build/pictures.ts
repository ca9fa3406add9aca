// Writes a page that shows every body site on its drawing, to be looked at: dist/pictures.html.
import { mkdirSync, writeFileSync } from 'node:fs';
import { htmlPage } from '../documents/html.ts';
import { placePicture } from '../documents/pictures/place.ts';
import { readNote } from '../note/read.ts';
import { referenceTables } from '../practice/tables.ts';
import { sites } from '../reference/sites.ts';

/** The drawing of a site, on a side where it has one. */
function pictureOf(site: string, at: number): string {
  const { value } = readNote(`wheal: 1\nprocedures:\n  - site: ${site}\n`);
  const picture = value && placePicture(value, referenceTables, { id: `site-${at}` });
  return `<figure style="display:inline-block;margin:0 1rem 1rem 0"><figcaption>${site}</figcaption>${picture?.svg ?? ''}</figure>`;
}

const words = sites.map(({ name, side }, at) =>
  side === 'needed' ? `${at % 2 === 0 ? 'left' : 'right'} ${name}` : name,
);
const body = `<main><h1>Every body site</h1>\n${words.map(pictureOf).join('\n')}</main>`;

mkdirSync('dist', { recursive: true });
writeFileSync('dist/pictures.html', htmlPage('Every body site', 'en', body));
console.log(`${words.length} sites are in dist/pictures.html`);
