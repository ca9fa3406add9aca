/** Sources of how doses and dates are written so that they are not misread. */
export const notationSources = {
  'ismp-error-prone':
    'Institute for Safe Medication Practices, list of error-prone abbreviations, symbols and dose designations, 2021 (ismp.org and copies)',
  'ismp-drug-names':
    'Institute for Safe Medication Practices, abbreviated drug names that have been mistaken, from memory',
  'do-not-use-list':
    'Joint Commission, official do-not-use list: trailing zero, with the exception for measured results such as sizes of lesions (stored copy)',
};
