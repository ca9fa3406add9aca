import { plainWord } from '../note/word-table.ts';
import type { IsoDate } from '../note/values.ts';
import type { DoseJudgement, OthersOn } from './types.ts';

interface Entry {
  readonly path: string;
  readonly dose: DoseJudgement;
}

/** What many notes say was given, by patient and day, so that notes of one day count together. */
export class DayDoses {
  private readonly byPatient = new Map<string, Map<IsoDate, Entry[]>>();

  /** Adds the visit of a note and the later days on which its events tell of more. */
  add(path: string, patient: string, dose: DoseJudgement): void {
    const key = plainWord(patient);
    let days = this.byPatient.get(key);
    if (days === undefined) this.byPatient.set(key, (days = new Map<IsoDate, Entry[]>()));
    for (const one of [dose, ...dose.later]) {
      if (one.day === undefined) continue;
      const same = days.get(one.day);
      if (same === undefined) days.set(one.day, [{ path, dose: one }]);
      else same.push({ path, dose: one });
    }
  }

  /** What the other notes of a patient say of a day. */
  besides(path: string, patient: string | undefined, day: IsoDate): OthersOn {
    const days = patient === undefined ? undefined : this.byPatient.get(plainWord(patient));
    const others = (days?.get(day) ?? []).filter((entry) => entry.path !== path);
    return {
      notes: others.length,
      given: others.flatMap(({ dose }) => dose.given),
      unjudged: others.some(({ dose }) => dose.unread.length > 0),
    };
  }
}
