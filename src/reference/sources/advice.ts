/** Sources of what is only told beside a value: blood thinners, epinephrine in digits, ears and nose. */
export const adviceSources = {
  'accp-minor-skin':
    'American College of Chest Physicians, minor dermatologic procedures, as restated by a university anticoagulation page and in J Dtsch Dermatol Ges 2015;13:346-356',
  'anticoagulation-page': 'University anticoagulation page, minor dermatologic procedures',
  'skin-surgery-anticoagulants-2015':
    'J Dtsch Dermatol Ges 2015;13:346-356: anticoagulants during skin surgery, German S3 guideline',
  'anticoagulants-survey-2023':
    'Clin Exp Dermatol 2023: national survey on the guidance of the British Society for Dermatological Surgery',
  'digit-epinephrine-review': 'Best evidence topic report, PMC2658331: epinephrine in digital blocks',
  'digit-epinephrine-2004': 'J Am Acad Dermatol 2004;51:755-9: epinephrine and digital necrosis',
  'biopsy-myths': 'Family medicine journal, biopsies for skin cancer detection: dispelling the myths, myth 5',
  'digit-epinephrine-dissent':
    'Drug monograph of mepivacaine with epinephrine; Rev Bras Anestesiol, digital block with or without epinephrine',
  'digit-raynaud-2022': 'Case Rep Plast Surg Hand Surg 2022: digital ischemia in primary Raynaud',
};
