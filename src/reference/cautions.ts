import type { SiteRegion } from './sites.ts';
import type { Sourced, WordRow } from './types.ts';

/** A condition or medicine of the patient with which a local anesthetic or its epinephrine calls for care. */
export interface CautionRow extends WordRow {
  /** With epinephrine: with any amount, or only with more than the maximum for cardiac disease. */
  readonly epinephrine?: Sourced & { readonly anyAmount: boolean };
  /** With epinephrine where end arteries supply the skin, in these regions. */
  readonly endArtery?: Sourced & { readonly regions: ReadonlySet<SiteRegion> };
  /** Less anesthetic is borne. */
  readonly tolerance?: Sourced;
  /** With prilocaine: a metabolite turns hemoglobin into methemoglobin. */
  readonly methemoglobin?: Sourced & { readonly by: 'disease' | 'enzyme' | 'medicine' };
  readonly pregnancy?: Sourced;
}

/** From this share of the limit on it is said that a patient bears less: Wheal's own number, labels name none. */
export const toleranceFrom = 0.5;

const label: Sourced = { source: 'us-label-reduced-doses', mark: 'Q' };
const small = { anyAmount: false, source: 'epinephrine-interactions', mark: 'Q' } as const;
const blocker = { anyAmount: false, source: 'beta-blocker-interactions', mark: 'Q' } as const;
const digits: ReadonlySet<SiteRegion> = new Set(['hand', 'foot', 'nail']);
const extremities: ReadonlySet<SiteRegion> = new Set(['hand', 'foot', 'nail', 'ear', 'nose']);

/** Medicines by their generic names or class, with commas between them; behind bars other words for the same. */
const medicines = (
  effect: Pick<CautionRow, 'epinephrine' | 'methemoglobin'>,
  names: string,
): readonly CautionRow[] =>
  names.split(', ').map((one) => {
    const [name = '', ...synonyms] = one.split('|');
    return { name, synonyms, ...effect };
  });

const oxidant = (source: string): Pick<CautionRow, 'methemoglobin'> => ({
  methemoglobin: { by: 'medicine', source, mark: 'Q' },
});

const conditions: readonly CautionRow[] = [
  {
    name: 'pheochromocytoma',
    synonyms: ['phaeochromocytoma', 'paraganglioma', 'pheo', 'phaeo'],
    epinephrine: { anyAmount: true, source: 'epinephrine-conditions', mark: 'Q' },
  },
  {
    name: 'hyperthyroidism',
    synonyms: [
      'hyperthyroid',
      'thyrotoxicosis',
      'overactive thyroid',
      'thyroid storm',
      'Graves disease',
      "Graves' disease",
      'Graves',
      'toxic goiter',
      'uncontrolled hyperthyroidism',
      'toxic nodular goiter',
      'toxic multinodular goiter',
    ],
    epinephrine: { anyAmount: false, source: 'epinephrine-conditions', mark: 'Q' },
  },
  {
    name: 'Raynaud phenomenon',
    synonyms: [
      'Raynaud',
      'Raynauds',
      "Raynaud's",
      "Raynaud's disease",
      'Raynaud syndrome',
      'Raynaud disease',
      "Raynaud's phenomenon",
      "Raynaud's syndrome",
      'Raynauds phenomenon',
      'Raynauds disease',
    ],
    endArtery: { regions: extremities, source: 'digit-raynaud-2022', mark: 'Q' },
  },
  {
    name: 'peripheral vascular disease',
    synonyms: [
      'peripheral arterial disease',
      'peripheral artery disease',
      'PAD',
      'PVD',
      'PAOD',
      'critical limb ischemia',
      'limb ischemia',
      'claudication',
      'thromboangiitis obliterans',
      'Buerger disease',
      'systemic sclerosis',
      'scleroderma',
      'CREST',
      'CLI',
      'CLTI',
      'arterial insufficiency',
      'intermittent claudication',
      'vascular claudication',
      "Buerger's disease",
      'chronic limb-threatening ischemia',
      'peripheral arterial occlusive disease',
      'arterial ulcer',
      'fem-pop bypass',
      'femoropopliteal bypass',
      'CREST syndrome',
      'digital ischemia',
      'poor circulation in feet',
      'limited scleroderma',
      'SSc',
      'diffuse scleroderma',
      'vascular impairment',
      'arterial disease',
      'peripheral arterial insufficiency',
    ],
    endArtery: { regions: digits, source: 'us-label-end-arteries', mark: 'Q' },
  },
  {
    name: 'liver disease',
    synonyms: [
      'hepatic disease',
      'hepatic impairment',
      'liver impairment',
      'liver failure',
      'hepatic failure',
      'cirrhosis',
      'liver cirrhosis',
      'hepatitis',
      'ESLD',
      'end-stage liver disease',
      'end stage liver disease',
      'NASH',
      'MASH',
      'cirrhotic',
      'hepatitis B',
      'hepatitis C',
      'hep B',
      'hep C',
      'HBV',
      'HCV',
      'alcoholic cirrhosis',
      'alcoholic liver disease',
      'portal hypertension',
      'primary biliary cholangitis',
      'PBC',
      'autoimmune hepatitis',
      'chronic liver disease',
      'CLD',
      'hepatic cirrhosis',
      'decompensated cirrhosis',
      'hepatic insufficiency',
      'liver dysfunction',
      'alcoholic hepatitis',
    ],
    tolerance: label,
  },
  {
    name: 'cardiac disease',
    synonyms: [
      'heart disease',
      'heart failure',
      'cardiac failure',
      'CHF',
      'congestive heart failure',
      'heart block',
      'HF',
      'HFrEF',
      'HFpEF',
      'HFmrEF',
      'CCF',
      'systolic heart failure',
      'diastolic heart failure',
      'AV block',
      'complete heart block',
      'low ejection fraction',
      'low EF',
      'reduced ejection fraction',
      'reduced EF',
      'third-degree heart block',
    ],
    tolerance: label,
  },
  {
    name: 'frailty',
    synonyms: [
      'frail',
      'debilitated',
      'debility',
      'cachexia',
      'cachectic',
      'malnourished',
      'acutely ill',
      'failure to thrive',
      'malnutrition',
      'hospice',
      'bedbound',
      'bedridden',
      'end of life',
    ],
    tolerance: label,
  },
  {
    name: 'pregnancy',
    synonyms: [
      'pregnant',
      'gravid',
      'first trimester',
      'second trimester',
      'third trimester',
      'IUP',
      'weeks gestation',
      'weeks of gestation',
      'expecting',
      'expecting a baby',
      'expecting a child',
      'expectant mother',
      'currently pregnant',
      '1st trimester',
      '2nd trimester',
      '3rd trimester',
      'intrauterine pregnancy',
      'pregnant patient',
      'gestation',
    ],
    pregnancy: { source: 'aad-2016-summary', mark: 'Q' },
  },
  {
    name: 'methemoglobinemia',
    synonyms: [
      'methaemoglobinaemia',
      'congenital methemoglobinemia',
      'hereditary methemoglobinemia',
      'idiopathic methemoglobinemia',
      'cytochrome b5 reductase deficiency',
      'hemoglobin M disease',
      'acquired methemoglobinemia',
      'prior methemoglobinemia',
      'MetHb',
      'methemoglobin',
    ],
    methemoglobin: { by: 'disease', source: 'us-label-prilocaine-methemoglobin', mark: 'Q' },
  },
  {
    name: 'G6PD deficiency',
    synonyms: [
      'G6PD',
      'G6PDD',
      'G-6-PD deficiency',
      'glucose-6-phosphate dehydrogenase deficiency',
      'favism',
      'G6PD def',
      'G-6-PD',
      'glucose-6-phosphate dehydrogenase',
    ],
    methemoglobin: { by: 'enzyme', source: 'us-label-prilocaine-methemoglobin', mark: 'Q' },
  },
];

