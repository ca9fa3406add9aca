import type { Sourced, WordRow } from './types.ts';

/** A finding of the pathologist that asks for more than telling. */
export interface FindingRow extends WordRow {
  /** Whether it can't wait. */
  readonly urgent: boolean;
}

const cancers: readonly FindingRow[] = [
  [
    'melanoma',
    [
      'malignant melanoma',
      'melanoma in situ',
      'MMIS',
      'MIS',
      'MM',
      'LMM',
      'ALM',
      'SSM',
      'melanoma in-situ',
      'malignant blue nevus',
      'melanocytic neoplasm of uncertain',
      'malignant melanocytic',
      'lentigo maligna',
      'lentigo maligna melanoma',
    ],
  ],
  [
    'squamous cell carcinoma',
    [
      'SCC',
      'SCCIS',
      'cuSCC',
      'ISCC',
      'squamous cell ca',
      'squamous ca',
      'SCC in situ',
      'SCC in-situ',
      'bowenoid',
      'Bowens disease',
      'Bowen',
      'carcinoma squamous cell',
      'carcinoma squamous',
      'ca squamous',
      'erythroplasia of Queyrat',
      'KA',
      'VIN',
      'PIN',
      'AIN',
      'HSIL',
      'squamous intraepithelial lesion high grade',
      'high-grade squamous intraepithelial lesion',
      'squamous carcinoma in situ',
      'verrucous carcinoma',
      'squamoid malignancy',
      'cSCC',
      'squamous cell carcinoma in situ',
      'squamous carcinoma',
      'Bowen disease',
      "Bowen's disease",
      'keratoacanthoma',
      'squamous cell cancer',
    ],
  ],
  [
    'basal cell carcinoma',
    [
      'BCC',
      'sBCC',
      'nBCC',
      'iBCC',
      'basal cell ca',
      'basal ca',
      'carcinoma basal cell',
      'ca basal cell',
      'basaloid carcinoma',
      'fibroepithelioma of Pinkus',
      'fibroepithelioma',
      'rodent ulcer',
      'basaloid neoplasm',
      'basaloid proliferation',
      'nodular basal cell carcinoma',
      'basal cell cancer',
      'basosquamous carcinoma',
    ],
  ],
  ['Merkel cell carcinoma', ['MCC']],
  [
    'cutaneous lymphoma',
    [
      'lymphoma',
      'CTCL',
      'MF',
      'CBCL',
      'PCFCL',
      'PCMZL',
      'DLBCL',
      'ALCL',
      'LyP',
      'lymphomatoid papulosis',
      'atypical lymphoid infiltrate',
      'atypical lymphoid proliferation',
      'atypical lymphocytic infiltrate',
      'clonal T-cell',
      'blastic plasmacytoid',
      'BPDCN',
      'leukemic infiltrate',
      'T-cell lymphoma',
      'B-cell lymphoma',
      'Langerhans cell histiocytosis',
      'plasmacytoma',
      'mycosis fungoides',
      'Sezary syndrome',
      'leukemia cutis',
      'leukaemia cutis',
      'lymphoproliferative disorder',
    ],
  ],
  [
    'sarcoma',
    [
      'angiosarcoma',
      "Kaposi's sarcoma",
      'KS',
      'PDS',
      'UPS',
      'undifferentiated pleomorphic sarcoma',
      'epithelioid sarcoma',
      'malignant fibrous histiocytoma',
      'atypical smooth muscle tumor',
      'fibrosarcoma',
      'spindle cell neoplasm',
      'atypical spindle cell',
      'Kaposi sarcoma',
      'leiomyosarcoma',
      'dermatofibrosarcoma protuberans',
      'dermatofibrosarcoma',
      'DFSP',
      'liposarcoma',
      'pleomorphic dermal sarcoma',
      'atypical fibroxanthoma',
      'AFX',
    ],
  ],
  [
    'adnexal carcinoma',
    [
      'sebaceous carcinoma',
      'porocarcinoma',
      'MAC',
      'spiradenocarcinoma',
      'mucinous carcinoma',
      'adenoid cystic carcinoma',
      'pilomatrix carcinoma',
      'pilomatrical carcinoma',
      'trichilemmal carcinoma',
      'adnexal carcinoma',
      'malignant proliferating',
      'apocrine carcinoma',
      'microcystic adnexal carcinoma',
      'eccrine carcinoma',
      'hidradenocarcinoma',
    ],
  ],
  [
    'Paget disease',
    ["Paget's disease", 'extramammary Paget disease', "extramammary Paget's disease", 'EMPD'],
  ],
  ['metastasis', ['metastases', 'metastatic', 'mets', 'cutaneous metastasis', 'metastatic carcinoma']],
  [
    'cancer',
    [
      'carcinoma',
      'malignancy',
      'malignant',
      'malignant neoplasm',
      'malignant tumor',
      'malignant tumour',
      'neoplasm malignant',
      'ca in situ',
      'malignant cells',
      'malignant proliferation',
      'invasive carcinoma',
      'neuroendocrine carcinoma',
      'carcinomatous',
      'carcinoma in situ',
      'adenocarcinoma',
    ],
  ],
].map(([name, synonyms]) => ({
  name: name as string,
  synonyms: synonyms as readonly string[],
  urgent: true,
}));

