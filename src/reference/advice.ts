import type { Sourced } from './types.ts';

/** Something that is worth knowing beside a value; no check judges by it. */
export interface Advice extends Sourced {
  readonly text: string;
}

export interface ThinnerAdvice extends Advice {
  /** Names of medicines in the table of blood thinners; absent where it holds for all of them. */
  readonly of?: readonly string[];
}

const vitaminK = ['warfarin', 'acenocoumarol', 'phenprocoumon'];
const direct = ['apixaban', 'rivaroxaban', 'edoxaban', 'dabigatran'];

/** What is published on blood thinners and small procedures of the skin. Wheal never says to stop one. */
export const thinnerAdvice: readonly ThinnerAdvice[] = [
  {
    of: [...vitaminK, 'aspirin'],
    text: 'Goes on for minor skin procedures (grade 1C).',
    source: 'accp-minor-skin',
    mark: 'Q2',
  },
  {
    of: vitaminK,
    text: 'INR: near 2.0 in one guide, which allows up to 3.0 for staged excision within 10 days of the measurement.',
    source: 'anticoagulation-page',
    mark: 'Q',
  },
  {
    of: ['aspirin'],
    text: 'Where it is taken only to prevent coronary disease, one guide lets it stop 7 days before.',
    source: 'anticoagulation-page',
    mark: 'Q',
  },
  {
    of: ['clopidogrel'],
    text: 'Goes on; where it has been taken for more than a year and bleeding worries, the cardiologist is asked.',
    source: 'anticoagulation-page',
    mark: 'Q',
  },
  {
    of: direct,
    text: 'For skin surgery a German guideline of 2015 has the last dose 24 hours before.',
    source: 'skin-surgery-anticoagulants-2015',
    mark: 'Q',
  },
  {
    of: direct,
    text: 'British guidance of 2016 considers a pause of 24 to 48 hours for procedures with a higher risk of bleeding; a simple biopsy is not meant, and many go on.',
    source: 'anticoagulants-survey-2023',
    mark: 'Q',
  },
  {
    text: 'No bridging with heparin for skin surgery alone.',
    source: 'skin-surgery-anticoagulants-2015',
    mark: 'Q',
  },
  {
    text: 'Stopping such a medicine raises the risk of a clot and does not clearly lessen bleeding.',
    source: 'anticoagulation-page',
    mark: 'Q',
  },
];

/** What is published on epinephrine where end arteries supply the skin. */
export const endArteryAdvice: readonly Advice[] = [
  {
    text: 'Digits: 1:200,000 to 1:100,000 is judged safe in a digital block.',
    source: 'digit-epinephrine-review',
    mark: 'Q',
  },
  {
    text: 'Of about 50 reports of gangrene, most are from before 1950, 21 had epinephrine, and none a commercial mixture of lidocaine with epinephrine.',
    source: 'digit-epinephrine-2004',
    mark: 'Q',
  },
  {
    text: 'Ear and nose: more than 10,000 operations with epinephrine are cited in its support, with a drier field and a longer effect.',
    source: 'biopsy-myths',
    mark: 'Q',
  },
  {
    text: 'Some labels still say not to use it in distal areas such as digit, nose and ear, and one review calls it dangerous until proven otherwise.',
    source: 'digit-epinephrine-dissent',
    mark: 'Q',
  },
  {
    text: 'Care with Raynaud or vascular disease: one report of an ischemic digit.',
    source: 'digit-raynaud-2022',
    mark: 'Q',
  },
];
