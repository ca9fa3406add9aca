export const format = { source: 'format', mark: 'format' } as const;

export const loop = { source: 'closed-loop', mark: 'Q' } as const;

/** From how many days past its limit on an open end is an error. */
export const far = 28;