/** What a diagnosis may name that needs a plan; cancers can't wait either. */
export const findingsToAct: readonly FindingRow[] = [
  ...cancers,
  {
    name: 'atypical melanocytic lesion',
    synonyms: [
      'atypical melanocytic proliferation',
      'AIMP',
      'AMP',
      'AJMP',
      'SAMPUS',
      'IAMPUS',
      'AMH',
      'atypical melanocytic hyperplasia',
      'atypical junctional melanocytic hyperplasia',
      'atypical junctional melanocytic proliferation',
      'atypical melanocytic lesion',
      'atypical melanocytic neoplasm',
      'atypical melanocytic tumor',
      'atypical intraepidermal melanocytic hyperplasia',
      'atypical lentiginous melanocytic proliferation',
      'atypical compound melanocytic proliferation',
      'melanocytoma',
      'atypical blue nevus',
      'atypical cellular blue nevus',
      'uncertain significance',
      'uncertain biologic potential',
      'uncertain biological potential',
      'indeterminate malignant potential',
      'atypical spitzoid',
      'atypical Spitz',
      'Spitz tumor',
      'high-grade dysplastic nevus',
      'atypical cellular neoplasm',
      'BAP1',
      'deep penetrating nevus atypical',
      'atypical intraepidermal melanocytic proliferation',
      'severely dysplastic nevus',
      'severely atypical nevus',
      'severe atypia',
      'severe dysplasia',
      'severely dysplastic',
      'severely atypical',
      'STUMP',
      'MELTUMP',
      'uncertain malignant potential',
      'atypical Spitz nevus',
      'atypical Spitz tumor',
    ],
    urgent: false,
  },
  {
    name: 'sample that could not be judged',
    synonyms: [
      'non-diagnostic',
      'nondiagnostic',
      'not diagnostic',
      'insufficient',
      'inadequate',
      'insufficient tissue',
      'inadequate sample',
      'inadequate specimen',
      'quantity not sufficient',
      'QNS',
      ...(
        'could not be done|could not be performed|cannot be performed|unsatisfactory|unsatisfactory for evaluation|not satisfactory|uninterpretable|not interpretable|cannot be interpreted|cannot be evaluated|' +
        'could not be evaluated|unable to evaluate|unable to render|no diagnostic tissue|no diagnostic material|no tissue seen|no tissue present|no tissue found|no tissue received|' +
        'no specimen|no specimen received|no specimen in container|specimen not received|not received|never received|not found in container|empty container|container empty|container was empty|' +
        'container is empty|container received empty|received empty|bottle empty|vial empty|jar empty|empty bottle|empty vial|empty jar|empty|specimen missing|missing|misplaced|' +
        'tissue lost|lost in processing|lost during processing|did not survive processing|not survive processing|destroyed|autolyzed|autolysis|degraded|dried out|' +
        'no epidermis|no skin|no lesional tissue|no lesion present|only keratin|keratin only|keratin debris only|only keratin debris|blood clot only|only blood|blood only|crust only|' +
        'only crust|debris only|only debris|fibrin only|scale crust only|too small|too superficial|too scant|scant tissue|insufficient for diagnosis|insufficient for evaluation|not sufficient|' +
        'insufficient sample|non diagnostic|not evaluable|no growth possible|specimen rejected|rejected|specimen leaked|leaked|compromised|unsuitable|not suitable|extensive crush artifact|crushed beyond|limited by crush'
      ).split('|'),
      'no tissue',
      'no tissue identified',
      'specimen lost',
      'lost',
    ],
    urgent: false,
  },
  {
    name: 'tumor at the margin',
    synonyms: [
      'positive margin',
      'margin positive',
      'margins positive',
      'positive margins',
      'margins involved',
      'margin involved',
      'involved margin',
      'incompletely excised',
      'incomplete excision',
    ],
    urgent: false,
  },
];

