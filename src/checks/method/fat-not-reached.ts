import type { Check } from '../check.ts';
import { ofSuspected, type Judge } from './_suspected.ts';
import { depthOf, methodName, question, superficial } from './_procedure.ts';

const fat: Judge = (procedure, subject) => {
  const { method, depth } = procedure;
  const reached = depthOf(procedure, subject);
  if (depth !== undefined && reached !== undefined)
    return reached.reaches === 'subcutis' ? undefined : { at: depth, args: { reached: reached.name } };
  const name = methodName(procedure, subject);
  if (method === undefined || (!superficial.has(name) && name !== 'deep shave')) return undefined;
  return { at: method, args: { reached: `depth of a ${name ?? ''}` } };
};

export const check: Check = {
  code: 'method/fat-not-reached',
  severity: 'warning',
  title: 'A disease of the fat, and a sample without fat',
  why: 'Panniculitis and deep nodules are in the fat; a sample without it cannot show them.',
  sources: [{ source: 'dermatology-chapter-146', mark: 'Q' }],
  messages: {
    main: 'The question is {disease}, which is in the fat, and the sample reached only the {reached}. A deep incision or excision is needed; if fat was taken, write `depth: subcutis`.',
    question,
  },
  ...ofSuspected('fat', fat),
};
