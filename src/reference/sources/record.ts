/** Sources of record keeping, and the two kinds of rule that have no published source. */
export const recordSources = {
  format: 'Wheal note format',
  common: 'common practice, no source',
};
