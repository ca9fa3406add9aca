import type { Sourced, WordRow } from './types.ts';

/**
 * A trade name and the word of our tables that it is read as. It gives the agent and nothing else: no strength, no
 * epinephrine, no preservative. Names are read, and never written: completions, fixes and documents have the generic word.
 */
export interface TradeName extends Sourced {
  readonly name: string;
  readonly generic: string;
}

/** Out of lines, each a generic word with its trade names after bars. */
const namesOf = (source: string, mark: Sourced['mark'], lines: string): readonly TradeName[] =>
  lines
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [generic = '', ...names] = line.trim().split('|');
      return names.map((name) => ({ name, generic, source, mark }));
    });

const listed = namesOf(
  'trade-names-lists',
  'Q2',
  `
  acebutolol|Sectral
  atenolol|Tenormin
  betaxolol|Kerlone
  bisoprolol|Zebeta
  labetalol|Normodyne|Trandate
  metoprolol|Lopressor|Toprol-XL
  nadolol|Corgard
  penbutolol|Levatol
  pindolol|Visken
  propranolol|Inderal
  sotalol|Betapace
  timolol|Blocadren
  warfarin|Coumadin|Jantoven
  apixaban|Eliquis
  rivaroxaban|Xarelto
  dabigatran|Pradaxa
  edoxaban|Savaysa|Lixiana
  enoxaparin|Lovenox
  dalteparin|Fragmin
  fondaparinux|Arixtra
  clopidogrel|Plavix
  ticagrelor|Brilinta
  phenelzine|Nardil
  tranylcypromine|Parnate
  isocarboxazid|Marplan
  selegiline|EMSAM
  amitriptyline|Elavil|Endep
  amoxapine|Asendin
  clomipramine|Anafranil
  desipramine|Norpramin|Pertofrane
  doxepin|Sinequan|Adapin
  imipramine|Tofranil
  nortriptyline|Pamelor|Aventyl
  protriptyline|Vivactil
  trimipramine|Surmontil
  citalopram|Celexa
  escitalopram|Lexapro
  fluoxetine|Prozac|Sarafem
  fluvoxamine|Luvox
  paroxetine|Paxil|Pexeva
  sertraline|Zoloft
  venlafaxine|Effexor
  desvenlafaxine|Pristiq
  duloxetine|Cymbalta
  bupropion|Wellbutrin|Zyban
  mirtazapine|Remeron
  trazodone|Desyrel
  vilazodone|Viibryd
  vortioxetine|Brintellix
  buspirone|Buspar
  carvedilol|Coreg
  esmolol|Brevibloc
  ropivacaine|Naropin
  chloroprocaine|Nesacaine
  articaine|Septocaine
  prilocaine|Citanest
  lidocaine-prilocaine cream|Prilovix
  polyglactin|Vicryl|Polysorb
  rapid polyglactin|Vicryl Rapide
  antibacterial polyglactin|Vicryl Plus
  poliglecaprone|Monocryl
  polydioxanone|PDS|PDS II
  polyglycolic acid|Dexon
  polyglyconate|Maxon
  glycomer|Biosyn
  polyglytone|Caprosyn
  nylon|Ethilon|Dermalon|Monosof
  braided nylon|Surgilon
  polypropylene|Prolene|Surgipro|Surgilene
  polyester|Ethibond|Mersilene|Ticron|Dacron|Tevdek
  polybutester|Novafil
  polytetrafluoroethylene|Gore-Tex
  triple antibiotic ointment|Neosporin
  double antibiotic ointment|Polysporin
  mupirocin|Bactroban
  silver sulfadiazine|Silvadene
  povidone-iodine|Betadine
  chlorhexidine|Hibiclens
  hexachlorophene|pHisoHex
  hydrocolloid|DuoDERM|Comfeel|Tegasorb
  transparent film|Tegaderm|OpSite|Bioclusive|Polyskin
  tubular bandage|Tubigrip
  bismuth gauze|Xeroform
  alginate|Kaltostat|Sorbsan|Curasorb|Algisite
  hydrofiber|Aquacel
  silver hydrofiber|Aquacel Ag
  foam|Lyofoam|Allevyn
  hydrogel|Vigilon|Intrasite
`,
);

