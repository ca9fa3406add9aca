import type { OpenItem } from '../../followup/caseload.ts';
import type { DueKind } from '../../followup/due.ts';
import { loopsOf } from '../../followup/loops.ts';
import { wayOf } from '../../followup/telling.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import type { Event, Note, Procedure, Result, Specimen } from '../../note/generated/types.ts';
import type { Part } from '../../note/tree/leaf.ts';
import type { MapNode } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { entryOf, mapsOf, type PlacedMap } from '../../note/tree/maps.ts';
import { askCount, askDay, askWords, type Answers, type Choice, type Question } from './questions.ts';
import {
  addItem,
  isCompact,
  setFields,
  setMap,
  type Fields,
  type Form,
  type Refused,
} from '../edits/fields.ts';

/** What is asked, and what is written with the answers. */
export interface Plan {
  readonly title: string;
  readonly questions: readonly Question[];
  readonly write: (answers: Answers) => readonly TextEdit[] | Refused;
}

/** A note into which something is to be written. */
export class Sheet {
  readonly text: string;
  readonly today: IsoDate;
  readonly visit: IsoDate | undefined;
  private readonly maps: readonly PlacedMap[];
  private readonly compact: boolean;

  constructor(
    readonly analysis: Analysis,
    readonly note: Note,
    root: MapNode,
    today: IsoDate,
  ) {
    this.text = analysis.text;
    this.today = today;
    this.visit = note.visit?.value?.date;
    this.maps = mapsOf(root, analysis.shapes, 'note');
    this.compact = isCompact(analysis.text, root);
  }

  /** The map of a part of the note; undefined where it is no map, or is below a misspelled key. */
  mapOf(part: Part, name: string): PlacedMap | undefined {
    const index = this.analysis.shapes.get(name);
    return this.maps.find((map) => map.index === index && map.node.start === part.start);
  }

  set(part: Part, name: string, fields: Fields): readonly TextEdit[] | Refused {
    const map = this.mapOf(part, name);
    return map === undefined ? noPlace : setFields(this.text, map, fields);
  }

  put(part: Part, name: string, key: string, fields: Fields, form: Form): readonly TextEdit[] | Refused {
    const map = this.mapOf(part, name);
    return map === undefined ? noPlace : setMap(this.text, map, key, fields, form, this.compact);
  }

  add(
    part: Part,
    name: string,
    key: string,
    fields: Fields,
    form: 'row' | 'list',
  ): readonly TextEdit[] | Refused {
    const map = this.mapOf(part, name);
    return map === undefined ? noPlace : addItem(this.text, map, key, fields, form, this.compact);
  }
}

export const noPlace: Refused = {
  why: 'There is no sure place for it in this note. Mend what is wrong in it first, or write it by hand.',
};

const unknown = '??';

/** Keys with their answers in the order in which they are written; what nobody said is not yet known. */
const fieldsOf = (keys: readonly string[], answers: Answers): Fields =>
  keys.map((key) => [key, answers.get(key) ?? unknown] as const);

const covers = ({ start, end, head }: Part, offset: number): boolean =>
  offset >= Math.min(start, head.start) && offset <= Math.max(end, head.end);

const holding = <T extends Part>(parts: readonly T[] | undefined, offset: number): T | undefined =>
  parts?.findLast((part) => covers(part, offset));

interface Around {
  readonly procedure: Procedure | undefined;
  readonly specimen: Specimen | undefined;
  readonly result: Result | undefined;
  readonly event: Event | undefined;
}

/** The parts of a note around an offset. */
function around({ procedures, events }: Note, offset: number): Around {
  const procedure = holding(procedures, offset);
  const specimen = holding(procedure?.specimen, offset);
  const result = holding(specimen?.results, offset);
  return { procedure, specimen, result, event: holding(events, offset) };
}

type Act = (sheet: Sheet, at: Around, item: OpenItem) => Plan | Refused;

/** The later of some days; undefined where none is known. */
const latest = (...days: readonly (IsoDate | undefined)[]): IsoDate | undefined =>
  days
    .filter((day) => day !== undefined)
    .reduce<IsoDate | undefined>((last, day) => (last === undefined || day > last ? day : last), undefined);

