import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';

const deep: ReadonlySet<string> = new Set(['deep dermis', 'subcutis']);

/** Whether the cut goes, or by its method may go, through the skin: a depth that is written counts before the method. */
function goesDeep({ method, depth }: Procedure, { methods, depths }: Tables): boolean {
  const how = methods.find(method?.value ?? '');
  const fullThickness = how?.takesTissue === true && how.wantsClosure;
  const far = depths.find(depth?.value ?? '')?.reaches;
  if (far === undefined) return fullThickness;
  return far === 'subcutis' || (fullThickness && deep.has(far));
}

const intoFat = ({ depth }: Procedure, { depths }: Tables): boolean =>
  depths.find(depth?.value ?? '')?.reaches === 'subcutis';

export const check: Check = {
  code: 'site/danger-area',
  severity: 'information',
  title: 'A deep cut where a nerve or a tendon is just under the skin',
  why: 'At the temple, the jaw and the side of the neck motor nerves run so close under the skin that a cut through it can paralyze what they move. From memory, and so for information only: the eyelid, the nerves at wrist, elbow and fibula, and tendons at wrist, heel and hand; of the hand only where the cut went into the fat.',
  sources: [
    { source: 'danger-zones', mark: 'Q' },
    { source: 'site-anatomy', mark: 'M' },
  ],
  messages: {
    main: 'Under the {site} is {structure}. A cut through the whole skin can reach it: mind the depth, and record how the area works before and after.',
  },
  find({ note, siteOf, tables }) {
    const found: Report[] = [];
    for (const procedure of note.procedures ?? []) {
      const base = siteOf(procedure)?.base;
      if (procedure.site === undefined || base?.danger === undefined) continue;
      const reaches = base.danger.inFat === true ? intoFat : goesDeep;
      if (!reaches(procedure, tables)) continue;
      found.push({
        at: procedure.site,
        args: { site: base.name, structure: base.danger.structure },
        rests: base.danger,
      });
    }
    return found;
  },
};
