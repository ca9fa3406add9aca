/** Sources of body sites. */
export const siteSources = {
  'danger-zones':
    "Fitzpatrick's Dermatology, 9th edition 2019, chapter Cutaneous Surgical Anatomy (summary), and Brown et al., Clin Exp Dermatol 2014, motor nerves of the head and neck",
  'site-anatomy': 'surface anatomy as generally taught, from memory',
  'site-identification':
    'Zhang et al., J Am Acad Dermatol 2016;74:1185-93, biopsy site identification (abstract)',
  'site-best-practices':
    'Avoiding medical errors in cutaneous site identification, Dermatol Surg 2016;42:477-84 (abstract)',
  'keloid-sites':
    'Berman, clinical answer of May 2020 on the sites of keloids by ancestry, and a patient guide to pathology reports, keloid scar',
  'laterality-letters':
    'California Hospital Patient Safety Organization, lessons learned, August 2013, laterality errors',
  'laterality-records':
    'Elghrably and Fraser, Eye 2008;22:340-3, laterality errors in clinical records (abstract)',
};
