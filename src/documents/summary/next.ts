import type { DoseJudgement } from '../../dose/judge.ts';
import type {
  Addendum,
  Attempt,
  Event,
  Note,
  Procedure,
  Result,
  Specimen,
  SuturesOut,
  Told,
} from '../../note/generated/types.ts';
import { planOf, type Planned } from '../../followup/schedule.ts';
import { stitchesLeft } from '../../followup/stitches.ts';
import { sutureRemoval, windowWord, type SutureRemoval } from '../../followup/sutures.ts';
import { readSite } from '../../note/words/site.ts';
import type { Tables } from '../../practice/tables.ts';
import { citation } from '../../reference/sources/index.ts';
import { joined, said, saidAs, sentence } from '../from-note.ts';
import { takenBack } from '../../followup/taken-back.ts';
import { reachedBy, toldWay } from '../../followup/telling.ts';
import { anesthesiaOf, injectedOf, notSentOf, stitchesSaid } from './procedure.ts';

/** What is due, outstanding or done since, procedure by procedure. */
export function nextOf(note: Note, tables: Tables): readonly string[] {
  const { planned } = planOf(note, tables);
  return (note.procedures ?? []).flatMap((procedure, at) => {
    const name = said(procedure.site) ?? `procedure ${at + 1}`;
    const due = planned.filter((item) => item.kind === 'result' && item.procedure === at);
    const specimens = (procedure.specimen ?? []).flatMap((specimen) =>
      specimenRows(specimen, due, note, tables),
    );
    return [...suturesOf(note, procedure, tables), ...specimens].map((row) => sentence(`${name}: ${row}`));
  });
}

function suturesOf(note: Note, procedure: Procedure, tables: Tables): readonly string[] {
  const { suturesOut, suturesDue, site } = procedure;
  const reading = site?.value === undefined ? undefined : readSite(site.value, tables.sites);
  const removal = sutureRemoval(note, procedure, reading, tables);
  if (suturesOut !== undefined && suturesOut.length > 0) {
    const left = stitchesLeft(procedure, tables);
    return suturesOut.map((one, at) => outOf(one, removal, at === suturesOut.length - 1 ? left : undefined));
  }
  const rest = joined([plannedFor(suturesDue), windowOf(removal)], '; ');
  return rest === undefined ? [] : [`sutures to come out: ${rest}`];
}

/** The planned day; where the note counts it from the visit, its words too. */
function plannedFor(due: Procedure['suturesDue']): string | undefined {
  const words = said(due);
  if (due?.value === undefined || words === undefined || words.startsWith(due.value))
    return saidAs('planned for', due);
  return `planned for ${due.value} (${words})`;
}

/** That they came out, and the usual window where they came out at another time. */
function outOf({ on, by, count }: SuturesOut, removal: SutureRemoval, left: string | undefined): string {
  const day = on?.value;
  const aside = removal.kind === 'window' && day !== undefined && (day < removal.from || day > removal.to);
  const words = [saidAs('sutures out', on) ?? 'sutures out', saidAs('by', by), stitchesSaid(count)];
  return (
    joined(
      [joined(words), left, aside || left !== undefined ? windowOf(removal) : undefined],
      left === undefined ? ', ' : '; ',
    ) ?? ''
  );
}

/** The window in words; undefined where nothing is to be taken out. */
function windowOf(removal: SutureRemoval): string | undefined {
  if (removal.kind === 'none') return undefined;
  if (removal.kind === 'unknown') return removal.why === 'closure' ? undefined : 'no window is known';
  const word = windowWord[removal.kindOfDays];
  return `${word} from ${removal.from} to ${removal.to} (${citation(removal.source)})`;
}

function specimenRows(
  specimen: Specimen,
  due: readonly Planned[],
  note: Note,
  tables: Tables,
): readonly string[] {
  const name = joined(['specimen', said(specimen.label)], ' ') ?? '';
  const results = specimen.results ?? [];
  if (results.length > 0) return results.map((result) => `${name}: ${resultOf(result, note, tables)}`);
  return notSentOf(specimen) === undefined
    ? [
        joined([
          `${name}: result outstanding`,
          saidAs('sent', specimen.sent),
          overdueAfter(due.find(({ label }) => label === specimen.label?.value)),
        ]) ?? '',
      ]
    : [];
}

const overdueAfter = (item: Planned | undefined): string | undefined =>
  item === undefined ? undefined : `overdue after ${item.to}`;

