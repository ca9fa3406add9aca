import type { Sourced } from '../../reference/types.ts';

export const identification: Sourced = { source: 'site-identification', mark: 'Q' };
