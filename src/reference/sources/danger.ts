/** Sources of allergy, devices, hemostasis and specimens. */
export const dangerSources = {
  'us-label-amide-contraindication':
    'US prescribing information, bupivacaine hydrochloride injection, contraindications: any local anesthetic of the amide type (openFDA label record)',
  'us-label-articaine-sulfite':
    'US prescribing information, articaine 4% with epinephrine, contraindications: sulfite hypersensitivity',
  'medscape-anesthetic-allergy':
    'Medscape, Allergic manifestations of local anesthetics (R. Kapitanyan, 2019): esters derive from PABA, methylparaben resembles it',
  'nus-parabens':
    'National University of Singapore, Parabens, PABA and cross-reactivity (2025): no cross-reaction that matters clinically',
  'permanente-2002':
    'Macy E et al., Immediate hypersensitivity to methylparaben, Permanente Journal 2002;6(4):17-21',
  'jama-1996-ointment': 'Smack DP et al., JAMA 1996;276:972-977: petrolatum against bacitracin ointment',
  'nacdg-2005':
    'North American Contact Dermatitis Group 2005-2006 (PubMed 19470301): neomycin 10.0%, bacitracin 9.2%',
  'dermatology-nursing-antibiotics':
    'Douglas JD, Allergic contact dermatitis and topical antibiotics, Dermatology Nursing (Medscape 735534): neomycin, bacitracin and polymyxin react together',
  'hydrocolloid-1997':
    'Sasseville D et al., Allergic contact dermatitis from hydrocolloid dressings, Am J Contact Dermat 1997: an ester of rosin in some of them',
  'benzoin-1983':
    'Nineteen cases of contact dermatitis to compound tincture of benzoin (PubMed 6239881): later reactions to gum mastic adhesive through styrax',
  'cyanoacrylate-patch-tests':
    'Patch testing with cyanoacrylates, Dermatitis, doi 10.1097/DER.0000000000000514: 13 of 35 patients allergic to a cyanoacrylate reacted to acrylates or methacrylates too',
  'metal-skin-clips':
    'Metal skin clips, composition of 18 and patch tests of 184 patients, PubMed 9817247 (abstract): nickel, chromium and cobalt enough for reactions',
  'glycolide-sutures':
    'polymers of glycolic acid in polyglactin and polyglycolic acid, and what follows for an allergy, from memory',
  'benzoin-2003':
    'Compound tincture of benzoin: a common contact allergen?, Australas J Dermatol 2003;44:180-184: cross-reactions with colophony, balsam of Peru and fragrance',
  'chlorhexidine-alcohol-label':
    'US drug facts label, chlorhexidine gluconate 2% in isopropyl alcohol 70%: flammable, not with electrocautery; severe allergic reactions; not on open wounds; out of eyes, ears and mouth; care under 2 months (DailyMed 0587e96b)',
  'chlorhexidine-label':
    'US drug facts label, chlorhexidine gluconate 4%: out of eyes, ears and mouth, not in the genital area or against the meninges, no wounds but superficial ones, care under 2 months (DailyMed a0b7180a)',
  'us-label-triple-antibiotic':
    'US drug facts labels, triple antibiotic ointment, active ingredients: bacitracin zinc, neomycin, polymyxin B (DailyMed edff4443)',
  'chitosan-shellfish-2011':
    'Waibel KH et al., Mil Med 2011;176:1153-1156 (abstract): chitosan is made of shrimp shells; ten patients allergic to shellfish tolerated one dressing of it',
  'us-label-silver-sulfadiazine':
    'US prescribing information, silver sulfadiazine cream 1%, contraindications and precautions: not near term, in premature infants or under 2 months; away from the eye (DailyMed 828d5862 and another copy)',
  'latex-products':
    'Premier Safety Institute, Products containing latex: elastic bandages, tourniquets, adhesive tape',
  'steel-sutures':
    'Medscape, Materials for wound closure (D. Ratner, 2020): surgical steel is an alloy of iron, chromium, nickel and molybdenum',
  'acetone-data-sheet': 'Safety data sheet of acetone: highly flammable liquid and vapor, category 2',
  'alcohol-label':
    'US drug facts label, isopropyl alcohol 70% preparation pads: flammable, not with electrocautery',
  'prep-fire-study':
    'Intraoperative fire risk: evaluating the 3-minute wait after chlorhexidine-alcohol antiseptic scrub (abstract): ignition with pooling at once, none dry from 60 s',
  'prep-drying-instructions':
    'Patient instructions for a chlorhexidine-alcohol preparation: 3 minutes on hairless skin, up to 1 hour in hair',
  'procedure-text-hemostasis':
    'Procedure text for dermatology, chapter on hemostasis: alcohol-based aluminum chloride burns until dry; every chemical agent out of the eye',
  'procedure-text-agents':
    'Procedure text for primary care, chapter on hemostatic agents: hot-wire cautery passes no current through the patient',
  'tattoo-2013':
    'Dermatologic Research and Practice 2013:279289, table 5: ferric subsulfate may stain for months, iron tattoos are reported',
  'hemostatics-trial-2020':
    'J Clin Aesthet Dermatol 2020;13(12):32-37: three topical hemostatic agents compared',
  'device-survey-2001':
    'Dermatol Surg 2001;27:385-390: electrosurgery in patients with pacemakers and defibrillators, survey of Mohs surgeons',
  'device-survey-2019':
    'Electrosurgery and implantable electronic devices: a survey of current practices among cutaneous surgeons (2019): defibrillator RR 4.74, monopolar RR 3.62, heat and bipolar least',
  'device-advice-2013':
    'Actas Dermosifiliogr 2013;104:128-132: electrosurgery in patients with implanted devices',
  'device-plan-1998': 'Dermatol Surg 1998;24:233-240: perioperative plan for implanted cardiac devices',
  'device-management-2013':
    'Circulation 2013;128:2799-2809 (PMC3908865), table 4: devices checked within 12 months (pacemaker) or 6 (defibrillator) before electrosurgery, current kept far from the device, short bursts',
  'device-cautery-series':
    'Cheng A et al., Effects of surgical and endoscopic electrocautery on modern-day permanent pacemaker and implantable cardioverter-defibrillator systems (abstract): 92 patients, no malfunction, wrong sensing of the ventricle only within 8 cm',
  'dbs-1999': 'Dermatol Surg 1999;25:415-417: electrosurgery and deep brain stimulators',
  'dbs-2019': 'PubMed 30852074 (2019): deep brain stimulators, bipolar only',
  'nerve-stimulators-2019':
    'Dermatol Surg 2019;45:1228-1236 (abstract): electrosurgery with nerve stimulators',
  'cochlear-2023':
    'Laryngoscope 2023;133:933-937: monopolar electrosurgery with cochlear implants, 63 exposures',
  'cochlear-2017':
    'Dermatol Surg 2017;43:775-783: electrosurgery and cochlear implants, systematic review, weak evidence',
  'device-memory': 'Advice on devices that no source read here covers',
  'ethyl-chloride-monograph':
    'Drug monograph, ethyl chloride spray: flammable, not near a flame or electrical equipment that can spark',
  'histology-manuals':
    'Specimen manuals of several dermatopathology laboratories: 10% neutral buffered formalin for routine histology',
  'immunofluorescence-manuals':
    'Collection pages of several immunodermatology laboratories: Michel or another transport medium, never formalin or another fixative',
  'jaad-2010-formalin':
    'J Am Acad Dermatol 2010, direct immunofluorescence after brief immersion in formalin: pemphigus markers lost after 2 minutes',
  'michel-medium-sheet':
    'Product sheet of a Michel transport medium: a salt solution and no fixative, for immunofluorescence only, 5 days at room temperature',
  'michel-pcr-2014':
    'Boraiy L et al., Michel’s transport medium for PCR of skin biopsies, Dermatopathology 2014;1:70-74 (abstract): DNA keeps for a short time; formalin breaks nucleic acids and makes PCR less sensitive',
  'michel-cold-storage':
    'Laboratory entry for direct immunofluorescence: Michel medium refrigerated for 7 days, room temperature not accepted',
  'saline-immunofluorescence':
    'Secondary page on transport for direct immunofluorescence: saline for 24 hours, fewer diagnoses at 48',
  'culture-manuals':
    'Specimen manuals of two hospital laboratories: culture in a sterile container without preservative, kept moist; formalin refused',
  'electron-microscopy-manuals':
    'Specimen manuals of three laboratories: glutaraldehyde for electron microscopy',
  'frozen-section-manual':
    'Submission guide of a dermatopathology group: tissue for frozen section never in formalin or another fixative',
  'fresh-tissue-manual':
    "Specimen manual of a children's laboratory: unfixed tissue on moist gauze; cell culture medium for immunofluorescence",
  'alcohol-fixation-manual': 'Specimen manual of an academic laboratory: absolute alcohol for mucinoses',
  'media-memory': 'Media for tests that no manual read here names',
  'label-manuals':
    'Specimen manuals of two laboratories: two identifiers, label on the container and not on the lid, one container for each site',
  'orientation-note':
    'Bedford and Shah, Surgical Techniques Development 2012;2:e8 (abstract): the surgeon helps the pathologist to orient what may be malignant, usually by marker sutures',
  'orientation-guide':
    'open guide to pathology for clinicians, orientation of skin excisions: marked where another excision is likely, none needed where little is suspected; the direction of a mark has to be unambiguous',
  'orientation-custom':
    'page of a skin cancer education site: a single suture is at the superior margin, 12 o’clock, by custom',
  'insurer-tips':
    'Biopsy tips of a medical liability insurer: label in front of the patient, track every specimen',
  'laboratory-rejection': 'Laboratory reference manual: unlabeled or mismatched specimens are refused',
  'biopsy-guide-afp': 'Am Fam Physician 2011;84:995-1002: skin biopsy techniques',
  'biopsy-msd': 'MSD Manual Professional, diagnostic tests for skin disorders: biopsy',
  'melanoma-aad': 'American Academy of Dermatology, Melanoma: biopsy recommendations',
  'alpha-gal-surgery':
    'PMC11216800, alpha-gal syndrome in surgery: gelatin and other products of cattle and pigs; a page on gut sutures: made of the intestines of sheep or goats',
  'polysorbate-memory': 'that polysorbates and polyethylene glycol are akin, from memory',
  'para-group':
    'Arch Med Sci 2021;17:714-723 (abstract): paraphenylenediamine and other allergens with an amino group in the para position can react across',
  'warfarin-skin-surgery-2007':
    'Dixon AJ et al., Br J Surg 2007;94:1356-1360 (abstract): 5950 skin lesions, bleeding 0.7% overall and 2.5% with warfarin, aspirin no risk of its own; INR above 3.0 lowered first',
  'pressure-dressing-page':
    'Secondary page on dressings after skin surgery: a pressure dressing for 12 to 24 hours with anticoagulants',
  'empty-containers':
    'Study of 270,754 skin specimens in ten years (abstract): 83 containers came empty, and 28% of those biopsies were repeated',
  'histology-rejection':
    'Rejection criteria of a hospital histopathology laboratory: unlabeled, mislabeled or mismatched specimens, a form without a specimen, special handling not met',
  'fire-poster':
    'ECRI, Only you can prevent surgical fires (poster): oxygen off for a minute before electrosurgery, preparations dry before the drape',
  'return-electrode-burns':
    'NICE MTG11, the technology: burns under the return electrode and at other places are the commonest harm of electrosurgery',
  'wrong-site-review':
    'Avoiding medical errors in cutaneous site identification, Dermatol Surg 2016;42:477-484 (abstract): wrong site leads among errors of skin surgery',
  'sharps-dermatology-2016':
    'Rizk C et al., Needlestick and sharps injuries in dermatologic surgery, J Clin Aesthet Dermatol 2016;9(10):41-49: protocols after exposure',
  'toxicity-signs':
    'Secondary pages on lidocaine: numbness about the mouth, dizziness, confusion and slurred speech come before the heart is affected',
  'lesion-choice':
    'PathologyOutlines, biopsies of inflammatory skin disease: typical lesions, not ruptured, scratched, infected or involuting ones',
  'immunofluorescence-sizes':
    'Collection pages of an academic immunodermatology laboratory: a punch of 4 to 5 mm, 5 mm or more where it is divided; an older laboratory entry has 3 mm',
  'partial-biopsy-aimp':
    'PMC6857840 (abstract): of 1127 excised atypical intraepidermal melanocytic proliferations 8.2% were melanoma; odds ratio 11.0 where the lesion was biopsied in part',
  'cap-retention':
    'College of American Pathologists, minimum period of retention: wet tissue 2 weeks after the final report, blocks 10 years',
  'melanoma-nccn-2018':
    'NCCN Guidelines for Patients: Melanoma 2018, p. 52: excision, deep shave or punch of the whole lesion with 1 to 3 mm, in part if it is very large or awkward',
  'melanoma-afp-2005': 'Am Fam Physician, 15 July 2005, p. 269: never shave a suspected melanoma',
  'hair-ijwd-2022': 'Int J Womens Dermatol 2022;8:e054: biopsy of hair loss',
  'hair-handbook':
    'Regional pathology handbook, scalp: two 4 mm punches along the hair, into fat, one for horizontal and one for vertical sections',
  'hair-academic-page': 'Academic dermatopathology page on hair: at least 4 mm, better 6 mm',
  'dermatology-chapter-146':
    'Study notes on a dermatology text, chapter 146: panniculitis and deep nodules need fat in the sample',
};