function resultOf(result: Result, note: Note, tables: Tables): string {
  const { received, diagnosis, reviewed, attempts = [], next, done } = result;
  const back = takenBack(note);
  const told = result.told?.filter((one) => !back.has(one)) ?? [];
  const tellings = inOrder([
    ...(result.told ?? []).map((one) => ({ on: one.on, text: takenBackOf(one, back.get(one)) })),
    ...told.map((one) => ({ on: one.on, text: toldOf(one, tables) })),
    ...attempts.map((one) => ({ on: one.on, text: triedOf(one) })),
  ]);
  const heard =
    told.some((one) => toldWay(one, tables) === 'told' && toldOf(one, tables) !== undefined) ||
    attempts.some((one) => reachedBy(one, tables));
  const nothing = received === undefined && tellings.length === 0;
  const unsure = told.some((one) => toldWay(one, tables) === 'unclear');
  return (
    joined(
      [
        saidAs('received', received) ?? 'not received',
        said(diagnosis),
        saidAs('reviewed', reviewed),
        joined(tellings, ', then '),
        heard || nothing || unsure ? undefined : 'patient not told yet',
        saidAs('next:', next),
        saidAs('done', done),
      ],
      '; ',
    ) ?? ''
  );
}

interface Telling {
  readonly on: Told['on'];
  readonly text: string | undefined;
}

/** What was said and tried, by its days; what has no day comes last. */
const inOrder = (tellings: readonly Telling[]): readonly string[] =>
  [...tellings]
    .sort((one, other) => (one.on?.value ?? '~').localeCompare(other.on?.value ?? '~', 'en'))
    .flatMap(({ text }) => text ?? []);

/** That somebody marked a result told by mistake, and when that was written. */
function takenBackOf({ on }: Told, addendum: Addendum | undefined): string | undefined {
  if (addendum === undefined) return undefined;
  return joined(
    [saidAs('marked told', on) ?? 'marked told', saidAs('by mistake, as added', addendum.at) ?? 'by mistake'],
    ' ',
  );
}

/** What is said of telling: told where the words say that the patient heard it, and else what was done. */
function toldOf(one: Told, tables: Tables): string | undefined {
  const { on, by, how } = one;
  const way = toldWay(one, tables);
  if (way === 'attempt' || way === 'other-person') return triedOf(one);
  if (way === 'unclear') return joined([said(how), saidAs('on', on), saidAs('by', by)], ' ');
  const words = joined([said(on), saidAs('by', by), saidAs('by', how)], ' ');
  return words === undefined ? undefined : `patient told ${words}`;
}

function triedOf({ on, by, how, outcome }: Told & Partial<Attempt>): string | undefined {
  const words = joined([said(how), said(outcome)]);
  if (on === undefined && by === undefined && words === undefined) return undefined;
  return joined([joined([saidAs('tried on', on) ?? 'tried', saidAs('by', by)], ' '), words]);
}

/** Events and additions after the visit, as the note has them. */
export function afterwardsOf(note: Note, dose: DoseJudgement | null, tables: Tables): readonly string[] {
  return [
    ...(note.events ?? []).map((event) => eventRow(event, dose, tables)),
    ...(note.addenda ?? []).map(
      ({ at, by, text }) => `Added ${joined([said(at), saidAs('by', by)]) ?? ''}: ${said(text) ?? ''}`,
    ),
    ...(note.signed === undefined
      ? []
      : [
          sentence(
            joined(['Signed', joined([saidAs('by', note.signed.by), saidAs('at', note.signed.at)])], ' ') ??
              '',
          ),
        ]),
  ];
}

function eventRow(event: Event, dose: DoseJudgement | null, tables: Tables): string {
  const { on, kind, procedure, signs, action, outcome, by, anesthetic, injected } = event;
  const drug = injectedOf(injected);
  const words = joined(
    [
      joined([said(on), said(kind)], ' '),
      saidAs('concerns', procedure),
      said(signs),
      saidAs('action:', action),
      given('anesthetic', anesthesiaOf(anesthetic, dose, tables)),
      given('injected', drug),
      saidAs('outcome:', outcome),
      saidAs('by', by),
    ],
    '; ',
  );
  return sentence(words ?? 'event');
}

const given = (lead: string, text: string | undefined): string | undefined =>
  text === undefined ? undefined : `${lead}: ${text}`;
