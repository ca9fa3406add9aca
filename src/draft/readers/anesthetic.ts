import { readInjectionLine } from '../../note/words/dictated.ts';
import type { Found, Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { plainOf, type Term } from '../scan.ts';

const amounts = wordSet('mL % mg/mL mcg/mL g');
const linking = wordSet(
  'w/ w with and of in a an the total plain without w/o no epinephrine epi adrenaline adrenalin buffered buffer bicarbonate bicarb ' +
    'sodium nahco3 preservative free pf local anesthetic anaesthetic anesthesia anaesthesia solution hcl hydrochloride containing ' +
    'intradermal intradermally subcutaneous subcutaneously volume using unbuffered',
);
const edges = wordSet(
  'w/ w with and of in a an the no without w/o total using volume local anesthetic anaesthetic anesthesia anaesthesia solution free',
);
const ofVolume = wordSet(
  'total used injected infiltrated given administered infiltration injection anesthetized anesthetised anaesthetised anaesthetized numbed anesthesia anaesthesia anesthetic anaesthetic local volume placed',
);

/** Reads injections with the code that reads a dictated line of a note, and volumes that are said apart from it. */
export function readAnesthetics(gather: Gather): void {
  const { scan } = gather;
  const agents = new Map<number, Term>();
  for (const term of scan.agents) agents.set(term.at, term);
  for (let at = 0; at < scan.words.length;) {
    const run = runAt(gather, at, agents);
    if (run === undefined) at += 1;
    else {
      readRun(gather, run);
      at = run.end;
    }
  }
  readVolumes(gather);
}

interface Run {
  readonly at: number;
  readonly end: number;
  readonly agents: readonly Term[];
}

/** The longest run of words that a dictated line may have, where it names an agent. */
function runAt(gather: Gather, at: number, agents: ReadonlyMap<number, Term>): Run | undefined {
  const named: Term[] = [];
  let end = at;
  while (end < gather.scan.words.length) {
    const agent = agents.get(end);
    if (agent !== undefined) {
      named.push(agent);
      end = agent.end;
    } else if (isPart(gather, end)) end += 1;
    else break;
  }
  if (named.length === 0) return undefined;
  let from = at;
  while (from < end && isEdge(gather, from)) from += 1;
  while (end > from && isEdge(gather, end - 1)) end -= 1;
  return { at: from, end, agents: named };
}

const isEdge = (gather: Gather, at: number): boolean =>
  gather.word(at)!.kind === 'mark' || edges.has(gather.low(at));

function isPart(gather: Gather, at: number): boolean {
  const word = gather.word(at)!;
  if (gather.isTaken(at)) return false;
  if (word.kind === 'quantity') return amounts.has(word.unit!) && !isGauge(gather, at);
  if (word.kind === 'ratio') return true;
  if (word.kind === 'mark') return ',()/¬'.includes(word.text);
  return word.kind === 'word' && linking.has(word.low);
}

/** "30 g needle" is a thickness and no amount. */
const isGauge = (gather: Gather, at: number): boolean =>
  gather.word(at)!.unit === 'g' && gather.has(needles, at + 1, at + 4);
const needles = wordSet('needle needles gauge');

/** Reads a run, cut where a second agent begins. */
function readRun(gather: Gather, { at, end, agents }: Run): void {
  const first = agents[0]!;
  if (
    agents.some((agent) => gather.held(agent.at) !== undefined || isReactedTo(gather, agent)) ||
    isOfAllergy(gather, first)
  )
    return;
  if (agents.length === 1) {
    readLine(gather, at, end);
    return;
  }
  if (readMixedCream(gather, at, end, agents)) return;
  let from = at;
  for (let next = 1; next < agents.length; next += 1) {
    const cut = jointBefore(gather, agents[next - 1]!.end, agents[next]!.at);
    if (cut === undefined) return;
    readLine(gather, from, cut);
    from = cut + 1;
  }
  readLine(gather, from, end);
}

/** "Lidocaine 2.5% and prilocaine 2.5% cream" is one product. */
function readMixedCream(gather: Gather, at: number, end: number, agents: readonly Term[]): boolean {
  const form = gather.low(end);
  if (form !== 'cream' && form !== 'gel') return false;
  const names = agents.map(({ claims }) => claims[0]!.row.name);
  const row = gather.scan.tables.agents.find(`${names.join('-')} ${form}`);
  if (row !== undefined) gather.put({ ...entryOf('agent', at), value: row.name, at, end: end + 1 });
  return true;
}

const joints = wordSet('and ,');

/** The last word that joins two injections. */
function jointBefore(gather: Gather, from: number, to: number): number | undefined {
  for (let at = to - 1; at >= from; at -= 1) if (joints.has(gather.low(at))) return at;
  return undefined;
}

/** After an amount: it was not all injected. */
const notGiven = wordSet('drawn wasted discarded remaining remained left available mixed loaded prepared');
const ofAllergy = wordSet(
  'allergic allergy allergies reaction reacts tolerates tolerated hives rash anaphylaxis',
);

/** "Reacts to lidocaine". */
const isReactedTo = (gather: Gather, { at }: Term): boolean => gather.has(reacting, at - 3, at);
const reacting = wordSet('allergic allergy reacts reaction sensitive');

/** Whether an agent without an amount is in a statement of allergies. */
const isOfAllergy = (gather: Gather, { at }: Term): boolean => {
  const { from, to } = gather.sentenceAt(at);
  if (!gather.has(ofAllergy, from, to)) return false;
  for (let place = from; place < to; place += 1)
    if (gather.word(place)!.kind === 'quantity' && amounts.has(gather.word(place)!.unit!)) return false;
  return true;
};

function readLine(gather: Gather, from: number, end: number): void {
  const line = plainOf(gather.scan, from, end);
  const places = placesOf(gather, from, end);
  const { fields } = readInjectionLine(line);
  const volumes = volumesIn(gather, from, end);
  // "0.5 mL/1 mL/1 mL": of several volumes nobody says which is of which site.
  const unused = gather.has(notGiven, end, end + 3) || isAddedTo(gather, from, end) || volumes.length > 1;
  const given = fields.filter(({ key }) => key !== 'product' && !(unused && key === 'volume'));
  const left = unused ? volumes : [];
  for (const { key, from: start, to, says } of given) {
    const [at, after] = places(start, to);
    const typed = says ?? line.slice(start, to);
    const value = key === 'agent' ? (gather.scan.tables.agents.find(typed)?.name ?? typed) : typed;
    const rests = key === 'agent' ? { rests: without(left, from, end) } : {};
    const ofAll = isTotal(gather, from, end) ? { ofAll: true as const } : {};
    gather.put({ ...entryOf(key, from), value, at, end: after, ...rests, ...ofAll });
  }
}

/** The words of a line without the volumes that stay words. */
function without(left: readonly number[], from: number, end: number): readonly (readonly [number, number])[] {
  const edges = [from - 1, ...left, end];
  return edges
    .slice(1)
    .map((to, nth) => [edges[nth]! + 1, to] as const)
    .filter(([at, to]) => to > at);
}

/** The places of volumes in a line. */
function volumesIn(gather: Gather, from: number, end: number): readonly number[] {
  const places: number[] = [];
  for (let at = from; at < end; at += 1) if (gather.word(at)!.unit === 'mL') places.push(at);
  return places;
}

/** Whether a volume is not all that was given: "10 mL then another five", "additional 2 mL". What the words add up to is not said. */
function isAddedTo(gather: Gather, from: number, end: number): boolean {
  const last = Math.min(gather.sentenceAt(end - 1).to, end + farthestAdded);
  if (gather.has(added, from - farthestLead, from)) return true;
  for (let at = end; at < last; at += 1)
    if (added.has(gather.low(at)) && (hasNumber(gather, at + 1) || hasNumber(gather, at - 1))) return true;
  return false;
}

const farthestLead = 3;
const farthestAdded = 8;
const added = wordSet('another additional more extra further again plus');

const hasNumber = (gather: Gather, at: number): boolean =>
  gather.word(at)?.digits !== undefined || gather.word(at)?.kind === 'quantity';

/** Whether an injection is said to be that of all sites together. */
const isTotal = (gather: Gather, from: number, end: number): boolean =>
  gather.has(totals, from - 2, end + 2) && !gather.has(eachOne, from, end + 2);
const totals = wordSet('total totalling altogether');
const eachOne = wordSet('each');

const entryOf = (key: string, entry: number): Pick<Found, 'level' | 'key' | 'entry'> => ({
  level: 'procedure',
  key: ['anesthetic', '#', key],
  entry,
});

/** Finds the words between two characters of a line that was made of them. */
function placesOf(
  { scan }: Gather,
  from: number,
  end: number,
): (start: number, to: number) => [at: number, end: number] {
  const starts: number[] = [];
  for (let at = from; at < end; at += 1)
    starts.push(plainOf(scan, from, at + 1).length - scan.words[at]!.text.length);
  return (start, to) => {
    let at = from;
    while (at + 1 < end && starts[at + 1 - from]! <= start) at += 1;
    let after = at + 1;
    while (after < end && starts[after - from]! < to) after += 1;
    return [at, after];
  };
}

/** Whether another strength is between a volume and its agent: "14 mL of 0.5% foocaine and 1% lidocaine". */
function isOfAnother(gather: Gather, entry: Found, at: number): boolean {
  const [from, to] = entry.at > at ? [at + 1, entry.at] : [entry.end, at];
  const sentence = gather.sentenceAt(at);
  for (let place = Math.max(from, sentence.from); place < Math.min(to, sentence.to); place += 1)
    if (gather.word(place)!.unit === '%' && !gather.isTaken(place)) return true;
  return false;
}

/**
 * Whether a volume contradicts another of the same injection: in one sentence, with words of doubt between them, or
 * none at all.
 */
function isOtherWay(gather: Gather, known: Found, at: number): boolean {
  const [from, to] = known.at < at ? [known.end, at] : [at + 1, known.at];
  if (to - from > farthestDoubt || gather.sentenceAt(at).from !== gather.sentenceAt(known.at).from)
    return false;
  return gather.has(doubts, from, to);
}

const farthestDoubt = 5;
const doubts = wordSet('or maybe perhaps possibly probably well rather closer like');

/** Whether a word is a volume that nobody has read yet, in a clause about what was given. */
function isVolumeGiven(gather: Gather, at: number): boolean {
  const { kind, unit } = gather.word(at)!;
  if (kind !== 'quantity' || unit !== 'mL' || gather.isTaken(at) || gather.held(at) !== undefined)
    return false;
  const { from, to } = gather.clauseAt(at);
  return gather.has(ofVolume, from, to) && !gather.has(notGiven, at + 1, at + 4);
}

/** Volumes that are said apart from their agent: "a total of 3 mL was used". */
function readVolumes(gather: Gather): void {
  const { scan, found } = gather;
  const entries = found.filter(({ key }) => key[2] === 'agent');
  if (entries.length === 0) return;
  for (const [at, { text }] of scan.words.entries()) {
    if (!isVolumeGiven(gather, at)) continue;
    const entry = entries.findLast((one) => one.at < at) ?? entries[0]!;
    if (isOfAnother(gather, entry, at)) continue;
    const known = found.find((one) => one.entry === entry.entry && one.key[2] === 'volume');
    if (known !== undefined && !isOtherWay(gather, known, at)) continue;
    gather.put({ ...entryOf('volume', entry.entry!), value: text, at, end: at + 1 });
  }
}
