import type { Leaf } from '../note/tree/leaf.ts';
import type { Injection, Note, Procedure, Specimen } from '../note/generated/types.ts';
import type { Range } from '../note/tree/tree.ts';

/** One entry of the outline. */
export interface Symbol extends Range {
  readonly name: string;
  readonly detail: string;
  readonly kind: 'visit' | 'patient' | 'procedure' | 'injection' | 'specimen' | 'event';
  /** Where the entry's own words are. */
  readonly selection: Range;
  readonly children: readonly Symbol[];
}

/** What a note holds, in the order in which it is written: patient, procedures with their injections and specimens, events. */
export function outlineOf(note: Note): readonly Symbol[] {
  const symbols = [
    ...(note.patient === undefined
      ? []
      : [symbol('patient', said(note.patient.id) || 'patient', '', note.patient)]),
    ...(note.anesthetic ?? []).map(injection),
    ...(note.procedures ?? []).map(procedure),
    ...(note.events ?? []).map((event) =>
      symbol('event', said(event.kind) || 'event', said(event.on), event),
    ),
  ];
  return symbols.sort((a, b) => a.start - b.start);
}

const said = (leaf: Leaf<unknown> | undefined): string => leaf?.text ?? '';

const words = (...texts: readonly string[]): string => texts.filter((text) => text !== '').join(', ');

function procedure(one: Procedure, index: number): Symbol {
  const children = [...(one.anesthetic ?? []).map(injection), ...(one.specimen ?? []).map(specimen)];
  return symbol(
    'procedure',
    `${index + 1}. ${said(one.site) || '??'}`,
    words(said(one.method), said(one.size)),
    one,
    children,
  );
}

const injection = (one: Injection): Symbol =>
  symbol(
    'injection',
    words(said(one.product) || said(one.agent), said(one.concentration)) || 'anesthetic',
    said(one.volume) || said(one.amount),
    one,
  );

const specimen = (one: Specimen): Symbol =>
  symbol('specimen', `specimen ${said(one.label)}`.trim(), said(one.medium), one);

function symbol(
  kind: Symbol['kind'],
  name: string,
  detail: string,
  { start, end, head }: Range & { readonly head: Range },
  children: readonly Symbol[] = [],
): Symbol {
  // The words to jump to must be inside of the whole.
  const whole = { start: Math.min(start, head.start), end: Math.max(end, head.end) };
  return { kind, name, detail, ...whole, selection: head, children };
}