const remembered = namesOf(
  'trade-names-memory',
  'M',
  `
  aspirin|Ecotrin|Bufferin|Bayer aspirin|Bayer|St. Joseph aspirin
  aspirin-dipyridamole|Aggrenox
  prasugrel|Effient
  ticlopidine|Ticlid
  dipyridamole|Persantine
  cilostazol|Pletal
  triamcinolone|Kenalog|Kenalog-10|Kenalog-40|Kenacort|Aristospan
  vorapaxar|Zontivity
  pentoxifylline|Trental
  anagrelide|Agrylin
  tinzaparin|Innohep
  bivalirudin|Angiomax
  selegiline|Eldepryl|Zelapar
  rasagiline|Azilect
  safinamide|Xadago
  doxepin|Silenor
  vortioxetine|Trintellix
  quetiapine|Seroquel
  propranolol|InnoPran|Hemangeol
  nebivolol|Bystolic
  sotalol|Sotylize
  carvedilol|Coreg CR
  chlorpromazine|Thorazine
  promethazine|Phenergan
  prochlorperazine|Compazine
  thioridazine|Mellaril
  lidocaine|Lignospan|Octocaine
  bupivacaine|Vivacaine|Exparel
  mepivacaine|Scandonest|Isocaine
  levobupivacaine|Chirocaine
  chloroprocaine|Clorotekal
  articaine|Articadent|Zorcaine|Orabloc|Ultracaine
  tetracaine|Pontocaine|Ametop
  lidocaine cream|LMX|LMX4|LMX 4|LMX5|LMX 5|ELA-Max|AneCream|RectiCare
  lidocaine-tetracaine cream|Pliaglis|Synera
  diphenhydramine|Benadryl
  vapocoolant spray|Pain Ease
  benzocaine|Hurricaine|Orajel|Americaine|Lanacane|Cetacaine
  epinephrine|EpiPen|Auvi-Q
  trimethoprim-sulfamethoxazole|Bactrim|Septra
  sulfasalazine|Azulfidine
  phenazopyridine|Pyridium
  phenytoin|Dilantin
  valproate|Depakote|Depakene
  nitroglycerin|Nitrostat
  amiodarone|Pacerone|Cordarone
  dronedarone|Multaq
  dofetilide|Tikosyn
  propafenone|Rythmol
  isosorbide mononitrate|Imdur
  isosorbide dinitrate|Isordil
  linezolid|Zyvox
  methylergonovine|Methergine
  dapsone|Aczone
  cyclophosphamide|Cytoxan
  ifosfamide|Ifex
  hydroxyurea|Hydrea|Droxia
  rasburicase|Elitek
  flecainide|Tambocor
  disopyramide|Norpace
  prednisone|Deltasone|Rayos
  methylprednisolone|Medrol
  dexamethasone|Decadron
  prednisolone|Orapred
  rapid polyglactin|Velosorb
  poliglecaprone|Monoderm
  barbed polydioxanone|Stratafix
  barbed polyglyconate|V-Loc
  braided nylon|Nurolon
  nylon|Supramid
  polyester|Ti-Cron
  polyvinylidene fluoride|Pronova
  cyanoacrylate|Dermabond|Indermil|Histoacryl|SurgiSeal|LiquiBand|Exofin
  mupirocin|Centany
  retapamulin|Altabax
  gentamicin|Garamycin
  chlorhexidine|Hibistat|Dyna-Hex|Betasept
  chlorhexidine in alcohol|ChloraPrep
  povidone-iodine in alcohol|DuraPrep|Prevail-FX
  chloroxylenol|Technicare
  benzalkonium chloride|Zephiran
  hypochlorous acid|Vashe|Puracyn
  aluminum chloride in alcohol|Xerac AC
  aluminum chloride|Lumicain|Hemodent
  ferric subsulfate|Astringyn
  gelatin sponge|Gelfoam|Surgifoam
  gelatin matrix with thrombin|Floseal
  oxidized cellulose|Surgicel|Oxycel
  microfibrillar collagen|Avitene|Instat|Helistat
  thrombin|Thrombin-JMI|Recothrom|Evithrom
  fibrin sealant|Tisseel|Evicel
  chitosan|HemCon|Celox
  polysaccharide powder|Arista
  tranexamic acid|Cyklokapron|Lysteda
  electrosurgery|Surgitron
  non-adherent pad|Telfa|Telfa pad
  oil emulsion dressing|Adaptic
  paraffin gauze|Jelonet
  chlorhexidine gauze|Bactigras
  povidone-iodine dressing|Inadine
  cadexomer iodine|Iodosorb
  cohesive bandage|Coban|CoFlex|Co-Flex
  elastic bandage|Ace wrap|Ace bandage
  roll gauze|Kerlix|Kling|Kling gauze
  adhesive bandage|Curad
  adhesive island dressing|Primapore|Mepore|Covaderm
  paper tape|Micropore
  silk tape|Durapore
  plastic tape|Transpore
  dressing retention tape|Hypafix|Medipore|Mefix
  silicone foam|Mepilex
  silicone contact layer|Mepitel
  nanocrystalline silver|Acticoat|Silverlon
  medical honey|Medihoney
  collagen dressing|Promogran|Puracol
  foam|Biatain|PolyMem
  gum mastic|Mastisol
  skin barrier film|Cavilon
  negative pressure wound therapy|V.A.C.|wound vac|wound VAC therapy
  viral transport medium|M4|M4RT
  sacral nerve stimulator|InterStim
  leadless pacemaker|Micra
  wearable defibrillator|LifeVest
  LAA occluder|Watchman
  bone-anchored hearing aid|BAHA|Baha implant
  contraceptive implant|Nexplanon|Implanon
  hormonal IUD|Mirena|Kyleena
  copper IUD|Paragard
  venous port|Port-a-Cath|Mediport|Portacath
  insulin pump|Omnipod
  continuous glucose monitor|Dexcom
  ibuprofen|Advil|Motrin
  naproxen|Aleve|Naprosyn
  acetaminophen|Tylenol
  celecoxib|Celebrex
  meloxicam|Mobic
  ketorolac|Toradol
  tramadol|Ultram
  meperidine|Demerol
  hydromorphone|Dilaudid
  amoxicillin-clavulanate|Augmentin
  cephalexin|Keflex
  ciprofloxacin|Cipro
  levofloxacin|Levaquin
  azithromycin|Zithromax|Z-Pak|Zpack|Z-pack
  clarithromycin|Biaxin
  nitrofurantoin|Macrobid|Macrodantin
  metronidazole|Flagyl
  clindamycin|Cleocin
  furosemide|Lasix
  lisinopril|Zestril|Prinivil
  losartan|Cozaar
  amlodipine|Norvasc
  atorvastatin|Lipitor
  rosuvastatin|Crestor
  simvastatin|Zocor
  levothyroxine|Synthroid|Levoxyl
  metformin|Glucophage
  semaglutide|Ozempic|Wegovy
  gabapentin|Neurontin
  pregabalin|Lyrica
  zolpidem|Ambien
  alprazolam|Xanax
  lorazepam|Ativan
  diazepam|Valium
  metoclopramide|Reglan
  ondansetron|Zofran
  omeprazole|Prilosec
  famotidine|Pepcid
  adalimumab|Humira
  dupilumab|Dupixent
  isotretinoin|Accutane
  hydroxychloroquine|Plaquenil
  ibrutinib|Imbruvica
`,
);

