/** What epinephrine in a local anesthetic does and does not: maxima of a visit in µg, strengths in µg/mL. */
export const epinephrine = {
  /** Dental teaching; no such limit stands in the medical labels. */
  healthy: {
    micrograms: 200,
    population: 'healthy adults',
    source: 'epinephrine-dental-course',
    mark: 'Q',
    asOf: '2026',
  },
  cardiac: {
    micrograms: 40,
    population: 'significant cardiac disease',
    source: 'epinephrine-cardiac-dental',
    mark: 'Q',
    asOf: '2026',
  },
  /** 1:200,000: the weakest with which the higher limits were published. */
  unlocksFrom: {
    microgramsPerMl: 5,
    ratio: 200_000,
    source: 'epinephrine-strengths',
    mark: 'Q',
    asOf: '2026',
  },
  /** 1:50,000: the strongest that is made with a local anesthetic. */
  strongest: { microgramsPerMl: 20, ratio: 50_000, source: 'epinephrine-strengths', mark: 'Q', asOf: '2026' },
  /** Over 90% of epinephrine was left after two weeks in the refrigerator, 82% after four. */
  bufferedDays: { days: 14, source: 'buffered-stability', mark: 'Q', asOf: '1991' },
} as const;

/** Conditions with which the lower maximum of epinephrine counts. */
export const cardiacConditions = [
  {
    name: 'cardiac disease',
    synonyms: [
      'heart disease',
      'heart failure',
      'cardiac failure',
      'cardiac',
      'heart condition',
      'ischemic heart disease',
      'ischaemic heart disease',
      'coronary disease',
      'coronary artery disease',
      'coronary heart disease',
      'CAD',
      'CHF',
      'angina',
      'myocardial infarction',
      'heart attack',
      'MI',
      'STEMI',
      'NSTEMI',
      'CABG',
      'coronary bypass',
      'coronary stent',
      'aortic stenosis',
      'ventricular tachycardia',
      'supraventricular tachycardia',
      'SVT',
      'arrhythmia',
      'atrial fibrillation',
      'AF',
      'afib',
      'cardiomyopathy',
      'heart block',
      'long QT',
    ],
  },
] as const;
