import { injectedDoses, type InjectedDose } from '../../dose/injected.ts';
import { shared } from '../shared.ts';

/** What is under `injected` in a note, read once. */
export const injectedOf = shared(({ note, tables }): readonly InjectedDose[] => injectedDoses(note, tables));
