import type { SiteRegion } from './sites.ts';
import type { Sourced, WordRow } from './types.ts';

/** A condition or medicine of the patient with which a local anesthetic or its epinephrine calls for care. */
export interface CautionRow extends WordRow {
  readonly kind: 'condition' | 'medicine';
  /** Whether a patient who has had it still has it. Common knowledge; what may heal or be cut out does not last. */
  readonly lasts: boolean;
  /**
   * With epinephrine: with any amount, with more than a trace, with more than a trace while it is not under control
   * (`unstable`), or with more than the maximum for cardiac disease.
   */
  readonly epinephrine?: Sourced & { readonly from: 'any' | 'trace' | 'unstable' | 'cardiac' };
  /** With epinephrine where end arteries supply the skin, in these regions. */
  readonly endArtery?: Sourced & { readonly regions: ReadonlySet<SiteRegion> };
  /** Less anesthetic is borne; `grave` where the label names the disease itself as a danger. */
  readonly tolerance?: Sourced & { readonly grave?: true };
  /** Prone to methemoglobin, which local anesthetics can cause; `everyday` medicines are too common to mention each time. */
  readonly methemoglobin?: Sourced & { readonly by: 'disease' | 'enzyme' | 'medicine' | 'everyday' };
  /** A medicine for the rhythm of the heart, of this class, to which lidocaine and prilocaine add. */
  readonly antiarrhythmic?: Sourced & { readonly class: 'I' | 'III' };
  /** A sulfite sets off an attack. */
  readonly sulfite?: Sourced;
  readonly pregnancy?: Sourced;
}

/** From this share of the limit on it is said that a patient bears less: Wheal's own number, labels name none. */
export const toleranceFrom = 0.5;

/** Ages from which labels want less, and from which on a share of the limit is a warning: Wheal's own numbers, labels name none. */
export const oldAge = { years: 65, warnedYears: 80, warnedFrom: 0.8 } as const;

const label: Sourced = { source: 'us-label-reduced-doses', mark: 'Q' };
const graveLabel = { ...label, grave: true } as const;
const conduction = { source: 'lidocaine-label-heart', mark: 'Q', grave: true } as const;
/** What rules epinephrine out while it is not under control. */
const unstable = { from: 'unstable', source: 'vasoconstrictor-contraindications-1', mark: 'Q' } as const;
const small = { from: 'cardiac', source: 'epinephrine-interactions', mark: 'Q' } as const;
const avoided = { from: 'trace', source: 'us-label-epinephrine-interactions', mark: 'Q' } as const;
const extremities: ReadonlySet<SiteRegion> = new Set(['hand', 'foot', 'nail', 'ear', 'nose']);
const endArteries: ReadonlySet<SiteRegion> = new Set([...extremities, 'genital']);

/** "G2P1 at 31 weeks": pregnancies and births, which say that somebody is pregnant only before the weeks. */
const pregnantAt: readonly string[] = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((gravida) =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((para) => `G${gravida}P${para} at`),
);

/** Medicines by their generic names or class, with commas between them; after bars other words for the same. */
const medicines = (effect: Partial<CautionRow>, names: string): readonly CautionRow[] =>
  names.split(', ').map((one) => {
    const [name = '', ...synonyms] = one.split('|');
    return { name, synonyms, kind: 'medicine', lasts: false, ...effect };
  });

const oxidant = (
  source: string,
  by: 'medicine' | 'everyday' = 'medicine',
  mark: Sourced['mark'] = 'Q',
): Pick<CautionRow, 'methemoglobin'> => ({ methemoglobin: { by, source, mark } });

const rhythm = (kind: 'I' | 'III'): Pick<CautionRow, 'antiarrhythmic'> => ({
  antiarrhythmic: { class: kind, source: 'us-label-cream-antiarrhythmics', mark: 'Q' },
});

