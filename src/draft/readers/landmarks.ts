import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { plainOf } from '../scan.ts';

const lengths = wordSet('mm cm in');
const relations = wordSet(
  'from below above lateral medial inferior superior distal proximal anterior posterior off behind left right',
);
const links = wordSet('to of from the his her a');
/** Points of the body that distances are measured from; most are no sites of their own. */
const points = wordSet(
  'midline hairline sternum umbilicus navel nipple clavicle axilla spine canthus tragus ala vermilion chin knee elbow wrist ankle patella crest malleolus crease ' +
    'acromion jaw mandible angle columella commissure philtrum brow eyebrow nose eye ear earlobe lip mouth joint knuckle heel cleft fossa olecranon occiput nape notch manubrium scapula trochanter iliac',
);
const longestName = 5;

/** Reads distances to fixed points: "4 cm from the midline and 12 cm below the hairline". */
export function readLandmarks(gather: Gather): void {
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const first = distanceEnd(gather, at);
    if (first === undefined) continue;
    const end = withNext(gather, first);
    const value = plainOf(gather.scan, at, end);
    gather.put({ level: 'procedure', key: ['landmarks'], value, at, end });
    at = end - 1;
  }
}

/** Distances joined by an "and" or a comma are one value. */
function withNext(gather: Gather, end: number): number {
  let last = end;
  for (;;) {
    let next = last;
    while (gather.low(next) === 'and' || gather.low(next) === ',') next += 1;
    const more = next > last ? distanceEnd(gather, next) : undefined;
    if (more === undefined) return last;
    last = more;
  }
}

/** The place after a distance that begins at a place: a length, where from, and a point of the body. */
function distanceEnd(gather: Gather, at: number): number | undefined {
  if (!isLength(gather, at) || !relations.has(gather.low(at + 1))) return undefined;
  let from = at + 2;
  while (links.has(gather.low(from))) from += 1;
  for (let place = from; place < from + longestName && gather.word(place)?.kind === 'word'; place += 1)
    if (points.has(gather.low(place)) && !points.has(gather.low(place + 1))) return place + 1;
  return undefined;
}

/** Whether a word is a length that nobody has read yet. */
function isLength(gather: Gather, at: number): boolean {
  const { kind, unit = '' } = gather.word(at) ?? {};
  return kind === 'quantity' && lengths.has(unit) && !gather.isTaken(at) && gather.held(at) === undefined;
}
