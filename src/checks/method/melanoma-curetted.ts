import type { Check } from '../check.ts';
import { methodName, question } from './_procedure.ts';
import { ofSuspected, type Judge } from './_suspected.ts';

/** Methods that take tissue in pieces. */
const scraped: ReadonlySet<string | undefined> = new Set(['curettage', 'electrodesiccation and curettage']);

const curetted: Judge = (procedure, subject) => {
  const { method } = procedure;
  const name = methodName(procedure, subject);
  return method !== undefined && scraped.has(name) ? { at: method, args: { method: name ?? '' } } : undefined;
};

export const check: Check = {
  code: 'method/melanoma-curetted',
  severity: 'warning',
  title: 'A suspected melanoma curetted',
  why: 'Treatment depends on the thickness of the tumor, and in pieces it cannot be measured. Guidelines name an ellipse, a punch or a deep shave of the whole lesion, or a part of it in one piece, at any site.',
  sources: [
    { source: 'melanoma-aad', mark: 'Q' },
    { source: 'melanoma-nccn-2018', mark: 'Q' },
  ],
  messages: {
    main: 'Melanoma is suspected, and {method} takes the tissue in pieces: its thickness cannot be measured. Check the method; tell the pathologist, and plan with the patient what follows.',
    question,
  },
  ...ofSuspected('whole lesion', curetted),
};