const sent: Act = (sheet, { procedure, specimen }) => {
  const { today, visit } = sheet;
  const day = askDay('sent', 'When did the specimen leave?', today, visit);
  const title = 'Specimen sent';
  if (specimen !== undefined)
    return {
      title,
      questions: [day],
      write: (answers) => sheet.set(specimen, 'specimen', fieldsOf(['sent'], answers)),
    };
  if (procedure === undefined) return noPlace;
  return {
    title,
    questions: [
      day,
      askWords('label', 'Label on the container', { example: 'A' }),
      askWords('medium', 'What is it in?', { choices: mediaOffered(sheet) }),
    ],
    write: (answers) =>
      sheet.put(procedure, 'procedure', 'specimen', fieldsOf(['label', 'medium', 'sent'], answers), 'rows'),
  };
};

const mediaOffered = ({ analysis }: Sheet): readonly Choice[] =>
  analysis.context.tables.media.rows.map(({ name }) => ({ text: name, detail: '' }));

const received: Act = (sheet, { specimen }) => {
  if (specimen === undefined) return noPlace;
  const { visit, today } = sheet;
  const came = loopsOf(specimen, sheet.analysis.context.tables, sheet.note).map(({ result }) => result);
  const waiting = specimen.results?.find((result) => !came.includes(result));
  const keys = ['received', 'diagnosis'];
  return {
    title: 'Result received',
    questions: [
      askDay('received', 'When did the result come?', today, visit, latest(visit, specimen.sent?.value)),
      askWords('diagnosis', 'What did the pathologist find?', { example: 'as the report says it' }),
    ],
    write: (answers) =>
      waiting === undefined
        ? sheet.add(specimen, 'specimen', 'results', fieldsOf(keys, answers), 'list')
        : sheet.set(waiting, 'result', fieldsOf(keys, answers)),
  };
};

const waysOffered: readonly (readonly [detail: string, ways: readonly string[]])[] = [
  ['the patient heard it', ['telephone', 'visit', 'video visit']],
  ['enough only where the result asks for nothing', ['letter', 'portal message']],
  ['an attempt: it stays open', ['voicemail', 'no answer']],
];
const ways: readonly Choice[] = waysOffered.flatMap(([detail, texts]) =>
  texts.map((text) => ({ text, detail })),
);

const triedFields = (answers: Answers): Fields => [
  ...fieldsOf(['on', 'by'], answers),
  ['outcome', answers.get('how') ?? unknown],
];

const told: Act = (sheet, { specimen, result }) => {
  if (result === undefined) return noPlace;
  const { today, visit } = sheet;
  const since = latest(visit, specimen?.sent?.value, result.received?.value);
  const begun = result.told?.find(
    (one) => (one.on === undefined || one.on.pending) && one.how?.value === undefined,
  );
  const gap = begun !== undefined && sheet.mapOf(begun, 'told') !== undefined ? begun : undefined;
  const keys = ['on', 'by', 'how'];
  return {
    title: 'Patient told',
    questions: [
      askDay('on', 'On which day?', today, undefined, since),
      askWords('how', 'How? A voicemail is an attempt, not told.', { choices: ways }),
      ...(gap?.by?.value === undefined ? [askWords('by', 'Who told, or tried? Initials or name.')] : []),
    ],
    write: (answers) => {
      if (wayOf(answers.get('how') ?? '', sheet.analysis.context.tables) === 'attempt')
        return sheet.add(result, 'result', 'attempts', triedFields(answers), 'row');
      const said = gap?.by?.value === undefined ? keys : ['on', 'how'];
      return gap === undefined
        ? sheet.add(result, 'result', 'told', fieldsOf(keys, answers), 'row')
        : sheet.set(gap, 'told', fieldsOf(said, answers));
    },
  };
};

const next: Act = (sheet, { specimen, result }, { what }) => {
  if (result === undefined) return noPlace;
  const { today, visit } = sheet;
  if (result.next?.value === undefined)
    return {
      title: 'Plan',
      questions: [
        askWords('next', 'What happens next?', {
          required: true,
          example: 're-excision on a day, or none needed',
        }),
      ],
      write: (answers) => sheet.set(result, 'result', fieldsOf(['next'], answers)),
    };
  const since = latest(visit, specimen?.sent?.value, result.received?.value);
  return {
    title: 'Step done',
    questions: [askDay('done', `When was this done: ${what ?? 'the next step'}?`, today, undefined, since)],
    write: (answers) => sheet.set(result, 'result', fieldsOf(['done'], answers)),
  };
};

