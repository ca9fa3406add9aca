import type { LanguageService } from 'yaml-language-server/lib/esm/languageservice/yamlLanguageService.js';
import type { Analysis } from '../../src/service/index.ts';
import { documentOf, incumbent, type Document } from './incumbent.ts';
import { compare, compareReady, ratioOf, type Row } from './measure.ts';
import { faultyNote, noteOf } from './notes.ts';
import type * as Subject from './subject.ts';

const rounds = 200;
const today = '2026-04-30';

/** Places in the note of the bench at which something can be typed: a key, a word, and values that need the rest of the note. */
const places: readonly (readonly [name: string, goal: number, before: string])[] = [
  ['a key', 1.3, '    photo: yes\n    '],
  ['a site', 1.3, '  - site: '],
  ['a strength, the repaired text parsed too', 2.1, '        concentration: '],
  ['a dressing, the repaired text parsed too', 2.1, '    dressing: ['],
];

/** Costs of the features of the language service, each against one parse of the same text. */
export function serviceRows({
  parseDocument,
  service,
  noteIndex,
  referenceTables: tables,
}: typeof Subject): readonly Row[] {
  const parse = (text: string): unknown => parseDocument(text);
  const writing = { tables, today, shapes: noteIndex, root: 'note' };
  const note = noteOf(60);
  const complete = (before: string) => (text: string) =>
    service.completionsAt(text, text.indexOf(before) + before.length, writing);
  const accepting = note.replace('    photo: yes', '    accepted: [{check: }]\n    photo: yes');
  return [
    ...places.map(([name, goal, before]) =>
      compare(`completion to parse: ${name}`, goal, note, complete(before), parse, rounds),
    ),
    compare(
      'completion to parse: an open code, the repaired text parsed and judged too',
      2.1,
      accepting,
      complete('{check: '),
      parse,
      rounds,
    ),
    ...featuresOf(service).map(([name, text, measured, goal = 0.1]) =>
      compareReady(
        { name: `${name} to parse, once parsed`, goal, text, rounds },
        (fresh) => service.analyse(fresh, { tables, today }),
        measured,
        parse,
      ),
    ),
  ];
}

type Feature = readonly [
  name: string,
  text: string,
  measured: (analysis: Analysis) => unknown,
  goal?: number,
];

function featuresOf(service: typeof Subject.service): readonly Feature[] {
  const note = noteOf(60);
  const faulty = faultyNote();
  const on = (words: string) => (analysis: Analysis) =>
    service.hoverAt(analysis, analysis.text.indexOf(words) + 1);
  const row = faulty.indexOf('metod');
  const fixes = (words: string) => (analysis: Analysis) =>
    service.fixesAt(analysis, analysis.text.indexOf(words), analysis.text.indexOf(words) + words.length);
  return [
    ['hover on a volume', note, on('0.1 mL')],
    ['hover on a site', note, on('right upper back')],
    ['fixes of a row', faulty, (analysis) => service.fixesAt(analysis, row, row + 12)],
    ['fix all', faulty, service.fixAll],
    // Each reading that is offered was tried on the note before, and judged as a whole.
    ['fixes of a value, one trial', note.replace('0.1 mL', '60 mL'), fixes('60 mL'), 0.7],
    [
      'fixes of a date, four trials',
      note.replace('sent: 2026-03-02', 'sent: 2025-03-02'),
      fixes('2025-03-02'),
      1.3,
    ],
    ['hints', note, (analysis) => service.hintsIn(analysis, 0, note.length)],
    ['lenses', note, service.lensesOf],
    ['status', note, service.statusOf],
    ['outline', note, ({ note: read }) => (read === null ? [] : service.outlineOf(read))],
    ['folds', note, ({ text, root }) => service.foldsOf(text, root)],
  ];
}

/** What of ours is measured, by the beginning of its line's name, and what the other service does for it. */
const asked: Readonly<Record<string, (service: LanguageService, document: Document) => unknown>> = {
  'whole check to parse, note of 60 rows': (service, document) => service.doValidation(document, false),
  'completion to parse: a key': (service, document) =>
    service.doComplete(document, placeOf(document, '    photo: yes\n    '), false),
  'completion to parse: a site': (service, document) =>
    service.doComplete(document, placeOf(document, '  - site: '), false),
  'hover on a volume': (service, document) => service.doHover(document, placeOf(document, 'volume: 0.')),
  outline: (service, document) => service.findDocumentSymbols2(document),
  folds: (service, document) => service.getFoldingRanges(document, {}),
};

const placeOf = (document: Document, words: string): ReturnType<Document['positionAt']> =>
  document.positionAt(document.getText().indexOf(words) + words.length);

/** The lines with what yaml-language-server takes for the same on the same note. Its own parse counts, as ours does in a check. */
export async function withIncumbent(
  rows: readonly Row[],
  service: LanguageService,
  parse: (text: string) => unknown,
): Promise<readonly Row[]> {
  const more: Row[] = [];
  for (const row of rows) {
    const [, ask] = Object.entries(asked).find(([name]) => row.name.startsWith(name)) ?? [];
    if (ask === undefined) more.push(row);
    else {
      const once = row.name.endsWith('once parsed');
      const prepare = async (text: string): Promise<Document> => {
        const document = documentOf(text);
        if (once) await service.doValidation(document, false);
        return document;
      };
      const ratio = await ratioOf(noteOf(60), 100, prepare, async (one) => await ask(service, one), parse);
      more.push({ ...row, beside: { name: incumbent, ratio } });
    }
  }
  return more;
}
