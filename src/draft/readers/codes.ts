import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';

const heads = wordSet('icd icd10 cpt dx code codes');
const between = wordSet('10 cm - : code codes # is are and ,');
const code = /^(?:[a-tv-z]\d[\da-z](?:\.[\da-z]{1,4})?|\d{5})$/i;
const farthest = 6;

/** Reads codes of diagnoses and of services that are named as such: "ICD-10 D48.5, CPT 11104". */
export function readCodes(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (!heads.has(low) || gather.held(at) === 'denied') continue;
    let from = at;
    for (let place = at + 1; place <= from + farthest; place += 1) {
      const word = gather.word(place);
      if (word !== undefined && code.test(word.text) && !gather.isTaken(place)) {
        const rests = [[from, place]] as const;
        gather.put({
          level: 'procedure',
          key: ['codes'],
          value: word.text,
          at: place,
          end: place + 1,
          several: true,
          rests,
        });
        from = place + 1;
      } else if (!between.has(gather.low(place))) break;
    }
  }
}
