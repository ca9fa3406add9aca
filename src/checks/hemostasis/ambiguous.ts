import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { energiesOf } from '../current.ts';
import { rowsIn } from '../words.ts';
import { specify } from './_specify.ts';
import { format } from '../sources.ts';

const concerns: ReadonlySet<string> = new Set(['forbidden', 'pacemaker', 'cochlear', 'ask', 'unruled']);

/** Whether the patient has a device for which the word is judged, and specified, elsewhere. */
const hasDevice = ({ note, tables }: Subject): boolean =>
  (note.patient?.implants ?? []).some(({ kind }) =>
    rowsIn(tables.implants, kind).some(({ concern }) => concerns.has(concern)),
  );

export const check: Check = {
  code: 'hemostasis/ambiguous',
  severity: 'information',
  title: 'A word that means heat or current',
  why: '"Cautery", "electrocautery" and "electrodesiccation" are used for a hot wire, which passes no current through the patient, and for electrosurgery, which does. Until it is specified, it counts as current.',
  sources: [{ source: 'procedure-text-agents', mark: 'Q' }, format],
  messages: {
    main: '`{word}` may mean a hot wire or current through the patient, and counts as current. Write `heat cautery`, `electrosurgery` or `bipolar electrosurgery`.',
  },
  find(subject) {
    const found: Report[] = [];
    if (hasDevice(subject)) return found;
    for (const procedure of subject.note.procedures ?? [])
      for (const { leaf, stops, hemostasis } of energiesOf(procedure, subject.tables))
        if (hemostasis && stops === 'either') found.push({ at: leaf, args: { word: leaf.text } });
    return found;
  },
  fix: (_, finding) => specify(finding),
};
