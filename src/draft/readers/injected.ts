import { plainWord } from '../../note/words/word-table.ts';
import type { Gather } from '../gather.ts';
import type { SiteNamed } from './site.ts';
import { wordSet } from '../word-set.ts';

const given = wordSet('injected injection intralesional intralesionally il infiltrated');
const near = 8;
const keys: Readonly<Record<string, string>> = {
  'mg/mL': 'concentration',
  '%': 'concentration',
  mL: 'volume',
};

/**
 * Reads drugs that are injected into a lesion and are no anesthetic: "intralesional triamcinolone 10 mg/mL, 0.4 mL". Of a
 * text with several sites nobody can tell which of them it went to.
 */
export function readInjected(gather: Gather, sites: readonly SiteNamed[]): void {
  if (new Set(sites.map(({ reading }) => `${reading.side} ${reading.base.name}`)).size > 1) return;
  const { injectedDrugs } = gather.scan.tables;
  for (const [at, { low, kind }] of gather.scan.words.entries()) {
    if (kind !== 'word' || gather.isTaken(at) || gather.held(at) !== undefined) continue;
    const row = injectedDrugs.find(plainWord(low));
    const { from, to } = gather.sentenceAt(at);
    if (row === undefined || !gather.has(given, from, to)) continue;
    gather.put({
      level: 'procedure',
      key: ['injected', '#', 'drug'],
      value: row.name,
      at,
      end: at + 1,
      entry: at,
    });
    readAmounts(gather, at, from, to);
  }
}

/** The strength and the volume beside a drug, each where only one is there. */
function readAmounts(gather: Gather, drug: number, from: number, to: number): void {
  for (const unit of ['concentration', 'volume']) {
    const places = [];
    for (let at = Math.max(from, drug - near); at < Math.min(to, drug + near); at += 1) {
      const word = gather.word(at)!;
      if (word.kind === 'quantity' && keys[word.unit!] === unit && !gather.isTaken(at)) places.push(at);
    }
    const [at] = places;
    if (at === undefined || places.length > 1) continue;
    const value = gather.word(at)!.text;
    gather.put({ level: 'procedure', key: ['injected', '#', unit], value, at, end: at + 1, entry: drug });
  }
}
