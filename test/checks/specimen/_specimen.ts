export const note = (...procedures: readonly (readonly string[])[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n${procedures
    .map((lines) => lines.map((line, at) => `  ${at === 0 ? '- ' : '  '}${line}\n`).join(''))
    .join('')}`;

/** Two procedures with a specimen each. */
export const two = (first: string, second: string): string =>
  note(
    ['site: left cheek', `specimen: {${first}, medium: formalin}`],
    ['site: right cheek', `specimen: {${second}, medium: formalin}`],
  );

export const sent = (specimen: string): string =>
  note(['site: left cheek', 'method: shave', `specimen: ${specimen}`]);

/**
 * Every medium with every test. Formalin and other fixatives against immunofluorescence: collection pages of
 * immunodermatology laboratories and J Am Acad Dermatol 2010; culture: manuals of two hospital laboratories; frozen
 * section: submission guide; Michel medium: its product sheet; routine histology: laboratory manuals. Information is
 * from memory.
 */
export const tests = [
  'routine histology',
  'special stains',
  'immunohistochemistry',
  'direct immunofluorescence',
  'bacterial culture',
  'fungal culture',
  'mycobacterial culture',
  'viral culture',
  'PCR',
  'electron microscopy',
  'frozen section',
  'flow cytometry',
  'gene rearrangement',
];
