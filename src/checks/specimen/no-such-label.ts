import type { Report } from '../../note/tree/finding.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { Check, Subject } from '../check.ts';
import { located } from '../site/_side.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { plainWord } from '../../note/words/word-table.ts';
import { format } from '../sources.ts';

/** A text that names another part of the visit, and the names that it may have. */
interface Pointer {
  readonly leaf: Leaf<string> | undefined;
  readonly names: ReadonlySet<string>;
  readonly form: 'main' | 'event' | 'addendum';
}

/** "specimen A", "site 2", "procedure #1": the name itself is what comes after. */
const lead = /^(?:the )?(?:specimens?|labels?|sites?|procedures?|containers?|biops(?:y|ies)|no\.?|number)\s*/;
const between = /\s{0,9}(?:,|;|&|\+|\/|\band\b)\s{0,9}/;

const labelsOf = ({ specimen = [] }: Procedure): readonly string[] =>
  specimen.flatMap(({ label }) => (label?.value === undefined ? [] : [plainWord(label.value)]));

/** The short names, such as A or 2, that a text points with; undefined where it describes in words. */
function pointed(text: string): readonly string[] | undefined {
  const names = plainWord(text)
    .split(between)
    .map((name) => name.replace(lead, '').replace(/^#\s*/, ''));
  return names.every((name) => /^(?:[a-z]\d{0,2}|\d{1,2}[a-z]?)$/.test(name)) ? names : undefined;
}

const isAnyPointing = ({ procedures = [], events = [], addenda = [] }: Note): boolean =>
  addenda.some(({ notTold }) => notTold !== undefined) ||
  events.some(({ procedure }) => procedure !== undefined) ||
  procedures.some(({ sameAs }) => sameAs !== undefined);

/** What of a note points to a part of it. Of a label that is open or missing nobody can say that it is not meant. */
function pointersOf({ procedures = [], events = [], addenda = [] }: Note): readonly Pointer[] {
  const known = new Set(procedures.flatMap(labelsOf));
  const numbers = procedures.map((_, at) => String(at + 1));
  const same = procedures.map((procedure, at): Pointer => {
    const own = new Set(labelsOf(procedure));
    const others = procedures.filter((_, other) => other !== at).flatMap(labelsOf);
    const names = new Set([...others, ...numbers.filter((number) => number !== String(at + 1))]);
    // Two pieces of one lesion may be two specimens of one procedure.
    return { leaf: procedure.sameAs, names: own.size > 1 ? known : names, form: 'main' };
  });
  const ofEvents = events.map(({ procedure }): Pointer => ({
    leaf: procedure,
    names: new Set([...known, ...numbers]),
    form: 'event',
  }));
  const ofAddenda = addenda.flatMap(({ notTold = [] }) =>
    notTold.map((leaf): Pointer => ({ leaf, names: new Set([...known, ...numbers]), form: 'addendum' })),
  );
  return [...same, ...ofEvents, ...ofAddenda];
}

const isAnyOpen = ({ procedures = [] }: Note): boolean =>
  procedures.some(({ specimen = [] }) => specimen.some(({ label, notSent }) => !label?.value && !notSent));

/** A place that no procedure of the visit is at: another part of the body, or the other side of the only one. */
function isElsewhere(text: string, subject: Subject): boolean {
  const reading = readSite(text, subject.tables.sites);
  const places = located(subject);
  if (reading === undefined || places.length === 0) return false;
  if (places.length < (subject.note.procedures ?? []).length) return false;
  return places.every(
    ({ reading: { base, side } }) =>
      base.region !== reading.base.region || (base === reading.base && isOtherSide(side, reading.side)),
  );
}

const isOtherSide = (one: SiteReading['side'], other: SiteReading['side']): boolean =>
  (one === 'left' && other === 'right') || (one === 'right' && other === 'left');

const elsewhere = (at: Leaf<string>, text: string, subject: Subject): readonly Report[] =>
  isElsewhere(text, subject) ? [{ at, form: 'place', args: { text: at.text } }] : [];

function unnamed({ leaf, names, form }: Pointer, subject: Subject): readonly Report[] {
  if (leaf?.value === undefined) return [];
  const wanted = pointed(leaf.value);
  if (wanted === undefined) return form === 'event' ? elsewhere(leaf, leaf.value, subject) : [];
  if (wanted.every((name) => names.has(name))) return [];
  const { procedures = [] } = subject.note;
  const labels = procedures.flatMap(({ specimen = [] }) =>
    specimen.flatMap(({ label }) => (label?.value === undefined ? [] : [label.text])),
  );
  return [
    {
      at: leaf,
      form: labels.length === 0 ? `${form} unlabeled` : form,
      args: { text: leaf.text, labels: labels.join(', ') },
    },
  ];
}

export const check: Check = {
  code: 'specimen/no-such-label',
  severity: 'warning',
  title: 'A label that no specimen of the visit has',
  why: 'A label that no specimen has leaves open which wound or container was meant.',
  sources: [format],
  messages: {
    main: '`same-as: {text}` names no other procedure of this visit. Its labels are {labels}.',
    'main unlabeled': '`same-as: {text}` names no other procedure of this visit; no specimen has a label.',
    event:
      'This event concerns {text}, and no specimen or procedure of this visit has that name. The labels are {labels}.',
    place:
      'This event concerns {text}, and no procedure of this visit is there. Check the site, or write the label of the specimen.',
    addendum:
      'This takes back that a result of {text} was told, and no specimen of this visit has that label. The labels are {labels}.',
    'addendum unlabeled': 'This takes back that a result of {text} was told, and no specimen has a label.',
    'event unlabeled':
      'This event concerns {text}, and no specimen or procedure of this visit has that name; no specimen has a label.',
  },
  alternatives: { readAs: [] },
  find: (subject) =>
    isAnyPointing(subject.note) && !isAnyOpen(subject.note)
      ? pointersOf(subject.note).flatMap((pointer) => unnamed(pointer, subject))
      : [],
};
