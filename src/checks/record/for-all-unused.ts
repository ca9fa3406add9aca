import { isMeant, ofProcedure, ofSpecimen } from '../../note/for-all.ts';
import type { Part } from '../../note/tree/leaf.ts';
import type { Report } from '../../note/tree/finding.ts';
import type { Note, Procedure, Specimen } from '../../note/generated/types.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

/** The keys under `for-all` that none of some parts has taken over. */
const untaken = (all: Part, keys: readonly string[], parts: readonly Part[]): readonly Report[] =>
  keys.flatMap((key) => {
    const at = all.keys.get(key);
    const isTaken = parts.some((part) => part.keys.get(key) === at);
    return at === undefined || isTaken ? [] : [{ at, form: 'own', severity: 'information', args: { key } }];
  });

const sentOf = ({ specimen = [] }: Procedure): readonly Specimen[] =>
  specimen.filter(({ keys }) => !keys.has('not-sent'));

function unused({ forAll, procedures = [] }: Note): readonly Report[] {
  if (forAll === undefined || procedures.length === 0) return [];
  const meant = procedures.filter(isMeant);
  if (meant.length === 0) return [{ at: forAll.head }];
  const own = untaken(forAll, ofProcedure, meant);
  // Of a specimen that is not written down yet nobody knows what it takes over.
  const { specimen } = forAll;
  if (specimen === undefined || meant.some((one) => one.specimen === undefined)) return own;
  return [...own, ...untaken(specimen, ofSpecimen, meant.flatMap(sentOf))];
}

export const check: Check = {
  code: 'record/for-all-unused',
  severity: 'warning',
  title: '`for-all` that applies to no procedure',
  why: 'What is under `for-all` counts in each procedure that took tissue and does not say otherwise. Without such a procedure it is in no summary, and no check judges it.',
  sources: [format],
  messages: {
    main: '`for-all` applies to procedures that took tissue, and this visit has none. Write it in each procedure where it is true.',
    own: '`{key}` under `for-all` applies nowhere: each procedure has a `{key}` of its own, or sent nothing. Check which of them is right.',
  },
  find: ({ note }) => unused(note),
};
