import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

function onGlue({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { closure, dressing } of note.procedures ?? []) {
    const glue = closure?.find((one) =>
      rowsIn(tables.closures, one.how).some(({ name }) => name === 'tissue glue'),
    );
    if (glue?.how === undefined) continue;
    const { start, end } = glue.how;
    for (const leaf of dressing ?? [])
      if (rowsIn(tables.dressings, leaf).some(({ ointment }) => ointment === true))
        found.push({
          at: leaf,
          args: { word: leaf.text },
          related: [{ start, end, form: 'glue', args: {} }],
        });
  }
  return found;
}

export const check: Check = {
  code: 'dressing/ointment-on-glue',
  severity: 'warning',
  title: 'Ointment on tissue glue',
  why: 'Ointment softens the film of glue, and the wound opens before it has healed.',
  sources: [{ source: 'tissue-glue-leaflets', mark: 'Q' }],
  messages: {
    main: '{word} on tissue glue loosens its film. Leave the glue bare, or cover it with a dry dressing.',
    glue: 'tissue glue here',
  },
  alternatives: { readAs: [] },
  find: onGlue,
};
