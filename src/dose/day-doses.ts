import type { Note } from '../note/generated/types.ts';
import { chartKey } from '../note/chart-numbers.ts';
import { readNote } from '../note/read.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';
import type { Given } from './injections.ts';
import { judgeDose } from './judge.ts';
import type { DoseJudgement, Elsewhere, KindSum, OthersOn } from './types.ts';

/** What many notes say was given, by patient and day, so that notes of one day count together. */
export class DayDoses {
  private readonly byPatient = new Map<string, Map<IsoDate, Day>>();
  /** The first note with a text, by the text: a copy of it is no second visit. */
  private readonly byText = new Map<string, string>();
  /** Copies, by the path of the note whose text they have. */
  private readonly copies = new Map<string, string>();

  /** Adds the visit of a note and the later days on which its events mention more. */
  add(path: string, patient: string, dose: DoseJudgement): void {
    const key = chartKey(patient);
    let days = this.byPatient.get(key);
    if (days === undefined) this.byPatient.set(key, (days = new Map<IsoDate, Day>()));
    for (const one of [dose, ...dose.later]) {
      if (one.day === undefined) continue;
      let day = days.get(one.day);
      if (day === undefined) days.set(one.day, (day = new Day()));
      day.add(path, one);
    }
  }

  /**
   * Reads a note and adds what it says was given. One without a patient, or that can't be read, adds nothing, nor does
   * one with the text of another, byte for byte.
   */
  read(path: string, text: string, tables: Tables): void {
    const first = this.byText.get(text);
    if (first !== undefined) {
      if (first !== path) this.copies.set(path, first);
      return;
    }
    this.byText.set(text, path);
    const note = readNote(text).value;
    const patient = note?.patient?.id?.value;
    if (note !== null && patient !== undefined) this.add(path, patient, judgeDose(note, tables));
  }

  /** What the other notes of a patient say of a day. */
  besides(path: string, patient: string | undefined, day: IsoDate): OthersOn {
    const days = patient === undefined ? undefined : this.byPatient.get(chartKey(patient));
    return days?.get(day)?.besides(this.copies.get(path) ?? path) ?? nobody;
  }

  /** The same for one note, whatever the day. */
  elsewhere(path: string, note: Note | null): Elsewhere {
    return (day) => this.besides(path, note?.patient?.id?.value, day);
  }
}

/** Sums over several notes; never changed once it is made. */
interface Sums {
  readonly notes: number;
  readonly kinds: ReadonlyMap<string, KindSum>;
  readonly micrograms: number;
  readonly unjudged: boolean;
}

const nothing: Sums = { notes: 0, kinds: new Map(), micrograms: 0, unjudged: false };
const nobody: OthersOn = { notes: 0, sums: [], epinephrineMicrograms: 0, given: [], unjudged: false };

function plus(a: Sums, b: Sums): Sums {
  const kinds = new Map(a.kinds);
  for (const [key, kind] of b.kinds) kinds.set(key, { ...kind, mg: kind.mg + (kinds.get(key)?.mg ?? 0) });
  return {
    notes: a.notes + b.notes,
    kinds,
    micrograms: a.micrograms + b.micrograms,
    unjudged: a.unjudged || b.unjudged,
  };
}

function sumsOf(given: readonly Given[], unjudged: boolean): Sums {
  const kinds = new Map<string, KindSum>();
  let micrograms = 0;
  for (const { agent, withEpinephrine: epinephrine, mg, epinephrineMicrograms } of given) {
    const key = `${agent.name} ${String(epinephrine)}`;
    kinds.set(key, { agent: agent.name, epinephrine, mg: mg + (kinds.get(key)?.mg ?? 0) });
    micrograms += epinephrineMicrograms;
  }
  return { notes: 1, kinds, micrograms, unjudged };
}

/** One day of one patient. */
class Day {
  private readonly entries = new Map<
    string,
    { readonly given: readonly Given[]; readonly unjudged: boolean }
  >();
  /** For each note the sums over those before it and over those after it, so that nothing has to be taken away again. */
  private around: ReadonlyMap<string, readonly [Sums, Sums]> | undefined;
  private all = nothing;

  add(path: string, { given, unread }: DoseJudgement): void {
    const before = this.entries.get(path);
    this.entries.set(path, {
      given: [...(before?.given ?? []), ...given],
      unjudged: before?.unjudged === true || unread.length > 0,
    });
    this.around = undefined;
  }

  besides(path: string): OthersOn {
    const [before, behind] = (this.around ??= this.summed()).get(path) ?? [this.all, nothing];
    const { notes, kinds, micrograms, unjudged } = plus(before, behind);
    const { entries } = this;
    return {
      notes,
      sums: [...kinds.values()],
      epinephrineMicrograms: micrograms,
      unjudged,
      get given() {
        return [...entries].flatMap(([other, { given }]) => (other === path ? [] : given));
      },
    };
  }

  private summed(): ReadonlyMap<string, readonly [Sums, Sums]> {
    const own = [...this.entries].map(
      ([path, { given, unjudged }]) => [path, sumsOf(given, unjudged)] as const,
    );
    const behind: Sums[] = [];
    this.all = nothing;
    for (const [, sums] of [...own].reverse()) {
      behind.push(this.all);
      this.all = plus(sums, this.all);
    }
    const around = new Map<string, readonly [Sums, Sums]>();
    let before = nothing;
    for (const [path, sums] of own) {
      around.set(path, [before, behind.pop() ?? nothing]);
      before = plus(before, sums);
    }
    return around;
  }
}
