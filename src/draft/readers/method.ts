import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { claimOf, type Term } from '../scan.ts';

/** Methods that take no tissue and are named by words that mean nothing else. */
const treatments: ReadonlySet<string> = new Set([
  'cryotherapy',
  'laser',
  'debridement',
  'paring',
  'injection',
]);
/** Words of methods that are as often said of other things. */
const loose = wordSet(
  'incision injection injected swab repair laser path scrape disc graft edc cautery cauterized electrocautery removed removal excised excise excision snip scissors scissor clipped clipping wedge',
);
const operative = wordSet(
  'biopsy biopsied biopsies performed procedure removed removal method technique excision excised snipped cut done treated obtained taken was were',
);

export interface MethodNamed {
  readonly at: number;
  readonly end: number;
  readonly name: string;
}

/** Finds the methods that a text says were used. */
export function methodsIn(gather: Gather): readonly MethodNamed[] {
  const open = gather.scan.terms.filter(
    (term) => isInjection(gather, term) || !gather.isTaken(term.at, term.end),
  );
  return open.flatMap((term) => {
    const claim = claimOf(term, 'method');
    if (claim === undefined || gather.held(term.at) !== undefined || !isMethod(gather, term)) return [];
    return [{ at: term.at, end: term.end, name: claim.row.name }];
  });
}

/** "Intralesional triamcinolone" says the method and the drug; a bare injection is that of an anesthetic. */
const isInjection = (gather: Gather, { at }: Term): boolean => gather.low(at).startsWith('intralesional');

function isMethod(gather: Gather, term: Term): boolean {
  const { at, end, claims } = term;
  const row = claims.find(({ table }) => table === 'method')!.row;
  const takes = gather.scan.tables.methods.find(row.name)?.takesTissue === true;
  if (!takes && !treatments.has(row.name)) return false;
  if (row.name === 'injection') return isInjection(gather, term);
  if (end - at > 1) return true;
  const { from, to } = gather.sentenceAt(at);
  return !loose.has(gather.low(at)) || gather.has(operative, from, to);
}
