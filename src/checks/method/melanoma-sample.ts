import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { punchOf } from '../punch.ts';
import { lesionMm } from './_lesion-size.ts';
import { ofSuspected, type Judge } from './_suspected.ts';
import { depthOf, methodName, question, superficial } from './_procedure.ts';

const face: ReadonlySet<SiteRegion> = new Set(['face', 'eye', 'nose', 'ear', 'mouth']);

const besideFace: ReadonlySet<SiteRegion> = new Set(['scalp', 'neck']);

const lentigo = /lentigo maligna|\bLMM?\b/i;

/**
 * Where the guideline allows a partial or a broad superficial sample: face, palms, soles, digits. A broad shave helps with
 * lentigo maligna, which is one of sun-damaged scalps and necks too.
 */
function isExempt(procedure: Procedure, subject: Subject): boolean {
  const base = subject.siteOf(procedure)?.base;
  if (base === undefined || base.acral || face.has(base.region)) return true;
  return besideFace.has(base.region) && lentigo.test(procedure.question?.value ?? '');
}

/** From this size on a lesion is too large to be taken out as a whole for diagnosis, in mm. */
const large = 15;

const deepEnough: ReadonlySet<string | undefined> = new Set(['deep dermis', 'subcutis']);

const melanoma: Judge = (procedure, subject) => {
  const { method } = procedure;
  if (method === undefined || isExempt(procedure, subject)) return undefined;
  const name = methodName(procedure, subject);
  // A curettage and an excision that is too small have findings of their own.
  if (name === 'curettage' || name === 'excisional') return undefined;
  if (!superficial.has(name)) return partial(procedure, subject);
  const deep = deepEnough.has(depthOf(procedure, subject)?.reaches);
  return deep ? undefined : { at: method, args: { method: name ?? '' } };
};

/** A sample that is smaller than the lesion that it was to take out whole. */
function partial(procedure: Procedure, subject: Subject): Report | undefined {
  const { size } = procedure;
  const lesion = lesionMm(procedure);
  const taken = Math.max(...(size?.value?.mm ?? []));
  if (size === undefined || lesion === undefined || lesion >= large || !(taken > 0 && taken < lesion))
    return undefined;
  const whole =
    punchOf(procedure, subject.tables) !== undefined || methodName(procedure, subject) === 'deep shave';
  return whole
    ? { at: size, form: 'partial', severity: 'information', args: { size: size.text, lesion } }
    : undefined;
}

export const check: Check = {
  code: 'method/melanoma-sample',
  severity: 'warning',
  title: 'A sample that may not be enough for a suspected melanoma',
  why: 'Treatment depends on the thickness of the tumor, and a cut through its base hides it. Guidelines want the whole lesion, by ellipse, punch or a shave below its plane; a partial sample is accepted on face, palms and soles, of a very large lesion, and where suspicion is low. Where atypical melanocytes were sampled in part, the odds of a melanoma at excision were elevenfold. Sources differ: one of 2005 forbids every shave, the academy and the network allow a deep one; this check follows them.',
  sources: [
    { source: 'melanoma-aad', mark: 'Q' },
    { source: 'melanoma-nccn-2018', mark: 'Q' },
    { source: 'melanoma-afp-2005', mark: 'Q' },
    { source: 'biopsy-guide-afp', mark: 'Q' },
    { source: 'partial-biopsy-aimp', mark: 'Q' },
  ],
  messages: {
    main: 'Melanoma is suspected, and a {method} may cut through its base. A deep shave, a punch or an ellipse of the whole lesion lets its thickness be measured; if it went deep enough, write `depth`.',
    partial:
      'Melanoma is suspected, and {size} takes only a part of a lesion of {lesion} mm. If the whole lesion could not be taken, say so in the question.',
    question,
  },
  sourcesDiffer: {
    how: 'A table of 2005 forbids every shave; the academy and the network allow one below the plane of the lesion. The latter are followed.',
    settings: ['severities'],
  },
  ...ofSuspected('whole lesion', melanoma),
};