const stitches: Act = (sheet, { procedure }) => {
  if (procedure === undefined) return noPlace;
  const outs = procedure.suturesOut ?? [];
  const begun = outs.find(({ on }) => on === undefined || on.pending);
  const gap = begun !== undefined && sheet.mapOf(begun, 'suturesOut') !== undefined ? begun : undefined;
  const known = (key: 'by' | 'count'): boolean => gap?.[key]?.value !== undefined;
  const isPartlyOut = outs.some(({ on }) => on?.value !== undefined);
  const keys = ['on', 'by', 'count'].filter((key) => key === 'on' || !known(key as 'by' | 'count'));
  const asked = [
    askDay('on', 'When did the stitches come out?', sheet.today, undefined, sheet.visit),
    askWords('by', 'Who took them out? Initials or name.'),
    askCount('count', 'How many came out?'),
  ];
  return {
    title: 'Stitches out',
    questions: asked.filter(({ key }) => keys.includes(key)),
    write: (answers) =>
      gap !== undefined
        ? sheet.set(gap, 'suturesOut', fieldsOf(keys, answers))
        : isPartlyOut
          ? sheet.add(procedure, 'procedure', 'sutures-out', fieldsOf(keys, answers), 'row')
          : sheet.put(procedure, 'procedure', 'sutures-out', fieldsOf(keys, answers), 'row'),
  };
};

const ending = (): Question =>
  askWords('outcome', 'How did it end?', {
    kind: 'ending',
    required: true,
    example: 'stopped after pressing; no more since',
  });

const outcome: Act = (sheet, { event }) => {
  if (event === undefined) return noPlace;
  const map = sheet.mapOf(event, 'event');
  const said = map === undefined ? undefined : entryOf(map, 'outcome')?.value;
  const isGap = said == null || (said.kind === 'text' && said.text === unknown);
  if (isGap)
    return {
      title: 'How it ended',
      questions: [ending()],
      write: (answers) => sheet.set(event, 'event', fieldsOf(['outcome'], answers)),
    };
  // What was said stays; how it ended is the next event.
  return laterEvent(sheet, 'How it ended', event, ['wound check', 'call'], [ending()]);
};

const returned: Act = (sheet, { event }) =>
  laterEvent(sheet, 'Patient seen', event, ['wound check', 'suture removal', 'call'], openEnd);

const scar: Act = (sheet) =>
  laterEvent(sheet, 'Scar looked at', undefined, ['wound check', 'raised scar'], openEnd);

const openEnd: readonly Question[] = [
  askWords('signs', 'What was seen?'),
  askWords('outcome', 'How did it end?'),
];

/** An event after another one, or after the visit. */
function laterEvent(
  sheet: Sheet,
  title: string,
  before: Event | undefined,
  kinds: readonly string[],
  more: readonly Question[],
): Plan {
  const { today, visit, note } = sheet;
  const concerns = before?.procedure?.value;
  const choices = kinds.map((text) => ({ text, detail: '' }));
  const keys = ['on', 'kind', ...more.map(({ key }) => key), 'by'];
  return {
    title,
    questions: [
      askDay('on', 'On which day?', today, undefined, latest(visit, before?.on?.value?.date)),
      ...(kinds.length === 1
        ? []
        : [askWords('kind', 'What was it?', { kind: 'event', required: true, choices })]),
      ...more,
      askWords('by', 'Who dealt with it? Initials or name.'),
    ],
    write: (answers) => {
      const all = new Map([['kind', kinds[0] ?? unknown], ...answers]);
      const [on, kind, ...rest] = fieldsOf(keys, all) as [Fields[number], Fields[number], ...Fields];
      const about = concerns === undefined ? [] : [['procedure', concerns] as const];
      return sheet.add(note, 'note', 'events', [on, kind, ...about, ...rest], 'list');
    },
  };
}

/** A call from or to the patient, whatever is open. */
export const call = (sheet: Sheet): Plan =>
  laterEvent(
    sheet,
    'Call',
    undefined,
    ['call'],
    [
      askWords('signs', 'What was said?'),
      askWords('action', 'What was done or advised?'),
      askWords('outcome', 'How did it end?'),
    ],
  );

const atHome: Act = () => ({ why: 'The patient does this at home; nothing is written down for it.' });

const acts: Readonly<Record<DueKind, Act>> = {
  'specimen to send': sent,
  result: received,
  'telling the patient': told,
  'next step': next,
  'suture removal': stitches,
  'event outcome': outcome,
  'return visit': returned,
  'scar check': scar,
  'dressing change': atHome,
  washing: atHome,
};

/** What ends an open item, or takes it on. */
export function planFor(sheet: Sheet, item: OpenItem): Plan | Refused {
  if (item.kind === 'note to look at') return { why: 'This has to be looked at in the note itself.' };
  return acts[item.kind](sheet, around(sheet.note, item.start), item);
}
