import type { Report } from '../../note/tree/finding.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check } from '../check.ts';
import { mendWords, type Mended } from './_mend.ts';
import { type Located, placeOf, ofLocated } from './_side.ts';

const inWords = { left: 'left', right: 'right', both: 'bilateral', midline: 'midline' } as const;

function abbreviated({ site, reading }: Located): readonly Report[] {
  const found: Report[] = [];
  for (const word of reading.sides) {
    if (!word.abbreviated) continue;
    const pair = word.side === 'both' && /\band\b|&/i.test(site.text.slice(word.from, word.to));
    const instead = pair ? 'left and right' : inWords[word.side];
    const typed = site.text.slice(word.from, word.to);
    const to = site.text[word.to] === '.' ? word.to + 1 : word.to;
    const edit = { ...within(site.node, word.from, to), text: instead };
    const data: Mended | undefined =
      site.node.inner < 0 ? undefined : { instead, sure: !pair, other: false, edits: [edit] };
    found.push({
      at: placeOf(site, word),
      args: { typed, instead },
      ...(data === undefined ? {} : { data }),
    });
  }
  return found;
}

export const check: Check = {
  code: 'site/side-abbreviated',
  severity: 'information',
  title: 'Side written as a letter',
  why: 'L and R are easily mixed up and misread. Advice on wrong-side errors is to write the word.',
  sources: [{ source: 'laterality-letters', mark: 'Q' }],
  messages: { main: '"{typed}" for a side can be misread. Write {instead}.' },
  find: ofLocated(abbreviated),
  fix: mendWords,
};
