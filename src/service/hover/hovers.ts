import { checkOf, messageOf } from '../../checks/index.ts';
import { catalogue as sentences } from '../../documents/handout/sentences/index.ts';
import { readMoment } from '../../note/values/dates.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { Lines } from '../../note/text/lines.ts';
import type { KeyShape } from '../../note/tree/shape.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { daySection } from './days.ts';
import { doseSection } from './dose.ts';
import { findingSections } from './findings.ts';
import { injectedSection } from './injected.ts';
import { forAllSections, takenOver } from './for-all.ts';
import { markdownOf, someOf, type Row, type Section } from './section.ts';
import { siteSections, windowOf } from './site.ts';
import { checkSections, hemostasisSections, implantSections, thinnerSections } from './words.ts';
import { locate, type Place } from '../analysis/locate.ts';
import { acceptedAt, acceptedFindings } from './navigation.ts';
import { readSite } from '../../note/words/site.ts';
import { rowsOfTable } from '../analysis/words.ts';

/** What is shown beside the pointer. */
export interface Hover extends Range {
  /** Markdown in which all words of the note are escaped: no link, HTML or command of the note works in it. */
  readonly markdown: string;
}

/** A text of the note under the pointer, and the key whose value it is. */
interface Said {
  readonly text: string;
  readonly offset: number;
  readonly analysis: Analysis;
}

/** Help of the key at an offset, and what follows from the value there. */
export function hoverAt(analysis: Analysis, offset: number): Hover | undefined {
  const place = locate(analysis.root, offset, analysis.shapes, analysis.kind);
  const { entry, key, node, onKey } = place;
  const free = freeSections(place);
  if (entry !== undefined && free.length > 0)
    return { start: entry.start, end: (entry.value ?? entry).end, markdown: markdownOf(free) };
  if (entry === undefined || key === undefined) return undefined;
  const help = helpSection(key, analysis);
  const shared = forAllSections(analysis.note, place.path);
  const rests = findingSections(analysis, offset);
  if (onKey) return { start: entry.start, end: entry.end, markdown: markdownOf([...shared, ...rests, help]) };
  if (node?.kind !== 'text') return undefined;
  const own = valueKey(key, analysis);
  const sections = node.text.trim() === '??' ? [] : valueSections({ text: node.text, offset, analysis }, own);
  const caution = sections.length > 0 && canHurt.has(own.key);
  const markdown = markdownOf([...shared, ...sections, ...rests], { caution, help });
  return { start: node.start, end: node.end, markdown };
}

/** What a row of the practice file says whose key is free: a check with its severity, or a sentence that is replaced. */
function freeSections({ path, entry }: Place): readonly Section[] {
  if (entry === undefined) return [];
  const [first, second] = path;
  if (first === 'severities') return checkSections(entry.key);
  const sentence = first === 'handout' && second === 'sentences' ? sentences.get(entry.key) : undefined;
  return sentence === undefined
    ? []
    : [{ title: sentence.id, rows: [{ text: sentence.en }, { text: sentence.es }] }];
}

/** The key that a bare text means, where it takes the place of a map with one key. */
function valueKey(key: KeyShape, { shapes }: Analysis): KeyShape {
  const { map, text } = key;
  return map === undefined || text === undefined ? key : (shapes.get(map)?.byName.get(text) ?? key);
}

function helpSection(key: KeyShape, { context: { tables } }: Analysis): Section {
  const words = rowsOfTable(tables, key.words).map(({ name }) => name);
  const rows: readonly Row[] = [
    { text: key.description },
    ...(words.length === 0 ? [] : [{ text: `Words: ${someOf(words)}` }]),
  ];
  return { title: key.key, rows };
}

/** Keys whose values can hurt a patient: their hovers end with a word of caution. */
const canHurt: ReadonlySet<string> = new Set([
  'agent',
  'product',
  'concentration',
  'epinephrine',
  'volume',
  'amount',
  'buffered',
  'anesthetic',
  'drug',
  'injected',
  'area',
  'site',
  'sutures-due',
  'medications',
  'hemostasis',
  'kind',
]);

