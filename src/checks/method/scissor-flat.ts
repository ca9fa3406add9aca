import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';
import { mentions } from './_procedure.ts';

function flatForScissors(procedure: Procedure, subject: Subject): Report | undefined {
  const { method, lesion } = procedure;
  if (method === undefined || lesion === undefined) return undefined;
  if (rowsIn(subject.tables.methods, method)[0]?.name !== 'scissor') return undefined;
  const said = mentions(procedure, subject);
  const flat = said.find(({ row }) => row.says === 'flat');
  if (flat === undefined || said.some(({ row }) => row.says === 'raised')) return undefined;
  const related = [{ ...within(lesion.node, flat.from, flat.to), form: 'lesion', args: {} }];
  return { at: method, args: { lesion: flat.row.name }, related };
}

export const check: Check = {
  code: 'method/scissor-flat',
  severity: 'information',
  title: 'Scissors for a flat lesion',
  why: 'Scissors remove what is raised above the skin, such as a skin tag; of a flat lesion they take little but epidermis.',
  sources: [{ source: 'dermatology-chapter-146', mark: 'Q' }],
  messages: {
    main: 'Scissors are for what is raised above the skin, and the lesion is described as {lesion}. Check method and lesion.',
    lesion: 'the lesion',
  },
  find: (subject) =>
    (subject.note.procedures ?? [])
      .map((procedure) => flatForScissors(procedure, subject))
      .filter((report) => report !== undefined),
};
