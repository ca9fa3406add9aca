import type { Procedure } from '../../note/generated/types.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';
import { ofSuspected, type Judge } from './_suspected.ts';
import { question } from './_procedure.ts';

const isForImmunofluorescence = ({ specimen = [] }: Procedure, { tables }: Subject): boolean =>
  specimen.some(({ tests = [] }) =>
    tests.some((leaf) => rowsIn(tables.tests, leaf).some((row) => row.name === 'direct immunofluorescence')),
  );

const blister: Judge = (procedure, subject) => {
  const { relation, question } = procedure;
  const [row] = rowsIn(subject.tables.relations, relation);
  if (isForImmunofluorescence(procedure, subject))
    return relation !== undefined && row?.name === 'lesional' ? { at: relation } : undefined;
  if (question === undefined) return undefined;
  const elsewhere = (subject.note.procedures ?? []).some((one) => isForImmunofluorescence(one, subject));
  return elsewhere ? undefined : { at: question, form: 'second', severity: 'information' };
};

export const check: Check = {
  code: 'method/blister-sample',
  severity: 'warning',
  title: 'A blistering disease, and a sample that does not show it',
  why: 'In the blister itself the antibodies are gone: immunofluorescence wants skin beside it. Most laboratories ask for perilesional skin, an older one for the edge of the blister; both pass.',
  sources: [
    { source: 'immunofluorescence-manuals', mark: 'Q' },
    { source: 'jaad-2010-formalin', mark: 'Q' },
  ],
  messages: {
    main: 'For immunofluorescence in {disease} the sample should be taken beside the blister, not in it. If it did, write `relation: perilesional`; if not, another is needed.',
    second:
      'The question is {disease}: a second sample from beside the blister, in a transport medium for immunofluorescence, usually settles it.',
    question,
  },
  sourcesDiffer: {
    how: 'Most laboratories want skin beside the blister, an older one the edge of the blister. Both pass.',
    settings: ['severities'],
  },
  ...ofSuspected('beside the blister', blister),
};
