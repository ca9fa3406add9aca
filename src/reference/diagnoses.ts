import type { WordRow } from './types.ts';

/** What a suspected disease asks of the sample. */
export type SampleNeed = 'whole lesion' | 'hair' | 'fat' | 'beside the blister' | 'a fresh lesion';

export interface DiagnosisRow extends WordRow {
  readonly needs: SampleNeed;
}

/** Diseases that a pathologist is asked about and that need a sample of a certain kind. */
export const diagnoses: readonly DiagnosisRow[] = [
  {
    name: 'melanoma',
    synonyms: [
      'MM',
      'malignant melanoma',
      'melanoma in situ',
      'MMIS',
      'MIS',
      'superficial spreading melanoma',
      'nodular melanoma',
      'invasive melanoma',
      'lentigo maligna',
      'lentigo maligna melanoma',
      'LMM',
      'Hutchinson melanotic freckle',
    ],
    needs: 'whole lesion',
  },
  {
    name: 'alopecia',
    synonyms: [
      'hair loss',
      'scarring alopecia',
      'cicatricial alopecia',
      'non-scarring alopecia',
      'alopecia areata',
      'lichen planopilaris',
      'LPP',
      'frontal fibrosing alopecia',
      'FFA',
      'androgenetic alopecia',
      'telogen effluvium',
      'central centrifugal cicatricial alopecia',
      'CCCA',
    ],
    needs: 'hair',
  },
  {
    name: 'panniculitis',
    synonyms: [
      'erythema nodosum',
      'lupus profundus',
      'lupus panniculitis',
      'erythema induratum',
      'lipodermatosclerosis',
      'morphea profunda',
      'subcutaneous fat necrosis',
      'subcutaneous nodule',
      'fasciitis',
      'eosinophilic fasciitis',
    ],
    needs: 'fat',
  },
  {
    name: 'blistering disease',
    synonyms: [
      'bullous disease',
      'autoimmune blistering disease',
      'immunobullous disease',
      'pemphigoid',
      'bullous pemphigoid',
      'BP',
      'pemphigus',
      'pemphigus vulgaris',
      'pemphigus foliaceus',
      'linear IgA disease',
      'linear IgA bullous dermatosis',
      'mucous membrane pemphigoid',
      'epidermolysis bullosa acquisita',
    ],
    needs: 'beside the blister',
  },
  {
    name: 'vasculitis',
    synonyms: ['leukocytoclastic vasculitis', 'LCV', 'urticarial vasculitis', 'small vessel vasculitis'],
    needs: 'a fresh lesion',
  },
  {
    name: 'inflammatory dermatosis',
    synonyms: [
      'dermatitis',
      'eczema',
      'atopic dermatitis',
      'contact dermatitis',
      'spongiotic dermatitis',
      'psoriasis',
      'lichen planus',
      'lichenoid drug eruption',
      'drug eruption',
      'urticaria',
      'pityriasis',
      'pityriasis rosea',
      'prurigo',
      'lupus',
      'lupus erythematosus',
      'cutaneous lupus',
      'dermatitis herpetiformis',
    ],
    needs: 'a fresh lesion',
  },
];