/** Conditions and medicines with which care is called for. Medicines by their generic names, and by their class. */
export const cautions: readonly CautionRow[] = [
  ...conditions,
  ...medicines(
    { epinephrine: blocker },
    'propranolol, nadolol, timolol, sotalol, pindolol, penbutolol, carvedilol, labetalol, non-selective beta blocker|nonselective beta blocker|non-selective beta blockers|NSBB',
  ),
  ...medicines(
    { epinephrine: small },
    'amitriptyline, nortriptyline, imipramine, desipramine, clomipramine, doxepin, trimipramine, protriptyline, ' +
      'tricyclic antidepressant|tricyclic antidepressants|tricyclic|tricyclics|TCA|TCAs, amoxapine, phenelzine, tranylcypromine, isocarboxazid, MAO inhibitor|MAOI|MAOIs|MAO inhibitors|monoamine oxidase inhibitor, ' +
      'chlorpromazine, promethazine, prochlorperazine, perphenazine, fluphenazine, thioridazine, phenothiazine, cocaine',
  ),
  ...medicines(
    // Of the second kind of monoamine oxidase; whether the caution holds for them was not read.
    { epinephrine: { ...small, mark: 'M' } },
    'selegiline, rasagiline, safinamide',
  ),
  ...medicines(
    oxidant('methemoglobin-drugs-australia'),
    'dapsone, sulfamethoxazole, trimethoprim-sulfamethoxazole|co-trimoxazole|TMP-SMX|TMP/SMX|SMX-TMP|SMX/TMP|sulfamethoxazole-trimethoprim|trimethoprim/sulfamethoxazole, sulfadiazine, sulfonamide|sulfonamides|sulfa drug, ' +
      'chloroquine, primaquine, nitroglycerin, glyceryl trinitrate, isosorbide dinitrate, isosorbide mononitrate, ' +
      'nitroprusside, amyl nitrite, nitrate',
  ),
  ...medicines(
    oxidant('methemoglobin-drugs-ers'),
    'phenytoin, valproate, sodium valproate, valproic acid, sulfasalazine, phenazopyridine, rasburicase',
  ),
];

/**
 * A weight is taken for old after so many days: children grow, and of an older patient it matters from a share of the
 * limit on. No source was found for the numbers.
 */
export const weightAges: readonly {
  readonly belowMonths: number;
  readonly days: number;
  readonly fromShare: number;
}[] = [
  { belowMonths: 12, days: 31, fromShare: 0 },
  { belowMonths: 36, days: 92, fromShare: 0 },
  { belowMonths: 144, days: 183, fromShare: 0 },
  { belowMonths: Infinity, days: 365, fromShare: 0.5 },
];