function valueSections(said: Said, key: KeyShape): readonly Section[] {
  const own = byKey.get(key.key)?.(said) ?? [];
  return own.length > 0 ? own : (byReader.get(key.reads ?? '')?.(said) ?? []);
}

function dose({ analysis: { judgement, context, note }, offset }: Said): readonly Section[] {
  const section =
    doseSection(judgement.dose, offset, context.tables) ?? injectedSection(note, offset, context.tables);
  return section === undefined ? [] : [section];
}

const day = ({ text, analysis: { note } }: Said): readonly Section[] =>
  dayRows(readMoment(text).value?.date, note);

const dayRows = (date: IsoDate | undefined, note: Note | null): readonly Section[] =>
  date === undefined ? [] : [daySection(date, note?.visit?.value?.date)];

const procedureAt = ({ analysis: { note }, offset }: Said): Procedure | undefined =>
  note?.procedures?.find((procedure) => holds(procedure, offset));

function site(said: Said): readonly Section[] {
  const { note, context } = said.analysis;
  const procedure = procedureAt(said);
  return [
    ...siteSections(said.text, note, procedure, context.tables),
    ...takenOver(said.analysis, procedure),
  ];
}

function stitchesDue(said: Said): readonly Section[] {
  const { note, context } = said.analysis;
  const procedure = procedureAt(said);
  const text = procedure?.site?.value;
  const reading = text === undefined ? undefined : readSite(text, context.tables.sites);
  const window = windowOf(note, procedure, reading, context.tables);
  const due = dayRows(procedure?.suturesDue?.value, note);
  if (window === undefined) return due;
  const dates = { text: `so from ${window.from} to ${window.to}`, source: window.source, mark: window.mark };
  return [...due, { title: 'When the stitches come out', rows: [...window.steps, dates] }];
}

function implant(said: Said): readonly Section[] {
  const { note, context } = said.analysis;
  const isImplant = note?.patient?.implants?.some(
    ({ kind }) => kind !== undefined && holds(kind, said.offset),
  );
  return isImplant === true ? implantSections(said.text, context.tables) : [];
}

/** What the check of an acceptance finds, and what of it is here. */
function accepted({ text, offset, analysis }: Said): readonly Section[] {
  const map = acceptedAt(locate(analysis.root, offset, analysis.shapes, analysis.kind));
  if (map === undefined || checkOf(text.trim()) === undefined) return [];
  const lines = new Lines(analysis.text);
  const found = acceptedFindings(map, analysis).map((finding) => ({
    text: `Line ${lines.at(finding.start).line + 1}: ${messageOf(finding)}`,
  }));
  const none = [{ text: 'Nothing of this kind is found here now.' }];
  return [...checkSections(text), { title: 'What is accepted', rows: found.length === 0 ? none : found }];
}

const holds = ({ start, end }: Range, offset: number): boolean => offset >= start && offset <= end;

const tablesOf = ({ analysis }: Said): Analysis['context']['tables'] => analysis.context.tables;

const byKey: ReadonlyMap<string, (said: Said) => readonly Section[]> = new Map([
  ...['agent', 'product', 'concentration', 'epinephrine', 'volume', 'amount', 'buffered', 'anesthetic'].map(
    (key): [string, (said: Said) => readonly Section[]] => [key, dose],
  ),
  ['drug', dose],
  ['area', dose],
  ['site', site],
  ['sutures-due', stitchesDue],
  ['medications', (said: Said) => thinnerSections(said.text, tablesOf(said))],
  ['hemostasis', (said: Said) => hemostasisSections(said.text, tablesOf(said))],
  ['kind', implant],
  ['check', accepted],
]);

const byReader: ReadonlyMap<string, (said: Said) => readonly Section[]> = new Map([
  ['date', day],
  ['moment', day],
]);
