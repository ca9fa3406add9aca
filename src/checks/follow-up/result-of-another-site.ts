import type { Report } from '../../note/tree/finding.ts';
import type { Procedure, Specimen } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import { within } from '../../note/tree/tree.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';
import { isHead, labelsIn, segmentsIn, type Segment } from './_report-heads.ts';

type Area = 'head' | 'trunk' | 'arm' | 'leg';

/** Parts of the body that nobody takes for each other; what is between two belongs to both. */
const areas: ReadonlyMap<SiteRegion, readonly Area[]> = new Map<SiteRegion, readonly Area[]>([
  ['scalp', ['head']],
  ['face', ['head']],
  ['eye', ['head']],
  ['nose', ['head']],
  ['ear', ['head']],
  ['mouth', ['head']],
  ['neck', ['head', 'trunk']],
  ['chest', ['trunk']],
  ['breast', ['trunk']],
  ['abdomen', ['trunk']],
  ['back', ['trunk']],
  ['axilla', ['trunk', 'arm']],
  ['shoulder', ['trunk', 'arm']],
  ['arm', ['arm']],
  ['hand', ['arm']],
  ['groin', ['trunk', 'leg']],
  ['genital', ['trunk', 'leg']],
  ['buttock', ['trunk', 'leg']],
  ['leg', ['leg']],
  ['foot', ['leg']],
]);

const side = /\b(?:left|right)\b/i;

/** Words under which a report may well name another place or specimen. */
const aside =
  /\b(?:history|hx|prior|previous|previously|compare|compared|similar|see|also|another|other|recommend)\b/i;

const isNear = (a: SiteRegion, b: SiteRegion, { followUp }: Tables): boolean =>
  a === b || followUp.reportHeads.neighbors.some((pair) => pair.includes(a) && pair.includes(b));

const otherSides = (one: SiteReading, other: SiteReading): boolean =>
  (one.side === 'left' && other.side === 'right') || (one.side === 'right' && other.side === 'left');

/** Whether two places can't be one: left and right, or parts of the body far from each other. */
function differ(one: SiteReading, other: SiteReading): boolean {
  if (otherSides(one, other)) return true;
  const [a, b] = [areas.get(one.base.region), areas.get(other.base.region)];
  return a !== undefined && b !== undefined && !a.some((area) => b.includes(area));
}

/** Words that name a place, and what they say. */
interface Place {
  readonly words: string;
  readonly reading: SiteReading;
}

/** What is known of a specimen that a result is filed under. */
interface Filed {
  readonly site: Place | undefined;
  /** In plain form. */
  readonly label: string | undefined;
  /** Sites and labels of the other specimens of the visit. */
  readonly others: readonly SiteReading[];
  readonly labels: ReadonlySet<string>;
}

const wordsIn = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(/[a-z]+/g) ?? []);

/** Whether one of two places of one part of the body is upper, medial, dorsal, and the other its opposite. */
function areOpposite(head: Place, site: Place, { followUp }: Tables): boolean {
  const part = ({ reading: { base } }: Place): string => base.name.split(' ').at(-1)!;
  if (head.reading.base !== site.reading.base && part(head) !== part(site)) return false;
  const [one, other] = [wordsIn(head.words), wordsIn(site.words)];
  const against = (a: string, b: string): boolean =>
    one.has(a) && !one.has(b) && other.has(b) && !other.has(a);
  return followUp.reportHeads.opposites.some(([a, b]) => against(a, b) || against(b, a));
}

/** Whether the place in the head of a report is not that of its specimen: a head says a place and nothing else. */
function isOtherHead(head: Place, site: Place, others: readonly SiteReading[], tables: Tables): boolean {
  const [one, own] = [head.reading, site.reading];
  if (differ(one, own) || areOpposite(head, site, tables)) return true;
  if (one.base === own.base) return false;
  const isSite = (other: SiteReading): boolean => other.base === one.base && !otherSides(other, one);
  const known = areas.has(one.base.region) && areas.has(own.base.region);
  return others.some(isSite) || (known && !isNear(one.base.region, own.base.region, tables));
}

