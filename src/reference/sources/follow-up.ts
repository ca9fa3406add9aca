/** Sources of what falls due after a visit. */
export const followUpSources = {
  'laboratory-turnaround':
    'catalogues of two pathology laboratories: routine histology in 1 to 3 working days',
  'result-follow-up':
    'questions and answers of a trade page on tracking biopsies: call the laboratory where nothing came in 14 days; benign results told within 24 hours, cancers the same day',
  'result-leaflets':
    'practice leaflets on skin biopsies: the patient calls where no result came in 10 business days or 2 weeks',
  'first-dressing-leaflets':
    'practice leaflets on skin biopsies: the first dressing stays to the next morning or 24 hours, one says 48; then washed daily and covered for one to two weeks',
  'lost-to-follow-up':
    'Korean dermatology journal: 3 of 2452 biopsied outpatients had a suspected malignancy that needed excision, and did not come back',
  'scar-checks':
    'common practice, no source: scars of people prone to keloids are looked at after two to four months',
};
