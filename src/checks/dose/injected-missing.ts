import { drugIn } from '../../dose/injected.ts';
import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { isAbsent } from '../absent.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';
import { rowsIn } from '../words.ts';

/** Whether other words of the procedure name a drug, so that it is known and only not judged. */
const isNamed = ({ method, lesion, remarks = [] }: Procedure, { tables }: Subject): boolean =>
  [method, lesion, ...remarks].some(
    (leaf) => leaf?.value !== undefined && drugIn(leaf.value, tables) !== undefined,
  );

export const check: Check = {
  code: 'dose/injected-missing',
  misses: () => 'injected',
  severity: 'warning',
  title: 'An injection without its drug',
  why: 'The next session and every reaction are judged by the drug, its strength and its amount. Where other words name the drug it is information.',
  sources: [format],
  messages: {
    main: 'The note does not say what was injected. Write `injected`: drug, concentration and volume.',
    named:
      'The drug is named in words only, so its dose is not judged. Write `injected`: drug, concentration and volume.',
  },
  find(subject) {
    const found: Report[] = [];
    for (const procedure of subject.note.procedures ?? []) {
      const { method } = procedure;
      if (method === undefined || rowsIn(subject.tables.methods, method)[0]?.injects !== true) continue;
      if (!isAbsent(subject, procedure, 'injected')) continue;
      if (isNamed(procedure, subject)) found.push({ at: method, form: 'named', severity: 'information' });
      else found.push({ at: method });
    }
    return found;
  },
};
