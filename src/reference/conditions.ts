import type { WordRow } from './types.ts';

/** Rows out of lines, each a name with its other words after bars. */
const rowsOf = (lines: string): readonly WordRow[] =>
  lines
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', ...synonyms] = line.trim().split('|');
      return { name, synonyms };
    });

/**
 * Conditions that no check judges by, and their abbreviations in charts, so that a word that is known and does not
 * matter here can be told from one that nobody knows. What matters is in the tables of cautions, of heart disease, of what makes
 * wounds hold late and of scars. Common practice, no source.
 */
export const otherConditions: readonly WordRow[] = rowsOf(`
  cerebral palsy|CP
  rheumatism|rheumatic disease
  rheumatic fever
  jaundice
  gonorrhea
  syphilis|lues
  atherosclerosis|arteriosclerosis|hardening of the arteries
  sexually transmitted infection|STI|STD
  hepatitis A
  bowel disease
  lung disease|pulmonary disease|breathing problems
  swollen joints
  anorexia|bulimia|eating disorder
  spina bifida
  head injury|TBI|traumatic brain injury|concussion
  insomnia
  vertigo
  tinnitus
  hernia
  hearing impairment
  vision impairment
  sinusitis|sinus problems
  environmental allergies|allergic rhinitis|hay fever|seasonal allergies
  pancreatitis
  Cushing syndrome|Cushing's
  hyperparathyroidism
  hyponatremia
  phlebitis|thrombophlebitis
  Marfan syndrome
  neurofibromatosis|NF1
  sunburns|blistering sunburns|tanning bed use
  claustrophobia
  orthostatic intolerance
  blood-borne infection|blood-borne infections|bloodborne infection
  bleeding tendencies|bleeding problems
  none|no medical problems|healthy|no significant past medical history|noncontributory|no PMH|unremarkable|otherwise healthy|no chronic conditions|no known medical problems
  hypertension|HTN|high blood pressure|essential hypertension|elevated blood pressure|HBP|uncontrolled hypertension|labile hypertension
  hypotension|low blood pressure|orthostatic hypotension|orthostasis
  pulmonary hypertension|PAH|pulmonary arterial hypertension
  hyperlipidemia|HLD|high cholesterol|dyslipidemia|hypercholesterolemia|elevated cholesterol|hypertriglyceridemia
  stroke|CVA|cerebrovascular accident|ischemic stroke|hemorrhagic stroke|old CVA
  transient ischemic attack|TIA|mini-stroke
  carotid stenosis|carotid artery disease|carotid artery stenosis|CAS|carotid disease
  aortic aneurysm|thoracic aortic aneurysm|TAA
  abdominal aortic aneurysm|AAA
  heart murmur|murmur
  mitral valve prolapse|MVP
  patent foramen ovale|PFO
  sinus bradycardia|bradycardia
  endocarditis|history of endocarditis|infective endocarditis|bacterial endocarditis
  deep vein thrombosis|DVT
  venous thromboembolism|VTE|venous thrombosis|blood clots|blood clot|clotting history
  pulmonary embolism|PE|pulmonary embolus
  varicose veins|varicosities
  COPD|chronic obstructive pulmonary disease
  emphysema
  chronic bronchitis
  home oxygen|oxygen dependent
  asthma|reactive airway disease|RAD|asthmatic
  sleep apnea|OSA|obstructive sleep apnea|sleep apnoea
  interstitial lung disease|ILD
  pulmonary fibrosis|IPF
  sarcoidosis|sarcoid
  chronic kidney disease|CKD|CRI|CKD3|CKD stage 3|CKD 3|CKD 4|CKD 2|chronic renal insufficiency
  kidney disease|renal disease|renal insufficiency|renal impairment
  kidney failure|renal failure
  acute kidney injury|AKI
  end-stage renal disease|ESRD|ESRD on HD
  dialysis|hemodialysis|HD
  peritoneal dialysis
  kidney transplant|renal transplant|kidney transplant recipient
  organ transplant|SOTR|solid organ transplant|transplant recipient|transplant
  liver transplant
  lung transplant
  bone marrow transplant|BMT
  stem cell transplant|HSCT|SCT
  immunosuppression|immunosuppressed|immunocompromised|immunosuppressive therapy
  immunodeficiency
  CVID
  HIV|HIV infection|HIV positive|HIV/AIDS|PLWH
  AIDS
  prediabetes|borderline diabetes|insulin resistance|impaired glucose tolerance
  metabolic syndrome
  gestational diabetes|GDM
  hypothyroidism|hypothyroid|underactive thyroid
  Hashimoto thyroiditis|Hashimoto|Hashimoto's
  thyroid disease|thyroid disorder
  obesity|obese|morbid obesity|class III obesity
  overweight
  adrenal insufficiency|Addison disease|Addison's disease
  osteoporosis
  osteopenia
  osteoarthritis|OA|DJD|degenerative joint disease|degenerative arthritis
  arthritis
  rheumatoid arthritis|RA
  psoriatic arthritis|PsA
  gout|gouty arthritis
  lupus|SLE|systemic lupus erythematosus|cutaneous lupus
  Sjogren syndrome|Sjogren's|Sjogren|Sjögren syndrome
  dermatomyositis
  fibromyalgia|FM
  ankylosing spondylitis
  mixed connective tissue disease
  MCTD
  UCTD
  connective tissue disease
  Ehlers-Danlos syndrome|EDS|Ehlers-Danlos
  polymyalgia rheumatica|PMR
  giant cell arteritis|GCA|temporal arteritis
  GERD|reflux|acid reflux|gastroesophageal reflux
  heartburn
  peptic ulcer disease|PUD
  gastric ulcer
  stomach ulcer|stomach ulcers
  gastrointestinal bleeding|GI bleed
  inflammatory bowel disease|IBD
  Crohn disease|Crohn's disease|Crohn's
  ulcerative colitis|UC
  irritable bowel syndrome|IBS
  celiac disease|coeliac disease|celiac
  fatty liver|NAFLD|MASLD|hepatic steatosis
  gallstones|cholelithiasis
  diverticulosis
  diverticulitis
  hemophilia|haemophilia
  hemophilia A
  hemophilia B
  factor VIII deficiency
  von Willebrand disease|vWD|von Willebrand's disease|von Willebrand
  bleeding disorder|bleeding diathesis|easy bleeding|bleeding tendency
  coagulopathy
  easy bruising
  clotting disorder
  thrombocytopenia|low platelets
  immune thrombocytopenia|ITP
  TTP
  platelet disorder
  hypercoagulable state|thrombophilia
  factor V Leiden|FVL
  antiphospholipid syndrome|APS
  protein C deficiency
  protein S deficiency
  anemia|low hemoglobin
  iron deficiency anemia|IDA
  sickle cell disease|sickle cell|sickle cell anemia|SCD
  sickle cell trait
  polycythemia vera|PV
  essential thrombocythemia|ET
  myelodysplastic syndrome|MDS
  leukemia
  chronic lymphocytic leukemia|CLL
  AML
  CML
  lymphoma
  non-Hodgkin lymphoma|NHL
  Hodgkin lymphoma
  CTCL
  mycosis fungoides
  multiple myeloma|myeloma
  MGUS
  cancer|CA|malignancy
  breast cancer|breast CA
  prostate cancer|prostate CA
  colon cancer
  lung cancer
  bladder cancer
  thyroid cancer
  renal cell carcinoma|RCC
  ovarian cancer
  skin cancer|history of skin cancer
  nonmelanoma skin cancer|NMSC|non-melanoma skin cancer|hx of NMSC
  basal cell carcinoma|BCC
  squamous cell carcinoma|SCC
  melanoma|history of melanoma|prior melanoma
  dysplastic nevi|atypical nevi|dysplastic nevus syndrome
  actinic keratosis|AK|AKs|actinic keratoses
  eczema
  atopic dermatitis
  dermatitis
  psoriasis|plaque psoriasis
  rosacea
  acne
  vitiligo
  urticaria|chronic urticaria|hives
  dermatographism|dermographism
  hidradenitis suppurativa|HS
  lichen planus
  lichen sclerosus
  radiation|radiation therapy|XRT|prior radiation|radiation to site|RT
  chemotherapy|chemo|on chemotherapy
  seizures|seizure disorder|epilepsy|seizure
  migraine|migraines|headaches
  dementia
  Alzheimer disease|Alzheimer's|Alzheimer's disease
  cognitive impairment|memory loss
  Parkinson disease|Parkinson's|Parkinson's disease
  essential tremor
  tremor
  multiple sclerosis|MS
  neuropathy|peripheral neuropathy
  diabetic neuropathy
  myasthenia gravis|MG
  ALS
  muscular dystrophy
  spinal stenosis
  back pain|low back pain|LBP
  chronic pain|chronic back pain
  DDD
  sciatica
  spinal cord injury
  paraplegia
  quadriplegia
  hemiplegia
  wheelchair bound
  depression|MDD|major depressive disorder|depressed
  anxiety|anxiety disorder
  generalized anxiety disorder|GAD
  panic disorder
  bipolar disorder|bipolar
  schizophrenia
  psychosis
  PTSD|posttraumatic stress disorder
  OCD
  ADHD|ADD|attention deficit disorder
  autism|ASD|autism spectrum disorder
  developmental delay
  Down syndrome
  intellectual disability
  substance use|substance use disorder|drug use
  IVDU
  opioid use disorder|OUD
  alcohol use|EtOH
  alcohol use disorder|AUD|alcohol abuse|alcoholism|alcohol dependence|ETOH abuse
  smoking|smoker|tobacco use|current smoker|tobacco|1 ppd|nicotine dependence
  vaping
  former smoker|ex-smoker
  glaucoma
  cataract|cataracts
  macular degeneration|AMD
  dry eye
  hearing loss|HOH|hard of hearing
  deaf
  blind
  BPH|benign prostatic hyperplasia|enlarged prostate|prostatism
  urinary tract infection|UTI
  kidney stones|nephrolithiasis
  incontinence
  PCOS|polycystic ovary syndrome
  endometriosis
  postmenopausal|menopause
  breastfeeding|lactating|nursing|breast-feeding
  postpartum
  MRSA|MRSA colonization|history of MRSA|MRSA carrier
  tuberculosis|TB
  latent tuberculosis|latent TB|LTBI|positive PPD
  herpes simplex|HSV
  cold sores|herpes labialis
  shingles|herpes zoster|zoster
  COVID-19|COVID
  long COVID
  fainting|fainting spells|vasovagal tendency|fainter|faints with needles|prone to fainting|history of fainting|syncope
  needle phobia
  porphyria
  porphyria cutanea tarda|PCT
  hereditary angioedema|HAE
  mastocytosis
  malignant hyperthermia|MH
  pseudocholinesterase deficiency
  lymphedema|lymphoedema
  poor wound healing|poor healing|wound healing problems|slow healer|slow healing|delayed healing
  POTS|postural orthostatic tachycardia syndrome|dysautonomia
`);
