/** Sources of anesthetics, dose limits and epinephrine. */
export const doseSources = {
  'us-label-lidocaine':
    'US prescribing information, lidocaine hydrochloride injection, maximum recommended dosages (openFDA label record)',
};