const conditions: readonly CautionRow[] = [
  {
    name: 'pheochromocytoma',
    kind: 'condition',
    lasts: false,
    synonyms: [
      'phaeochromocytoma',
      'paraganglioma',
      'pheo',
      'phaeo',
      'catecholamine-secreting tumor',
      'catecholamine secreting tumor',
      'adrenaline-secreting tumor',
      'adrenaline secreting tumor',
      'tumor making adrenaline',
    ],
    epinephrine: { from: 'any', source: 'epinephrine-conditions', mark: 'Q' },
  },
  {
    name: 'hyperthyroidism',
    kind: 'condition',
    lasts: false,
    synonyms: [
      'hyperthyroid',
      'thyrotoxicosis',
      'thyrotoxic',
      'overactive thyroid',
      'thyroid storm',
      'Graves disease',
      "Graves' disease",
      'Graves',
      "Graves'",
      "Grave's disease",
      "Grave's",
      'toxic goiter',
      'uncontrolled hyperthyroidism',
      'untreated hyperthyroidism',
      'toxic nodular goiter',
      'toxic multinodular goiter',
      'toxic adenoma',
    ],
    epinephrine: { from: 'unstable', source: 'vasoconstrictor-contraindications-2', mark: 'Q' },
  },
  {
    name: 'treated hyperthyroidism',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'controlled hyperthyroidism',
      'hyperthyroidism, controlled',
      'hyperthyroidism, treated',
      'hyperthyroidism, well controlled',
      'euthyroid Graves',
      'Graves, euthyroid',
      'Graves, treated',
      'Graves, controlled',
      'treated Graves disease',
      'Graves disease, treated',
      'Graves disease, controlled',
      'Graves disease, euthyroid',
    ],
    epinephrine: { from: 'cardiac', source: 'epinephrine-conditions', mark: 'Q' },
  },
  {
    name: 'unstable heart disease',
    kind: 'condition',
    lasts: false,
    synonyms: [
      'unstable angina',
      'recent MI',
      'recent myocardial infarction',
      'recent heart attack',
      'recent STEMI',
      'recent NSTEMI',
      'acute MI',
      'acute coronary syndrome',
      'recent CABG',
      'recent bypass',
      'recent bypass surgery',
      'ventricular tachycardia',
      'ventricular fibrillation',
      'VT',
      'V tach',
      'v-tach',
      'vtach',
      'refractory arrhythmia',
      'uncontrolled arrhythmia',
      'uncontrolled atrial fibrillation',
      'uncontrolled afib',
      'rapid ventricular response',
      'afib with RVR',
      'AF with RVR',
      'RVR',
      'uncontrolled heart failure',
      'acute heart failure',
      'acutely decompensated heart failure',
    ],
    epinephrine: unstable,
  },
  {
    name: 'uncontrolled hypertension',
    kind: 'condition',
    lasts: false,
    synonyms: [
      'severe hypertension',
      'poorly controlled hypertension',
      'uncontrolled high blood pressure',
      'uncontrolled HTN',
      'severe HTN',
      'poorly controlled HTN',
      'hypertension, uncontrolled',
      'HTN, uncontrolled',
      'malignant hypertension',
      'malignant HTN',
      'accelerated hypertension',
      'hypertensive crisis',
      'hypertensive urgency',
      'hypertensive emergency',
    ],
    epinephrine: { from: 'trace', source: 'uk-smpc-adrenaline-hypertension', mark: 'Q' },
  },
  {
    name: 'sulfite-sensitive asthma',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'asthma triggered by sulfites',
      'asthma from sulfites',
      'sulfite asthma',
      'sulfite-induced asthma',
      'sulphite-induced asthma',
      'sulfite-triggered asthma',
      'asthma with sulfites',
      'sulphite-sensitive asthma',
    ],
    sulfite: { source: 'us-label-articaine-sulfite', mark: 'Q' },
  },
  {
    name: 'Raynaud phenomenon',
    kind: 'condition',
    lasts: true,
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
      'Reynaud',
      'Reynauds',
      "Reynaud's",
      "Reynaud's disease",
      "Reynaud's phenomenon",
      'Raynoud',
      'Raynouds',
      "Raynoud's",
      'Renauds',
      "Renaud's",
      'digital vasospasm',
      'vasospasm of fingers',
      'vasospasm of the fingers',
      'vasospasm of toes',
      'vasospastic disease',
      'fingers turn white',
      'fingers go white',
      'fingers turn blue',
      'toes turn white',
      'white fingers in cold',
    ],
    endArtery: { regions: extremities, source: 'digit-raynaud-2022', mark: 'Q' },
  },
  {
    name: 'peripheral vascular disease',
    kind: 'condition',
    lasts: true,
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
      'thromboangiitis',
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
      "Buerger's",
      'Buergers',
      'Buergers disease',
      'Buerger',
      'TAO of the digits',
      'vascular disease',
      'poor circulation',
      'poor circulation in hands',
      'poor circulation in fingers',
      'bad circulation',
      'compromised circulation',
      'frostbite',
      'frostbitten',
      'digit replantation',
      'finger replantation',
      'digital replantation',
      'replanted finger',
      'replanted digit',
      'replantation',
      'reattached finger',
      'gangrene',
      'gangrenous toe',
    ],
    endArtery: { regions: endArteries, source: 'us-label-end-arteries', mark: 'Q' },
  },
  {
    name: 'liver disease',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'hepatic disease',
      'hepatic impairment',
      'liver impairment',
      'hepatitis',
      'NASH',
      'MASH',
      'hepatitis B',
      'hepatitis C',
      'hep B',
      'hep C',
      'HBV',
      'HCV',
      'alcoholic liver disease',
      'primary biliary cholangitis',
      'PBC',
      'autoimmune hepatitis',
      'chronic liver disease',
      'CLD',
      'hepatic insufficiency',
      'liver dysfunction',
      'alcoholic hepatitis',
    ],
    tolerance: label,
  },
  {
    name: 'severe liver disease',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'liver failure',
      'hepatic failure',
      'acute liver failure',
      'cirrhosis',
      'liver cirrhosis',
      'hepatic cirrhosis',
      'alcoholic cirrhosis',
      'cryptogenic cirrhosis',
      'decompensated cirrhosis',
      'cirrhotic',
      'ESLD',
      'end-stage liver disease',
      'end stage liver disease',
      'severe hepatic impairment',
      'severe hepatic disease',
      'advanced liver disease',
      'decompensated liver disease',
      'Child-Pugh B',
      'Child-Pugh C',
      'Child-Pugh class B',
      'Child-Pugh class C',
      'Child B',
      'Child C',
      'Child B cirrhosis',
      'Child C cirrhosis',
      'portal hypertension',
      'hepatic encephalopathy',
      'esophageal varices',
      'hepatorenal syndrome',
      'liver transplant list',
      'awaiting liver transplant',
      'jaundiced',
    ],
    tolerance: graveLabel,
  },
  {
    name: 'cardiac disease',
    kind: 'condition',
    lasts: true,
    synonyms: ['heart disease', 'cardiomyopathy', 'valvular heart disease', 'ischemic heart disease'],
    tolerance: label,
  },
  {
    name: 'heart failure',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'cardiac failure',
      'CHF',
      'congestive heart failure',
      'HF',
      'HFrEF',
      'HFpEF',
      'HFmrEF',
      'CCF',
      'systolic heart failure',
      'diastolic heart failure',
      'decompensated HF',
      'decompensated heart failure',
      'low ejection fraction',
      'low EF',
      'reduced ejection fraction',
      'reduced EF',
      'cardiogenic shock',
      'ischemic cardiomyopathy',
      'dilated cardiomyopathy',
    ],
    tolerance: conduction,
  },
  {
    name: 'heart block',
    kind: 'condition',
    lasts: true,
    synonyms: [
      'AV block',
      'complete heart block',
      'CHB',
      'third-degree heart block',
      'third-degree AV block',
      '3rd degree heart block',
      '3rd degree AV block',
      'second-degree heart block',
      'second-degree AV block',
      '2nd degree heart block',
      '2nd degree AV block',
      'atrioventricular block',
      'Mobitz II',
      'Mobitz type II',
      'Mobitz',
      'bifascicular block',
      'trifascicular block',
      'Stokes-Adams',
      'Adams-Stokes',
      'Stokes-Adams attacks',
      'conduction disorder',
      'conduction disease',
      'sick sinus syndrome',
      'WPW',
      'Wolff-Parkinson-White',
    ],
    tolerance: conduction,
  },
  {
    name: 'frailty',
    kind: 'condition',
    lasts: false,
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
    kind: 'condition',
    lasts: false,
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
      'preg',
      'gravida',
      'expecting baby',
      'expecting, due',
      'pregnancy test positive',
      'positive pregnancy test',
      'hCG positive',
      'positive hCG',
      ...pregnantAt,
    ],
    pregnancy: { source: 'aad-2016-summary', mark: 'Q' },
  },
  {
    name: 'methemoglobinemia',
    kind: 'condition',
    lasts: true,
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
      'metHgb',
      'methemoglobin',
      'methemoglobinaemia',
      'methaemoglobinemia',
      'methaemoglobin',
      'congenital methemoglobinaemia',
      'hereditary metHgb',
      'cytochrome b5 deficiency',
      'Hgb M',
      'hemoglobin M',
    ],
    methemoglobin: { by: 'disease', source: 'us-label-methemoglobin', mark: 'Q' },
  },
  {
    name: 'G6PD deficiency',
    kind: 'condition',
    lasts: true,
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
    methemoglobin: { by: 'enzyme', source: 'us-label-methemoglobin', mark: 'Q' },
  },
];