/** US trade names. Some that are common in speech are missing, since they may not be in this project: a practice names its own. */
export const tradeNames: readonly TradeName[] = [...listed, ...remembered];

/** Most words of the tables are in plain form already. */
const usual = /^[a-z0-9 ]+$/;

const plain = (text: string): string =>
  usual.test(text) ? text : text.toLowerCase().replace(/[\s-]+/g, ' ');

/** Trade names by the generic word in plain form. */
const byGeneric: ReadonlyMap<string, readonly string[]> = grouped(tradeNames);

function grouped(
  names: readonly Pick<TradeName, 'name' | 'generic'>[],
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { name, generic } of names) {
    const key = plain(generic);
    const same = found.get(key);
    if (same === undefined) found.set(key, [name]);
    else same.push(name);
  }
  return found;
}

/** Rows with the trade names by which they are read; those that no trade name means stay as they are. */
export const withTradeNames = <Row extends WordRow>(
  rows: readonly Row[],
  names: readonly Pick<TradeName, 'name' | 'generic'>[] = tradeNames,
): readonly Row[] => {
  const known = names === tradeNames ? byGeneric : grouped(names);
  return rows.map((row) => {
    const own = [row.name, ...row.synonyms].flatMap((word) => known.get(plain(word)) ?? []);
    return own.length === 0 ? row : { ...row, tradeNames: [...(row.tradeNames ?? []), ...own] };
  });
};
