/** Sources of anesthetics, dose limits and epinephrine. */
export const doseSources = {
  'us-label-lidocaine':
    'US prescribing information, lidocaine hydrochloride injection, maximum recommended dosages (openFDA label record)',
  'us-label-lidocaine-topical':
    'US prescribing information, lidocaine topical solution 4%, maximum recommended dosages, children (the paragraph of the injection label)',
  'us-label-lidocaine-epinephrine':
    'US prescribing information, lidocaine hydrochloride and epinephrine injection, sections 2.1 and 2.2',
  'us-label-bupivacaine':
    'US prescribing information, bupivacaine hydrochloride injection, dosage and administration: single doses up to 225 mg with epinephrine 1:200,000 and 175 mg without',
  'us-label-bupivacaine-children':
    'US prescribing information, bupivacaine hydrochloride injection, pediatric use, as restated by a dental course',
  'us-label-bupivacaine-adults':
    'US prescribing information, bupivacaine hydrochloride injection (December 2024), highlights, indications and usage: in adults (DailyMed)',
  'us-label-bupivacaine-strengths':
    'US prescribing information, bupivacaine hydrochloride injection, kinds of block and concentrations',
  'us-label-mepivacaine':
    'US prescribing information, mepivacaine hydrochloride injection, dosage and administration; the same in a reference monograph',
  'us-label-mepivacaine-children':
    'US prescribing information, mepivacaine hydrochloride injection, pediatric dosage, as restated by two drug references',
  'us-label-mepivacaine-levonordefrin':
    'US prescribing information, mepivacaine 2% with levonordefrin 1:20,000, composition and dosage (DailyMed a3c2cddc)',
  'us-label-procaine':
    'US prescribing information, procaine hydrochloride injection 1% and 2%, composition: acetone sodium bisulfite in all, chlorobutanol in multiple-dose vials (DailyMed c80c810a)',
  'us-label-prilocaine-epinephrine':
    'US prescribing information, prilocaine 4% with epinephrine 1:200,000, table 1: sodium metabisulfite 0.5 mg/mL (DailyMed b374a5f1)',
  'us-label-lidocaine-ointment':
    'US prescribing information, lidocaine ointment 5%, dosage: 5 g at one time, 17 to 20 g a day; children 4.5 mg/kg',
  'uk-smpc-mepivacaine':
    'UK summary of product characteristics, mepivacaine 3% plain, dental, sections 4.1 and 4.2: 4.4 mg/kg, not above 300 mg; from 4 years',
  'uk-reference-levobupivacaine': 'UK medicines reference, levobupivacaine, dosage: 150 mg as a single dose',
  'uk-smpc-tetracaine-gel':
    'UK summary of product characteristics, tetracaine gel 40 mg/g, sections 2, 4.2 to 4.4 (MHRA 2018)',
  'uk-reference-lidocaine-cream': 'UK medicines reference, lidocaine 4% cream, dosage',
  'us-lidocaine-cream-area':
    'US label of lidocaine 4% cream as restated by a medical news page: no more than 100 cm² up to 20 kg',
  'us-label-articaine':
    'US prescribing information, articaine 4% with epinephrine, dosage and administration, maximum recommended dosages',
  'us-label-chloroprocaine': 'US prescribing information, chloroprocaine hydrochloride injection, dosage',
  'us-label-lidocaine-prilocaine':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, maximum dose, area and time by age and weight',
  'us-label-lidocaine-prilocaine-studies':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, overdosage: plasma levels after 60 g on 400 cm²',
  'us-label-multidose-lidocaine':
    'US prescribing information, lidocaine hydrochloride injection, multiple-dose vial, list of ingredients (openFDA)',
  'us-label-potassium-metabisulfite':
    'US prescribing information, local anesthetic with epinephrine, list of ingredients (openFDA)',
  'handbook-mepivacaine': 'Handbook on Injectable Drugs, mepivacaine hydrochloride',
  bnfc: 'BNF for Children 2018-2019, lidocaine hydrochloride, local anesthesia by infiltration',
  bnf: 'British National Formulary, lidocaine hydrochloride, from memory',
  'uk-smpc-lidocaine':
    'Summaries of product characteristics, lidocaine hydrochloride 2% w/v (HPRA) and 1% w/v (UK), section 4.2',
  'uk-smpc-lidocaine-5':
    'UK summary of product characteristics, lidocaine hydrochloride 10 mg/mL, section 4.2',
  'uk-reference-mepivacaine': 'UK medicines reference, mepivacaine 3%, chiropody',
  'export-label-lidocaine': 'Label of a lidocaine 2% injection for export',
  'sg-label-lidocaine': 'Label of a lidocaine injection, Singapore',
  'hk-label-bupivacaine': 'Label of a bupivacaine injection, Hong Kong',
  'australia-toxicology':
    'Therapeutic Guidelines (Australia): Toxicology, local anesthetics, table of toxic doses (for adults here, never a child)',
  'aad-2016':
    'Kouba et al., Guidelines for the use of local anesthesia in office-based dermatologic surgery, J Am Acad Dermatol 2016;74:1201-19',
  'aad-2016-summary':
    'Kouba et al., J Am Acad Dermatol 2016;74:1201-19, summary of the National Guideline Clearinghouse: topical lidocaine in pregnancy, not enough evidence for others',
  'us-label-reduced-doses':
    'US prescribing information, lidocaine hydrochloride injection, dosage and precautions: less for the elderly and debilitated and with cardiac or liver disease; severe liver disease raises plasma levels',
  'us-label-end-arteries':
    'US prescribing information, lidocaine hydrochloride and epinephrine injection, precautions: end arteries, peripheral vascular disease',
  'us-label-prilocaine-methemoglobin':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, warnings: methemoglobinemia, G6PD deficiency, infants under 12 months who take drugs that cause it',
  'prilocaine-benzocaine-course':
    'Dental continuing education course ce449: methemoglobinemia from prilocaine and benzocaine',
  'fda-benzocaine-2018':
    'FDA drug safety communication, 23 May 2018: benzocaine in the mouth not under 2 years, and methemoglobinemia in the labels of all local anesthetics',
  'us-label-methemoglobin':
    'US prescribing information, lidocaine hydrochloride injection 4%, warnings, methemoglobinemia: G6PD deficiency, congenital or idiopathic, heart or lung compromise, under 6 months, oxidizing agents; all local anesthetics since 2018',
  'us-label-methemoglobin-drugs':
    'US prescribing information, lidocaine ointment 5%, drug interactions, table of drugs associated with methemoglobinemia',
  'us-label-cream-methemoglobin-drugs':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, warnings: drugs associated with methemoglobinemia',
  'us-label-dapsone-gel':
    'US prescribing information, dapsone gel 5%, section 5.1: methemoglobinemia with hospitalization, more so with other medicines that cause it',
  'methemoglobin-drugs-restated':
    'Table of drugs associated with methemoglobinemia of the US labels of local anesthetics, as restated by a drug reference',
  'us-label-cream-antiarrhythmics':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, warnings and drug interactions: class I and class III antiarrhythmics',
  'us-label-cream-places':
    'US prescribing information, lidocaine 2.5% and prilocaine 2.5% cream, warnings and information for patients: not near the eyes, on open wounds, or where it can reach the middle ear',
  'us-label-epinephrine-interactions':
    'US prescribing information, lidocaine hydrochloride and epinephrine injection, sections 7.2 to 7.4: MAO inhibitors, tricyclics, ergot-type oxytocics, non-selective beta blockers',
  'uk-smpc-adrenaline-hypertension':
    'UK summary of product characteristics, lidocaine 2% with adrenaline 1:80,000, dental, section 4.3: uncontrolled or severe hypertension',
  'us-label-diphenhydramine':
    'US prescribing information, diphenhydramine hydrochloride injection, contraindications: use as a local anesthetic, because of local necrosis',
  'diphenhydramine-2009':
    'Pavlidakey PG et al., Diphenhydramine as an alternative local anesthetic agent, J Clin Aesthet Dermatol 2009;2(10):37-40',
  'methemoglobin-drugs-australia':
    'Therapeutic Guidelines (Australia): Toxicology, drugs and toxins that cause methemoglobinemia',
  'methemoglobin-drugs-ers':
    'European Respiratory Society, Breathe 9/3 p. 225, table 1: drugs and toxins that can cause methemoglobinemia',
  'epinephrine-conditions':
    'Questions and answers text on skin disease: epinephrine with pheochromocytoma, hyperthyroidism, heart disease and hypertension',
  'beta-blocker-interactions':
    'Two interaction monographs: epinephrine with non-selective beta blockers; with small local doses unlikely',
  'epinephrine-interactions':
    'PMC9275172, table 4, and a text on skin disease: epinephrine with tricyclics, MAO inhibitors, phenothiazines and cocaine, from caution to contraindicated',
  'vasoconstrictor-contraindications-1':
    'Pérusse R et al., Contraindications to vasoconstrictors in dentistry, part I, Oral Surg Oral Med Oral Pathol 1992;74:679-86: unstable angina, recent infarction or bypass, refractory arrhythmia, uncontrolled hypertension or heart failure',
  'vasoconstrictor-contraindications-2':
    'Pérusse R et al., Contraindications to vasoconstrictors in dentistry, part II, Oral Surg Oral Med Oral Pathol 1992;74:687-91: uncontrolled hyperthyroidism, pheochromocytoma, sulfite sensitivity',
  'swiss-label-articaine-epinephrine':
    'Swiss professional information, articaine with epinephrine, contraindications: refractory arrhythmia, unstable angina, infarction in the last 6 months, bypass in the last 3 months',
  'lidocaine-label-heart':
    'UK summary of product characteristics, lidocaine 1% with preservative, sections 4.3 and 4.4 (complete heart block ruled out, care with disturbed conduction and congestive heart failure), and US prescribing information, precautions: severe shock or heart block',
  'ccs-heart-failure-2017':
    'Canadian Cardiovascular Society, management of heart failure 2017, chapter 2: reduced ejection fraction is 40% or less',
  'blood-pressure-before-surgery':
    'AAGBI and British Hypertension Society, The measurement of adult blood pressure before elective surgery, 2016 (abstract): surgery goes ahead below 180 and 110 mmHg',
  'lidocaine-maximum-2021':
    'PMC8480448, the maximum dose of lidocaine in cutaneous surgery: severe liver dysfunction, and medicines that slow its clearance such as itraconazole, erythromycin, cimetidine',
  'pregnancy-procedures':
    'PMC9364454, dermatological procedures in pregnancy, and a review of 2019 (abstract): procedures that are not needed wait, lidocaine with epinephrine is held safe, suspected cancer is not delayed',
  'aap-2019':
    'AAP/AAPD, Guidelines for monitoring and management of pediatric patients before, during and after sedation, 2019, table of local anesthetics',
  'abc-procedures': 'ABC of Practical Procedures, chapter 4, Box 4.1',
  'em-pearls': 'Emergency Medicine Educational Pearls 2023, maximum doses in children',
  'wikem-local-anesthetics': 'WikEM, Local anesthetics',
  'poisoning-drug-overdose':
    'Poisoning & Drug Overdose, Table II-2, maximum single doses for subcutaneous infiltration',
  'medscape-local-anesthetics': 'Medscape, local anesthetics, Table 2 (January 2019)',
  'uk-revision-page': 'UK medical licensing revision page, local anesthetics',
  'canada-dental':
    'PMC9379193, Table 1: Canadian maximum recommended dosages (modified from Haas and Lennon)',
  'swedish-anesthesia': 'Swedish anesthesia guide, table of local anesthetics',
  'mcq-site-table': 'Table of local anesthetics on a page of examination questions',
  'dermatologic-surgery-text': 'Textbook of dermatologic surgery, chapter on local anesthesia',
  'aagbi-toxicity':
    'AAGBI safety guideline, Management of severe local anaesthetic toxicity: signs, which may come some time after; stop injecting, call for help, lipid emulsion',
  'additive-toxicity':
    'Spiegel et al., Central nervous system toxicity of local anesthetic mixtures in the rat, Anesth Analg, December 1992',
  'epinephrine-dental-course': 'Dental continuing education course ce646: epinephrine, 0.2 mg for a visit',
  'epinephrine-cardiac-dental':
    'Dental teaching cards: epinephrine, 0.04 mg with significant cardiac disease',
  'epinephrine-strengths':
    'US National Drug Code directory and labels: local anesthetics with epinephrine 1:200,000 to 1:50,000',
  'buffered-stability':
    'Stability of buffered lidocaine and epinephrine, J Dermatol Surg Oncol 1991;17:411-4',
  'digital-block-consult':
    '5-Minute Clinical Consult, procedures: digital nerve block anesthesia (E. J. Mayeaux): 1 to 3 mL, more for thumb and great toe',
  'digital-block-nsw': 'Emergency Care Institute, New South Wales: digital nerve block, 2 to 5 mL',
  'digital-block-family-notebook':
    'Family Practice Notebook: digital block, 4 mL for a finger and 6 mL for a toe',
  'ear-block-family-notebook':
    'Family Practice Notebook: ear nerve block, 12 mL for four injections of 2.5 to 3 mL around the ear',
  'ear-block-wikem': 'WikEM, Nerve block: Auricular: four injections of 2 to 3 mL around the ear',
  'penile-block-emergency-text':
    'emergency medicine procedures text, ch. 146: 6 to 10 mL around the penis of an adolescent or adult',
  'penile-block-circumcision':
    'text on adult circumcision: two injections of 5 mL at the base of the penis, and a ring of about 10 mL where it is needed',
  'lidocaine-cream-from-memory': 'Labels of non-prescription lidocaine 4% cream, from memory',
  'us-label-triamcinolone':
    'US prescribing information, triamcinolone acetonide injectable suspension 40 mg/mL (DailyMed setid 4015ad7d-46bf-454e-ac86-91fa5dd6a07b): 0.99% benzyl alcohol, 0.04% polysorbate 80; for muscle and joints, not for intradermal use; not for the newborn',
  'triamcinolone-session':
    'secondary pages on intralesional triamcinolone: 10 to 40 mg/mL, 40 mg a session; another page has 150 mg',
  'keloid-trials-2023':
    'Yin et al., Dermatology 2023;239:462-477 (PMC10906477, abstract): 38 trials in keloids; 1 to 20 mg/cm² in the ten that can be compared, at most 20 to 80 mg a session, every 4 weeks in half of them',
  'cdc-weight-for-age':
    'CDC growth charts: United States (2000), data table of weight for age, 2 to 20 years, read in a stored copy of the published file',
  'who-weight-for-age':
    'WHO child growth standards (2006), weight for age from birth to 2 years, worked out from the published L, M and S',
};
