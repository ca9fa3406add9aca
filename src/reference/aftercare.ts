import type { Sourced } from './types.ts';

/** A number that a handout tells, where the practice does not set its own. */
export interface AftercareNumber extends Sourced {
  readonly value: number;
}

/**
 * Care at home as published. Leaflets differ widely on pressure: 2, 10, 15 and 20 minutes, and 20 minutes twice; the
 * longest is proposed.
 */
export const aftercare = {
  pressMinutes: { value: 20, source: 'leaflet-press-twice', mark: 'Q' },
  pressTimes: { value: 2, source: 'leaflet-press-twice', mark: 'Q' },
  firstChangeHours: { value: 24, source: 'leaflet-press-twice', mark: 'Q' },
  feverFahrenheit: { value: 101, source: 'leaflet-fever', mark: 'Q' },
  feverCelsius: { value: 38.3, source: 'leaflet-fever', mark: 'Q' },
} as const satisfies Readonly<Record<string, AftercareNumber>>;
