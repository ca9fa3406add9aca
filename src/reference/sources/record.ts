/** Sources of record keeping, and the kinds of rule that have no published source. */
export const recordSources = {
  format: 'Wheal note format',
  common: 'common practice, no source',
  'trade-names-lists':
    'lists of generic and brand names on health and nursing pages (secondary; the labels themselves were not read)',
  'trade-names-memory': 'trade names from memory, not compared with labels',
  'universal-protocol':
    'Joint Commission, Universal Protocol, UP.01.01.01 to UP.01.03.01: verification, site marking, time-out (poster copy)',
  'time-out-elements':
    'open-access review of the time-out, eScholarship qt75z671jb, Table 8: patient, site and procedure, and with them consent, position, images and allergies',
  'operative-report':
    '42 CFR 482.51(b)(6), operative report: techniques, findings, tissue removed or altered (stored restatement; written for hospitals)',
  'hospital-documentation-guide':
    'hospital documentation guide to the operative report: who operated and assisted, dates and times, anesthesia, complications, tissue removed',
  'requisition-guides':
    'specimen guides of pathology laboratories: what a requisition must carry (identifiers, date of birth, requesting clinician, collection date, site, clinical question)',
  'closed-loop':
    'Joint Commission Quick Safety 52, closed-loop communication of test results, December 2019: sent, received, acknowledged, acted on',
  'aftercare-leaflets': 'published aftercare leaflets for skin biopsies of hospitals and practices',
};
