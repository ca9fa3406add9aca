import type { Check } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { ofSuspected, type Judge } from './_suspected.ts';
import { methodName, question } from './_procedure.ts';

/** Words that say that the diagnosis is made already, and that this is its treatment. */
const treatment = /\b(?:re-?excision|wide|wider|residual|proven|known|confirmed|scar|definitive)\b/i;

/** The margin in mm of a sample that takes out the whole of a suspected melanoma. */
const narrow = { from: 1, to: 3 } as const;

const melanomaMargin: Judge = (procedure, subject) => {
  const { margin, method, question: asked, lesion } = procedure;
  if ([method, asked, lesion].some((leaf) => treatment.test(leaf?.text ?? ''))) return undefined;
  if (methodName(procedure, subject) === 'excisional' && isAbsent(subject, procedure, 'margin'))
    return method && { at: method, form: 'unsaid', args: narrow };
  const mm = margin?.value?.amount;
  if (margin === undefined || mm === undefined || (mm >= narrow.from && mm <= narrow.to)) return undefined;
  const form = mm < narrow.from ? 'thin' : 'main';
  return { at: margin, form, args: { margin: margin.text, from: narrow.from, to: narrow.to } };
};

export const check: Check = {
  code: 'method/melanoma-margin',
  misses: ({ form }) => (form === 'unsaid' ? 'margin' : undefined),
  severity: 'information',
  title: 'A margin that does not suit a suspected melanoma',
  why: 'For the diagnosis a margin of 1 to 3 mm is advised: enough to see the whole lesion, and narrow enough not to disturb the drainage to a sentinel node. Treatment of a known melanoma takes wider margins and is not reported.',
  sources: [
    { source: 'melanoma-aad', mark: 'Q' },
    { source: 'melanoma-nccn-2018', mark: 'Q' },
  ],
  messages: {
    main: 'Melanoma is suspected, and the margin is {margin}; for the diagnosis {from} to {to} mm is advised. Check the number, or say that this is the treatment.',
    unsaid:
      'Melanoma is suspected, and the excision has no margin here; for the diagnosis {from} to {to} mm is advised. Write `margin`.',
    thin: 'Melanoma is suspected, and the margin is {margin}; {from} to {to} mm is advised, so that the whole lesion is seen. Check the number.',
    question,
  },
  ...ofSuspected('whole lesion', melanomaMargin),
};