/** Conditions and medicines with which care is called for. Medicines by their generic names, and by their class. */
export const cautions: readonly CautionRow[] = [
  ...conditions,
  ...medicines({ ...rhythm('III'), epinephrine: avoided }, 'sotalol'),
  ...medicines(
    { epinephrine: avoided },
    'propranolol, nadolol, timolol, pindolol, penbutolol, carvedilol, labetalol, non-selective beta blocker|nonselective beta blocker|non-selective beta blockers|NSBB, ' +
      'amitriptyline, nortriptyline, imipramine, desipramine, clomipramine, doxepin, trimipramine, protriptyline, ' +
      'tricyclic antidepressant|tricyclic antidepressants|tricyclic|tricyclics|TCA|TCAs, amoxapine, phenelzine, tranylcypromine, isocarboxazid, MAO inhibitor|MAOI|MAOIs|MAO-I|MAO-Is|MAO|MAO inhibitors|monoamine oxidase inhibitor, ' +
      'ergonovine|ergometrine, methylergonovine|methylergometrine',
  ),
  // The label names the class alone; that these are of it is general knowledge.
  ...medicines(
    { epinephrine: { ...avoided, mark: 'Q2' } },
    'selegiline, rasagiline, safinamide, moclobemide, linezolid',
  ),
  ...medicines(
    { epinephrine: small },
    'chlorpromazine, promethazine, prochlorperazine, perphenazine, fluphenazine, thioridazine, phenothiazine, cocaine',
  ),
  // Which beta blocker is not said: it may be one that is not selective.
  ...medicines(
    { epinephrine: { from: 'cardiac', source: 'beta-blocker-interactions', mark: 'Q' } },
    'beta blocker|beta blockers|beta-blocker|beta-blockers',
  ),
  ...medicines(
    { tolerance: { source: 'lidocaine-maximum-2021', mark: 'Q' } },
    'cimetidine, itraconazole, erythromycin',
  ),
  ...medicines(
    oxidant('us-label-methemoglobin-drugs'),
    'dapsone, sulfamethoxazole, trimethoprim-sulfamethoxazole|co-trimoxazole|TMP-SMX|TMP/SMX|SMX-TMP|SMX/TMP|sulfamethoxazole-trimethoprim|trimethoprim/sulfamethoxazole, sulfadiazine, sulfonamide|sulfonamides|sulfa drug, ' +
      'nitrofurantoin, aminosalicylic acid|para-aminosalicylic acid, chloroquine, primaquine, quinine, nitric oxide, ' +
      'nitroglycerin|nitroglycerine|nitro|NTG|nitropaste, glyceryl trinitrate, nitroprusside, nitrous oxide, cyclophosphamide, flutamide, hydroxyurea|hydroxycarbamide, ' +
      'ifosfamide, rasburicase',
  ),
  ...medicines(
    oxidant('methemoglobin-drugs-australia'),
    'isosorbide dinitrate|isosorbide|ISDN, isosorbide mononitrate|ISMN, amyl nitrite, nitrate',
  ),
  ...medicines(
    oxidant('methemoglobin-drugs-ers'),
    'phenytoin|fosphenytoin, valproate|divalproex|divalproex sodium, sodium valproate, valproic acid, sulfasalazine, phenazopyridine',
  ),
  ...medicines(oxidant('us-label-cream-methemoglobin-drugs'), 'phenobarbital'),
  ...medicines(oxidant('us-label-cream-methemoglobin-drugs', 'everyday'), 'acetaminophen|paracetamol'),
  ...medicines(oxidant('methemoglobin-drugs-restated', 'everyday', 'Q2'), 'metoclopramide'),
  ...medicines(
    rhythm('I'),
    'mexiletine, tocainide, flecainide, propafenone, quinidine, disopyramide, procainamide, class I antiarrhythmic',
  ),
  ...medicines(
    rhythm('III'),
    'amiodarone|amio, dofetilide, dronedarone, ibutilide, bretylium, class III antiarrhythmic',
  ),
];

/** Numbers in free words that are a condition by themselves, by the name of its row. */
export const readings = {
  /** From either of these pressures on, in mmHg, surgery that can wait does not go ahead. */
  pressure: {
    name: 'uncontrolled hypertension',
    systolic: 180,
    diastolic: 110,
    source: 'blood-pressure-before-surgery',
    mark: 'Q',
  },
  /** Up to this percentage an ejection fraction is reduced: the line that guidelines draw. */
  ejection: { name: 'heart failure', percent: 40, source: 'ccs-heart-failure-2017', mark: 'Q' },
  /** Below so many months an infarction or a bypass is recent, by a Swiss label. */
  infarction: {
    name: 'unstable heart disease',
    months: 6,
    source: 'swiss-label-articaine-epinephrine',
    mark: 'Q',
  },
} as const;

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
