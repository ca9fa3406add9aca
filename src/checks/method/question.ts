import type { Procedure } from '../../note/generated/types.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import { isAbsent } from '../absent.ts';
import type { Check, Report, Subject } from '../check.ts';
import { punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';
import { hair } from './_hair.ts';
import { depthOf, methodName, superficial } from './_sample.ts';
import { ofSuspected, type Judge } from './_suspected.ts';

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

const lengths = /(\d+(?:\.\d+)?)(?:\s*[x×]\s*(\d+(?:\.\d+)?))?\s*(mm|cm)\b/gi;

/** The greatest length in mm that the description of the lesion gives. */
const lesionMm = ({ lesion }: Procedure): number | undefined => {
  const found = Array.from(
    (lesion?.value ?? '').matchAll(lengths),
    ([, one, other, unit]) =>
      Math.max(Number(one), Number(other ?? 0)) * (unit?.toLowerCase() === 'cm' ? 10 : 1),
  );
  return found.length === 0 ? undefined : Math.max(...found);
};

/** From this size on a lesion is too large to be taken out as a whole for diagnosis, in mm. */
const large = 15;
const deepEnough: ReadonlySet<string | undefined> = new Set(['deep dermis', 'subcutis']);

const melanoma: Judge = (procedure, subject) => {
  const { method } = procedure;
  if (method === undefined || isExempt(procedure, subject)) return undefined;
  const name = methodName(procedure, subject);
  if (!superficial.has(name)) return partial(procedure, subject);
  const deep = deepEnough.has(depthOf(procedure, subject)?.reaches);
  return deep ? undefined : { at: method, args: { method: name ?? '' } };
};

const wholeMethods: ReadonlySet<string | undefined> = new Set(['deep shave', 'excisional']);

/** A sample that is smaller than the lesion that it was to take out whole. */
function partial(procedure: Procedure, subject: Subject): Report | undefined {
  const { size } = procedure;
  const lesion = lesionMm(procedure);
  const taken = Math.max(...(size?.value?.mm ?? []));
  if (size === undefined || lesion === undefined || lesion >= large || !(taken > 0 && taken < lesion))
    return undefined;
  const whole =
    punchOf(procedure, subject.tables) !== undefined || wholeMethods.has(methodName(procedure, subject));
  return whole
    ? { at: size, form: 'partial', severity: 'information', args: { size: size.text, lesion } }
    : undefined;
}

const fat: Judge = (procedure, subject) => {
  const { method, depth } = procedure;
  const reached = depthOf(procedure, subject);
  if (depth !== undefined && reached !== undefined)
    return reached.reaches === 'subcutis' ? undefined : { at: depth, args: { reached: reached.name } };
  const name = methodName(procedure, subject);
  if (method === undefined || (!superficial.has(name) && name !== 'deep shave')) return undefined;
  return { at: method, args: { reached: `depth of a ${name ?? ''}` } };
};

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

const question = 'what is asked';

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

export const checks: readonly Check[] = [
  {
    code: 'method/melanoma-margin',
    misses: ({ form }) => (form === 'unsaid' ? 'margin' : undefined),
    severity: 'information',
    title: 'A margin that does not suit a suspected melanoma',
    why: 'For the diagnosis a margin of 1 to 3 mm is advised: enough to see the whole lesion, and narrow enough to leave the drainage for a later sentinel node as it is. Treatment of a melanoma that is known has wider margins and is not meant.',
    sources: [
      { source: 'melanoma-aad', mark: 'Q' },
      { source: 'melanoma-nccn-2018', mark: 'Q' },
    ],
    messages: {
      main: 'Melanoma is asked about, and the margin is {margin}; for the diagnosis {from} to {to} mm is advised. Check the number, or say that this is the treatment.',
      unsaid:
        'Melanoma is asked about, and the excision has no margin here; for the diagnosis {from} to {to} mm is advised. Write `margin`.',
      thin: 'Melanoma is asked about, and the margin is {margin}; {from} to {to} mm is advised, so that the whole lesion is seen. Check the number.',
      question,
    },
    ...ofSuspected('whole lesion', melanomaMargin),
  },
  {
    code: 'method/melanoma-sample',
    severity: 'warning',
    title: 'A sample that may not do for a suspected melanoma',
    why: 'Treatment goes by the thickness of the tumor, and a cut through its base hides it. Guidelines want the whole lesion, by ellipse, punch or a shave below its plane; a partial sample is accepted on face, palms and soles, of a very large lesion, and where suspicion is low. Sources differ: one of 2005 forbids every shave, the academy and the network allow a deep one; this check follows them.',
    sources: [
      { source: 'melanoma-aad', mark: 'Q' },
      { source: 'melanoma-nccn-2018', mark: 'Q' },
      { source: 'melanoma-afp-2005', mark: 'Q' },
      { source: 'biopsy-guide-afp', mark: 'Q' },
    ],
    messages: {
      main: 'Melanoma is asked about, and a {method} may cut through its base. A deep shave below the lesion, a punch or an ellipse of the whole lesion lets its thickness be measured; if it went deep enough, write `depth`.',
      partial:
        'Melanoma is asked about, and {size} takes only a part of a lesion of {lesion} mm. If the whole lesion could not be taken, say so in the question.',
      question,
    },
    ...ofSuspected('whole lesion', melanoma),
  },
  {
    code: 'method/hair-loss-sample',
    severity: 'warning',
    title: 'A sample too small or too shallow for hair loss',
    why: 'Hair is counted in a disc of at least 4 mm that reaches the bulbs in the fat, cut along the hair. Two punches serve both planes of section; of an only one horizontal sections show most.',
    sources: [
      { source: 'hair-handbook', mark: 'Q' },
      { source: 'hair-academic-page', mark: 'Q' },
      { source: 'hair-ijwd-2022', mark: 'Q' },
    ],
    messages: {
      main: 'For {disease} a punch of {size} is too small to count hairs. Use 4 mm or more.',
      shave: 'For {disease} a {method} misses the hair bulbs. Use a punch of 4 mm or more, into the fat.',
      depth:
        'For {disease} the sample should reach the fat, where the bulbs lie; this one reached the {depth}.',
      angle:
        'For {disease} the punch goes in along the hair; at right angles to the skin it cuts through the shafts.',
      second:
        'For {disease} sources want two punches, one for horizontal and one for vertical sections. If there was only one, tell the laboratory which sections it is for: horizontal ones show most.',
      question,
    },
    ...ofSuspected('hair', hair),
  },
  {
    code: 'method/fat-not-reached',
    severity: 'warning',
    title: 'A disease of the fat, and a sample without fat',
    why: 'Panniculitis and deep nodules lie in the fat; a sample without it can not show them.',
    sources: [{ source: 'dermatology-chapter-146', mark: 'Q' }],
    messages: {
      main: 'The question is {disease}, which lies in the fat, and the sample reached only the {reached}. A deep incision or excision is needed; if fat was taken, write `depth: subcutis`.',
      question,
    },
    ...ofSuspected('fat', fat),
  },
  {
    code: 'method/blister-sample',
    severity: 'warning',
    title: 'A blistering disease, and a sample that does not show it',
    why: 'In the blister itself the antibodies are gone: immunofluorescence wants skin beside it. Most laboratories ask for perilesional skin, an older one for the edge of the blister; both pass.',
    sources: [
      { source: 'immunofluorescence-manuals', mark: 'Q' },
      { source: 'jaad-2010-formalin', mark: 'Q' },
    ],
    messages: {
      main: 'For immunofluorescence in {disease} the sample should lie beside the blister, not in it. If it did, write `relation: perilesional`; if not, another is needed.',
      second:
        'The question is {disease}: a second sample from beside the blister, in a transport medium for immunofluorescence, usually decides it.',
      question,
    },
    ...ofSuspected('beside the blister', blister),
  },
];