/** The first place of a part of a report that is not the site of its specimen; none where its head is that site. */
function elsewhere(
  segments: readonly Segment[],
  { site, others }: Filed,
  tables: Tables,
): Segment | undefined {
  let other: Segment | undefined;
  for (const segment of site === undefined ? [] : segments) {
    const { words } = segment;
    const reading = readSite(words, tables.sites);
    if (site === undefined || reading === undefined) continue;
    if (aside.test(words)) break;
    if (!isHead(reading, tables)) {
      if (side.test(words) && differ(reading, site.reading)) other ??= segment;
    } else if (isOtherHead({ words, reading }, site, others, tables)) other ??= segment;
    else return undefined;
  }
  return other;
}

/** What in a report names another specimen than the one that it is filed under. */
function judge(
  diagnosis: Leaf<string>,
  filed: Filed,
  subject: Subject,
): { at: Segment; form: 'main' | 'label' } | undefined {
  const text = diagnosis.value ?? '';
  const { label, labels } = filed;
  const named = labelsIn(text, labels, subject.tables).filter(({ from }) => !aside.test(before(text, from)));
  const own = named.findIndex((one) => one.label === label);
  const [first] = named;
  if (first !== undefined && own < 0 && (label !== undefined || labels.has(first.label))) {
    const { from, to } = first;
    return { at: { from, to, words: text.slice(from, to) }, form: 'label' };
  }
  const at = elsewhere(segmentsIn(text, named[own]?.to, named[own + 1]?.from), filed, subject.tables);
  return at === undefined ? undefined : { at, form: 'main' };
}

/** What is before a place in its sentence. */
const before = (text: string, at: number): string => text.slice(text.lastIndexOf('.', at - 2) + 1, at);

function filedUnder(procedure: Procedure, specimen: Specimen, subject: Subject): Filed {
  const procedures = subject.note.procedures ?? [];
  const reading = subject.siteOf(procedure);
  const word = ({ label }: Specimen): string | undefined =>
    label?.value === undefined ? undefined : plainWord(label.value);
  return {
    site: reading && { words: procedure.site?.value ?? '', reading },
    label: word(specimen),
    others: procedures.flatMap((one) => (one === procedure ? [] : (subject.siteOf(one) ?? []))),
    labels: new Set(procedures.flatMap((one) => (one.specimen ?? []).flatMap((other) => word(other) ?? []))),
  };
}

function reportOf(
  diagnosis: Leaf<string>,
  procedure: Procedure,
  specimen: Specimen,
  subject: Subject,
): Report | undefined {
  const other = judge(diagnosis, filedUnder(procedure, specimen, subject), subject);
  if (other === undefined) return undefined;
  const { at, form } = other;
  const own = form === 'label' ? specimen.label : procedure.site;
  const related = form === 'label' ? 'own' : 'site';
  return {
    at: within(diagnosis.node, at.from, at.to),
    form: own === undefined ? 'unlabeled' : form,
    args: { found: at.words, site: own?.text ?? '' },
    related: own === undefined ? [] : [{ start: own.start, end: own.end, form: related, args: {} }],
  };
}

const reportsOf = (procedure: Procedure, subject: Subject): readonly Report[] =>
  (procedure.specimen ?? []).flatMap((specimen) =>
    (specimen.results ?? []).flatMap(({ diagnosis }) =>
      diagnosis?.value === undefined ? [] : (reportOf(diagnosis, procedure, specimen, subject) ?? []),
    ),
  );

export const check: Check = {
  code: 'follow-up/result-of-another-site',
  severity: 'warning',
  title: 'A result that names another site or label than its specimen',
  why: 'A report that was filed under the wrong specimen, or a container with the wrong label, sends the surgeon to the wrong place and leaves a tumor where it is. Laboratories keep wet tissue for two weeks after the final report, and blocks for ten years: ask while both are there.',
  sources: [
    { source: 'insurer-tips', mark: 'Q' },
    { source: 'laterality-records', mark: 'Q' },
    { source: 'cap-retention', mark: 'Q' },
    format,
  ],
  messages: {
    main: 'The result names “{found}”, and this specimen was taken from “{site}”. Compare report, request and label before anybody acts on it.',
    label:
      'The result names specimen {found}, and this one is labeled {site}. Compare report, request and label before anybody acts on it.',
    unlabeled:
      'The result names specimen {found}, and this specimen has no label. Compare report, request and container before anybody acts on it.',
    site: 'where the specimen was taken',
    own: 'the label of this specimen',
  },
  find: (subject) => (subject.note.procedures ?? []).flatMap((procedure) => reportsOf(procedure, subject)),
};
