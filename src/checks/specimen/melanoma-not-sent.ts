import type { Check } from '../check.ts';
import { ofSuspected, type Judge } from '../method/_suspected.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

/** Tissue of a suspected melanoma of which nothing went to a laboratory. */
const unsent: Judge = ({ specimen = [], method }, { tables }) => {
  const [first] = specimen;
  if (rowsIn(tables.methods, method)[0]?.takesTissue !== true || first === undefined) return undefined;
  const none = specimen.every(({ notSent }) => notSent?.value !== undefined);
  return none && first.notSent !== undefined ? { at: first.notSent } : undefined;
};

export const check: Check = {
  code: 'specimen/melanoma-not-sent',
  severity: 'warning',
  title: 'Tissue of a suspected melanoma not sent',
  why: 'A melanoma is recognized under the microscope only, and tissue that is thrown away cannot be taken again.',
  sources: [{ source: 'melanoma-aad', mark: 'Q' }, format],
  messages: {
    main: 'Melanoma is suspected, and the tissue was not sent. If it is still there, send it; if not, plan with the patient how the diagnosis is made.',
    question: 'the question to the pathologist',
  },
  nextStep: {
    main: 'Look for the tissue now: as long as it is there, even dried or in saline, ask the laboratory whether it can be used.',
  },
  ...ofSuspected('whole lesion', unsent),
};
