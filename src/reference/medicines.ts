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
 * Medicines that no check judges by, and their abbreviations in charts, so that a word that is known and does not matter
 * here can be told from one that nobody knows. Generic names, from memory. What matters is in the tables of blood thinners, of
 * cautions and of what makes wounds hold late.
 */
export const otherMedicines: readonly WordRow[] = rowsOf(`
  allergy shots|allergy immunotherapy
  cough medicine|cold medicine|decongestant|pseudoephedrine
  nasal spray|nasal steroid
  sleeping pills|sleep medicine
  thyroid medicine|thyroid medication
  blood pressure medicine|blood pressure medication|antihypertensive|BP meds
  cholesterol medicine|cholesterol medication
  diabetes medicine|diabetes medication
  heart medicine|cardiac meds|heart medication
  prophylactic antibiotics|antibiotic prophylaxis
  pain medicine|over-the-counter pain medicine|OTC pain medicine|analgesic|analgesics|painkiller
  none|no medications|no meds|no current medications|no regular medications|takes no medications|not on any medications
  multivitamin|MVI|multivitamins
  vitamins|vitamin
  prenatal vitamin|PNV
  vitamin D|vitamin D3|cholecalciferol
  ergocalciferol
  vitamin E|tocopherol
  vitamin C|ascorbic acid
  zinc
  magnesium
  potassium|KCl|potassium chloride
  calcium|calcium carbonate
  iron supplement|ferrous sulfate
  folic acid|folate
  vitamin B12|cyanocobalamin|B12
  B-complex
  biotin
  niacin
  niacinamide|nicotinamide
  fish oil|omega-3|omega-3 fatty acids
  krill oil
  ginkgo|ginkgo biloba|gingko
  garlic|garlic tablets|garlic supplement
  ginseng
  ginger
  turmeric|curcumin
  feverfew
  dong quai
  saw palmetto
  St. John's wort|St John's wort
  herbal supplements
  supplements
  glucosamine
  CoQ10
  echinacea
  resveratrol
  bromelain
  cayenne
  NSAID|NSAIDs|nonsteroidal|nonsteroidal anti-inflammatory
  ibuprofen|IBU
  naproxen|naproxen sodium
  diclofenac
  meloxicam
  indomethacin
  ketorolac
  etodolac
  nabumetone
  piroxicam
  celecoxib
  COX-2 inhibitor
  acetaminophen|APAP|paracetamol
  opioid|opioids
  oxycodone
  hydrocodone
  hydrocodone-acetaminophen|hydrocodone/APAP
  morphine
  tramadol
  fentanyl patch
  methadone
  buprenorphine
  codeine
  metoprolol|metoprolol succinate|metoprolol tartrate|metop
  atenolol
  bisoprolol
  nebivolol
  esmolol
  acebutolol
  betaxolol
  cardioselective beta blocker|BB|selective beta blocker|beta-1 selective blocker
  lisinopril
  enalapril
  ramipril
  benazepril
  quinapril
  captopril
  ACE inhibitor|ACEI
  losartan
  valsartan
  olmesartan
  irbesartan
  candesartan
  telmisartan
  ARB
  sacubitril-valsartan|sacubitril/valsartan|ARNI
  amlodipine
  nifedipine
  felodipine
  calcium channel blocker|CCB
  diltiazem|dilt
  verapamil
  hydrochlorothiazide|HCTZ
  chlorthalidone
  thiazide
  indapamide
  furosemide
  bumetanide
  torsemide
  loop diuretic
  diuretic|water pill
  spironolactone
  eplerenone
  triamterene
  clonidine
  hydralazine
  doxazosin
  terazosin
  minoxidil
  prazosin
  methyldopa
  digoxin|dig
  amiodarone
  dofetilide
  flecainide
  propafenone
  dronedarone
  antiarrhythmic
  mexiletine
  ranolazine
  ivabradine
  statin
  atorvastatin
  rosuvastatin
  simvastatin
  pravastatin
  lovastatin
  ezetimibe
  fenofibrate
  PCSK9 inhibitor
  evolocumab
  alirocumab
  metformin|metformin ER
  insulin
  insulin glargine
  insulin lispro
  insulin aspart
  basal insulin
  NPH
  long-acting insulin
  semaglutide
  liraglutide
  dulaglutide
  tirzepatide
  exenatide
  GLP-1 agonist|GLP-1|GLP1
  empagliflozin
  dapagliflozin
  canagliflozin
  SGLT2 inhibitor|SGLT2i
  sitagliptin
  linagliptin
  glipizide
  glimepiride
  glyburide
  pioglitazone
  sulfonylurea
  levothyroxine|LT4|thyroid hormone|thyroid replacement
  liothyronine
  methimazole
  propylthiouracil|PTU
  SSRI|SSRIs|selective serotonin reuptake inhibitor
  sertraline
  fluoxetine
  citalopram
  escitalopram
  paroxetine
  fluvoxamine
  SNRI|SNRIs
  venlafaxine
  duloxetine
  desvenlafaxine
  bupropion
  mirtazapine
  trazodone
  vilazodone
  vortioxetine
  buspirone
  antidepressant|antidepressants
  benzodiazepine|benzo|benzodiazepines
  lorazepam
  alprazolam
  clonazepam
  diazepam
  temazepam
  zolpidem
  eszopiclone
  melatonin
  sleep aid
  quetiapine
  risperidone
  olanzapine
  aripiprazole
  haloperidol
  ziprasidone
  antipsychotic
  clozapine
  lithium
  lamotrigine
  levetiracetam
  carbamazepine
  oxcarbazepine
  topiramate
  phenobarbital
  lacosamide
  anticonvulsant
  gabapentin
  pregabalin
  methylphenidate
  amphetamine|mixed amphetamine salts
  dextroamphetamine
  lisdexamfetamine
  stimulant
  atomoxetine
  donepezil
  memantine
  levodopa
  carbidopa-levodopa|carbidopa/levodopa
  ropinirole
  pramipexole
  omeprazole
  pantoprazole
  esomeprazole
  lansoprazole
  proton pump inhibitor|PPI
  famotidine
  ranitidine
  H2 blocker
  albuterol
  inhaler
  fluticasone
  tiotropium
  montelukast
  LABA
  ICS
  salmeterol
  formoterol
  ipratropium
  inhaled steroid
  antihistamine
  cetirizine
  loratadine
  fexofenadine
  hydroxyzine
  diphenhydramine
  levocetirizine
  tamsulosin
  finasteride
  dutasteride
  oxybutynin
  mirabegron
  solifenacin
  alendronate
  risedronate
  denosumab
  zoledronic acid
  bisphosphonate
  ibandronate
  estrogen
  estradiol
  progesterone
  hormone replacement therapy|HRT|hormone replacement
  oral contraceptive|oral contraceptives|OCP|OCPs|birth control|birth control pills|OCs|BCP
  testosterone|TRT
  tamoxifen
  anastrozole
  letrozole
  exemestane
  aromatase inhibitor
  methotrexate|MTX
  azathioprine|AZA
  mercaptopurine|6-MP
  mycophenolate|MMF|mycophenolate mofetil
  cyclosporine|CsA|ciclosporin
  tacrolimus|FK506
  sirolimus
  everolimus
  hydroxychloroquine|HCQ
  colchicine
  allopurinol
  febuxostat
  biologic
  adalimumab
  etanercept
  infliximab
  ustekinumab
  secukinumab
  dupilumab
  rituximab
  TNF inhibitor
  guselkumab
  risankizumab
  ixekizumab
  omalizumab
  apremilast
  JAK inhibitor
  tofacitinib
  upadacitinib
  baricitinib
  ruxolitinib
  ibrutinib
  acalabrutinib
  zanubrutinib
  BTK inhibitor
  vismodegib
  sonidegib
  hedgehog inhibitor
  immunotherapy
  pembrolizumab
  nivolumab
  cemiplimab
  checkpoint inhibitor
  ipilimumab
  chemotherapy|chemo
  hydroxyurea
  capecitabine
  isotretinoin
  acitretin
  retinoid|oral retinoid
  tretinoin
  adapalene
  tazarotene
  topical retinoid
  5-fluorouracil|5-FU|fluorouracil|topical 5-FU
  imiquimod
  topical steroid
  triamcinolone cream
  clobetasol
  hydrocortisone cream
  betamethasone
  doxycycline|doxy
  minocycline
  tetracycline
  cephalexin
  cefadroxil
  cefazolin
  ceftriaxone
  amoxicillin
  amoxicillin-clavulanate|amox-clav
  penicillin|PCN
  dicloxacillin
  clindamycin
  azithromycin
  ciprofloxacin
  levofloxacin
  metronidazole
  nitrofurantoin
  vancomycin
  antibiotic|antibiotics
  terbinafine
  fluconazole
  itraconazole
  ketoconazole
  antifungal
  acyclovir
  valacyclovir
  famciclovir
  antiretroviral|ART|antiretrovirals|HAART|ARVs
  PrEP
  ondansetron
  metoclopramide
  meclizine
  cyclobenzaprine
  baclofen
  tizanidine
  muscle relaxant
  methocarbamol
  sumatriptan
  rizatriptan
  triptan
  sildenafil
  tadalafil
  PDE5 inhibitor
  latanoprost
  eye drops
  artificial tears
  laxative
  polyethylene glycol
  docusate
  senna
  tranexamic acid|TXA
  naltrexone
  low-dose naltrexone
  disulfiram
  varenicline
  nicotine patch
  cannabis|marijuana
  THC
  CBD
`);