/** How the skin heals where scars are looked at again. */
export const scarRisks: readonly WordRow[] = [
  {
    name: 'keloids',
    synonyms: ['keloid', 'keloidal', 'keloid scars', 'keloid former', 'keloid-prone', 'prone to keloids'],
  },
  {
    name: 'hypertrophic scars',
    synonyms: ['hypertrophic scar', 'hypertrophic scarring', 'raised scars', 'thick scars'],
  },
];

/** A published or chosen time until something should have happened. */
export interface Term extends Sourced {
  readonly count: number;
  readonly unit: 'working days' | 'days';
}

const term = (count: number, unit: Term['unit'], source: string, mark: Sourced['mark']): Term => ({
  count,
  unit,
  source,
  mark,
});

/**
 * Times that hold where the practice's file says nothing. Those marked `format` are this tool's own choice of when an
 * open end is said aloud; they are no medical advice.
 */
export const terms = {
  /** From the visit until the specimen has left. */
  sending: term(1, 'working days', 'format', 'format'),
  /** From sending until a routine result can be there. */
  expected: term(3, 'working days', 'laboratory-turnaround', 'Q'),
  /** From the result until the patient knows: longer than the 24 hours of one practice, so that no weekend is scolded. */
  telling: term(3, 'working days', 'format', 'format'),
  tellingUrgent: term(1, 'working days', 'format', 'format'),
  /** From telling until a plan is in the note. */
  plan: term(3, 'working days', 'format', 'format'),
  planUrgent: term(1, 'working days', 'format', 'format'),
  /** From telling until a step without a date of its own was taken. */
  step: term(28, 'days', 'format', 'format'),
  stepUrgent: term(14, 'days', 'format', 'format'),
  /** From the day that a return visit was planned for until it is missed. */
  return: term(2, 'working days', 'format', 'format'),
} as const;

/** Events that want to be followed to their end, and how long the note may stay without it: Wheal's own choice. */
export const eventTerms: ReadonlyMap<string, Term> = new Map(
  Object.entries({
    bleeding: 1,
    hematoma: 3,
    dehiscence: 3,
    infection: 3,
    'allergic reaction': 1,
    'anesthetic toxicity': 1,
    faint: 1,
    numbness: 10,
    'contact rash': 5,
  }).map(([kind, days]) => [kind, term(days, 'working days', 'format', 'format')]),
);

/** Days after the visit between which a scar is looked at where keloids are feared. */
export const scarCheck = { from: 60, to: 120, source: 'scar-checks', mark: 'common' } as const;

/** Days after the visit until which a wound is washed and covered: one to two weeks in the leaflets. */
export const homeCare = { washedTo: 14, source: 'first-dressing-leaflets', mark: 'Q' } as const;

/** Tests whose result takes longer than others; their limits are in the practice's settings. */
export const slowTests: ReadonlyMap<string, 'fungalCulture' | 'mycobacterialCulture'> = new Map([
  ['fungal culture', 'fungalCulture'],
  ['mycobacterial culture', 'mycobacterialCulture'],
]);

/**
 * Visits at which somebody looks again, and nothing is done that a result asks for: no step that can be left undone.
 * Common practice.
 */
export const recalls: readonly WordRow[] = [
  {
    name: 'recall',
    synonyms: [
      ...[
        'recheck',
        're-check',
        'follow up',
        'follow-up',
        'followup',
        'f/u',
        'fu',
        'return',
        'RTC',
        'RTO',
        'come back',
      ],
      ...[
        'return visit',
        'return to clinic',
        'see back',
        'see again',
        'see',
        'visit',
        'check',
        'revisit',
        'review',
      ],
      ...[
        'skin check',
        'skin exam',
        'skin examination',
        'full skin check',
        'full skin exam',
        'full skin examination',
      ],
      ...[
        'full body skin exam',
        'full body skin check',
        'total body skin exam',
        'total body skin examination',
        'TBSE',
      ],
      ...[
        'FBSE',
        'TBE',
        'annual exam',
        'surveillance',
        'routine surveillance',
        'monitor',
        'observe',
        'observation',
      ],
      ...['clinical follow-up', 'routine follow-up', 'next visit', 'recall', 'mole check', 'yearly exam'],
    ],
  },
];
