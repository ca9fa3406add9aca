export const person = (more: string): string => `id: C-1, born: 1961-08-09, weight: 62 kg, ${more}`;

/** An injection with the strength of its epinephrine marked. */
export const marked = (volume: string): string =>
  `agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: ${volume}`;

export const at = (site: string, text: string): string => text.replace('left upper back', site);
