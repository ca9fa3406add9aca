import type { WordRow } from './types.ts';

export interface TestRow extends WordRow {
  /** The test, by its name in this table, for which a medium does what it does for this one. */
  readonly like?: string;
  /** Whether it is made of something else than the tissue, so that the medium of the tissue is nothing to it. */
  readonly tissue?: false;
}

const row = (name: string, ...synonyms: readonly string[]): TestRow => ({ name, synonyms });
const molecular = (name: string, ...synonyms: readonly string[]): TestRow => ({
  ...row(name, ...synonyms),
  like: 'gene rearrangement',
});

/** Rows out of lines, each a name with its other words after bars. */
const rowsOf = (like: string, lines: string): readonly TestRow[] =>
  lines
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', ...synonyms] = line.trim().split('|');
      return { name, synonyms, like };
    });

const stains = rowsOf(
  'special stains',
  `
  PAS stain|PAS|periodic acid-Schiff|periodic acid-Schiff stain|PAS for fungus|PAS for fungi|PAS-F|PAS fungal stain
  PAS with diastase|PAS-D|PASD|PAS diastase|diastase
  GMS stain|GMS|Gomori methenamine silver|Grocott|Grocott stain|methenamine silver|Gomori stain|Grocott methenamine silver
  gram stain|tissue gram stain|gram|tissue gram|Brown-Brenn|Brown and Brenn|Brown-Brenn stain|Brown-Hopps|Gram-Twort
  Fite stain|Fite|Fite-Faraco|Fite-Faraco stain
  acid-fast stain|AFB stain|acid-fast bacilli stain|AFB smear|acid-fast smear|Ziehl-Neelsen|Ziehl-Neelsen stain|ZN stain|Kinyoun
  auramine stain|auramine|auramine-rhodamine
  elastic stain|elastin stain|elastic|VVG|EVG|Verhoeff-van Gieson|Verhoeff|Verhoeff elastic|elastic van Gieson|Weigert elastic
  orcein stain|orcein
  colloidal iron|colloidal iron stain
  Alcian blue|Alcian blue stain
  mucicarmine|mucicarmine stain
  mucin stain|mucin|mucin stains
  iron stain|iron|hemosiderin stain|Prussian blue|Perls|Perls'|Perls' stain|Perls stain|Perl stain|Perl's stain
  melanin stain|Fontana-Masson|Fontana|Masson-Fontana|Fontana-Masson stain|Fontana stain
  melanin bleach|bleach
  trichrome stain|trichrome|Masson trichrome|Masson's trichrome
  Giemsa stain|Giemsa
  toluidine blue stain|toluidine blue
  Leder stain|Leder|chloroacetate esterase
  Congo red|Congo red stain|amyloid stain|amyloid
  crystal violet stain|crystal violet
  thioflavin stain|thioflavin|thioflavin T
  von Kossa stain|von Kossa|calcium stain
  alizarin red stain|alizarin red|alizarin red S
  Warthin-Starry stain|Warthin-Starry
  Steiner stain|Steiner
  Dieterle stain|Dieterle
  reticulin stain|reticulin|reticulum stain
  oil red O|fat stain|lipid stain
  Sudan black|Sudan black stain
`,
);

const antibodies = rowsOf(
  'immunohistochemistry',
  `
  S100|S-100|S100 protein|S-100 protein
  Melan-A|MelanA|MART-1|MART1|Mart-1/Melan-A|Melan-A/MART-1
  SOX10|SOX-10
  HMB-45|HMB45
  PRAME|PRAME stain
  MITF
  tyrosinase
  p16|p16 stain
  p53
  Ki-67|Ki67|MIB-1|MIB1
  BRAF V600E|VE1|BRAF stain|BRAF IHC
  BAP1|BAP-1
  cytokeratin|cytokeratins|CK|keratin stain|keratin|keratins
  pancytokeratin|pankeratin|AE1/AE3|MNF116
  CK5/6|CK 5/6
  CK7|CK-7|cytokeratin 7
  CK20|CK-20|cytokeratin 20
  CAM 5.2|CAM5.2
  high molecular weight keratin|34betaE12
  p40
  p63
  Ber-EP4|BerEP4|EpCAM
  CEA|carcinoembryonic antigen
  EMA|epithelial membrane antigen
  GCDFP-15
  GATA3|GATA-3
  adipophilin
  androgen receptor|AR stain
  factor XIIIa|factor 13a|factor XIII|FXIIIa
  CD34
  CD31
  ERG
  D2-40|podoplanin
  factor VIII
  GLUT-1|GLUT1
  MYC|c-MYC
  CD10
  procollagen
  stromelysin-3
  vimentin
  desmin
  smooth muscle actin|SMA|actin
  muscle-specific actin|MSA
  caldesmon|h-caldesmon
  T-cell markers|T cell markers
  CD2
  CD3
  CD4
  CD5
  CD7
  CD8
  CD4/CD8|CD4:CD8 ratio|CD4 and CD8
  CD45|LCA
  TIA-1
  granzyme B
  TOX
  B-cell markers|B cell markers
  CD19
  CD20
  CD21
  CD23
  CD79a
  CD138
  PAX5|PAX-5
  BCL2|BCL-2
  BCL6|BCL-6
  MUM1
  kappa and lambda|kappa lambda|kappa/lambda
  CD15
  CD30
  ALK|ALK-1|ALK1
  CD68
  CD163
  CD1a
  langerin|CD207
  lysozyme
  myeloperoxidase|MPO
  CD117|c-kit|KIT
  tryptase|tryptase stain
  CD25
  CD56
  CD123
  synaptophysin
  chromogranin
  INSM1
  neurofilament
  neuron-specific enolase|NSE
  TTF-1|TTF1
  Merkel cell polyomavirus|MCPyV
  collagen IV|collagen IV stain|collagen 4|type IV collagen
  HHV-8|HHV8|HHV-8 stain|LANA|LANA-1
  HSV stain|HSV immunostain|HSV IHC
  VZV stain|VZV immunostain
  HSV/VZV stain|HSV/VZV immunostain
  CMV stain|CMV immunostain
  treponemal immunostain|Treponema pallidum stain|treponema stain|T. pallidum IHC|spirochete immunostain|spirochete IHC|syphilis stain|treponemal stain|treponemal IHC
  mismatch repair stains|mismatch repair|mismatch repair proteins|MMR|Muir-Torre stains
  MLH1
  MSH2
  MSH6
  PMS2
  fumarate hydratase|FH stain
  2SC
  PD-L1|PDL1
  PD-1
  HER2|HER-2
  estrogen receptor
`,
);

/**
 * What a laboratory may be asked for. The media table says for each of them, or for the one that it is like, which media
 * serve it. Names of stains and antibodies: common practice, no source.
 */
export const laboratoryTests: readonly TestRow[] = [
  row(
    'routine histology',
    'histopathological',
    'histopath',
    'histologic',
    'histological',
    'pathologic',
    'microscopic analysis',
    'histologic analysis',
    'histological examination',
    'pathologic analysis',
    'histopathologic evaluation',
    'histology with levels',
    'pathology examination',
    'microscopy of tissue',
    'pathological examination',
    'diagnostic pathology',
    'tissue diagnosis',
    ...[
      'H&E',
      'HE',
      'H and E',
      'H & E',
      'histology',
      'histopathology',
      'pathology',
      'routine pathology',
      'dermatopathology',
      'routine',
    ],
    ...[
      'permanent sections',
      'permanent section',
      'surgical pathology',
      'light microscopy',
      'routine histopathology',
      'derm path',
    ],
    ...[
      'horizontal sections',
      'transverse sections',
      'vertical sections',
      'step sections',
      'serial sections',
      'margins',
      'margin assessment',
    ],
    ...[
      'hematoxylin and eosin',
      'haematoxylin and eosin',
      'H/E',
      'H&E stain',
      'H&E histology',
      'dermpath',
      'path',
      'permanent',
      'permanents',
    ],
    ...[
      'histopathologic examination',
      'histologic examination',
      'histopathological examination',
      'routine H&E',
      'tissue exam',
      'biopsy',
    ],
    ...[
      'skin biopsy',
      'pathologic examination',
      'microscopic examination',
      'gross and microscopic',
      'gross and micro',
      'routine processing',
      'deeper levels',
      'levels',
      'deepers',
      'tissue pathology',
      'path exam',
    ],
    ...[
      'margin check',
      'check margins',
      'margins please',
      'margin evaluation',
      'en face margins',
      'bread-loaf sections',
      'hair count',
      'horizontal and vertical sections',
      'paraffin sections',
      'rush histology',
    ],
    ...[
      'routine skin pathology',
      'histologic evaluation',
      'pathology consult',
      'dermatopathology consult',
      'tissue examination',
      'gross only',
      'gross examination',
      'gross exam',
      'rush pathology',
      '88305',
      'dermpath H&E',
      'vertical and horizontal sections',
      'standard histology',
      'pathologic evaluation',
    ],
  ),
  row(
    'special stains',
    'special stain',
    'histochemical stains',
    'histochemistry',
    'stains',
    'stains as needed',
    'special stains for organisms',
    'stains for organisms',
    'stains for microorganisms',
    'infectious stains',
    'fungal stains',
    'fungal stain',
    'fungus stain',
    'fungi stain',
    'stain for fungus',
    'stains for fungus',
    'bacterial stain',
    'microorganism stains',
    'organism stains',
    'histochemical stain',
    'special stains as needed',
  ),
  ...stains,
  row(
    'immunohistochemistry',
    ...[
      'IHC',
      'immunostains',
      'immunoperoxidase',
      'immunohistochemical stains',
      'immunos',
      'immunohistochemical stain',
    ],
    ...[
      'immunostain',
      'IHC stains',
      'IHC panel',
      'melanocytic markers',
      'melanoma markers',
      'lymphoma panel',
      'immuno',
      'immunohistochemistry panel',
      'immunohistochemical staining',
      'immunohistochemical studies',
      'melanoma panel',
      'melanocytic stains',
      'immunophenotyping',
      'immunoperoxidase stains',
    ],
  ),
  ...antibodies,
  row(
    'direct immunofluorescence',
    ...[
      'DIF',
      'IF',
      'immunofluorescence',
      'immunofluorescence (direct)',
      'immunofluorescence, direct',
      'direct IF',
      'IMF',
      'immunofluorescence mapping',
      'salt-split immunofluorescence',
    ],
    ...[
      'salt-split skin',
      'salt split skin',
      'salt-split',
      'D.I.F.',
      'direct immunofluorescent',
      'immunofluorescence study',
      'lupus band test',
      'lupus band',
      'cutaneous immunofluorescence',
    ],
    ...[
      'direct immunofluorescence study',
      'immunofluorescence studies',
      'direct immunofluorescence microscopy',
      'IF studies',
      'immunofluorescent studies',
      'DIF study',
      'salt-split skin DIF',
      'skin immunofluorescence',
      'antigen mapping',
      'DIF panel',
      'cutaneous direct immunofluorescence',
    ],
  ),
  {
    ...row(
      'indirect immunofluorescence',
      'serum for indirect immunofluorescence',
      'serum IIF',
      'IIF on monkey esophagus',
      'serum for antibodies',
      'IIF',
      'indirect IF',
      'serum indirect immunofluorescence',
      'pemphigus antibodies',
      'BP180 and BP230',
      'desmoglein antibodies',
      'serum antibodies',
      'desmoglein 1 and 3',
      'serology',
      'ELISA',
      'BP180',
      'BP230',
      'cutaneous antibodies',
    ),
    tissue: false,
  },
  row(
    'bacterial culture',
    'culture for common pathogens',
    'routine culture',
    'pathogen culture',
    'wound swab culture',
    'bacteriology',
    ...[
      'culture',
      'tissue culture',
      'C&S',
      'culture and sensitivity',
      'aerobic culture',
      'anaerobic culture',
      'bacterial cultures',
    ],
    ...[
      'aerobic and anaerobic culture',
      'cultures',
      'bacterial culture and sensitivity',
      'microbiology',
      'bacterial',
      'bacteria culture',
      'C+S',
      'culture and sensitivities',
      'culture with gram stain',
      'wound culture',
    ],
    ...[
      'gram stain and culture',
      'tissue for culture',
      'bacterial tissue culture',
      'culture and gram stain',
      'MRSA culture',
      'anaerobic and aerobic cultures',
      'aerobic cultures',
      'aerobic bacterial culture',
      'anaerobic bacterial culture',
      'swab culture',
      'superficial wound culture',
      'deep wound culture',
      'culture & sensitivity',
      'aerobic/anaerobic culture',
      'abscess culture',
    ],
  ),
  row(
    'fungal culture',
    'dermatophyte isolation',
    'fungus isolation',
    'culture fungus',
    'fungi',
    'fungus culture',
    'mycology',
    'fungal cultures',
    'mycology culture',
    'deep fungal culture',
    'fungal',
    'dermatophyte culture',
    'culture for fungus',
    'yeast culture',
    'nail culture',
    'culture for fungi',
    'fungal tissue culture',
    'tissue fungal culture',
    'fungal culture of nail',
    'fungal smear and culture',
  ),
  row(
    'mycobacterial culture',
    'mycobacteria',
    'mycobacterium',
    'TB',
    'atypical mycobacteria',
    'nontuberculous mycobacteria culture',
    'AFB culture',
    'TB culture',
    'acid-fast culture',
    'mycobacteria culture',
    'atypical mycobacterial culture',
    'AFB',
    'mycobacterial',
    'atypical mycobacteria culture',
    'AFB culture and smear',
    'acid-fast bacilli culture',
    'AFB smear and culture',
    'mycobacterial cultures',
    'acid fast bacilli',
    'culture for mycobacteria',
    'culture for AFB',
    'NTM culture',
    'mycobacterium culture',
    'AFB cultures',
    'tuberculosis culture',
  ),
  row(
    'viral culture',
    'virus culture',
    'viral isolation',
    'herpes culture',
    'HSV culture',
    'herpes simplex culture',
    'virus isolation',
    'viral cultures',
  ),
  row(
    'PCR',
    'viral PCR',
    'HSV PCR',
    'VZV PCR',
    'polymerase chain reaction',
    'molecular testing',
    'mycobacterial PCR',
    'HSV/VZV PCR',
    'HPV PCR',
    'HPV typing',
    'fungal PCR',
    'bacterial PCR',
    'broad-range PCR',
    '16S PCR',
    'leishmania PCR',
    'HPV testing',
    'herpes PCR',
    'tissue PCR',
    'universal PCR',
    '16S sequencing',
    'onychomycosis PCR',
    'nail PCR',
    'HSV and VZV PCR',
    'NAAT',
    'monkeypox PCR',
    'mpox PCR',
    'orthopoxvirus PCR',
    'HSV 1/2 PCR',
    'dermatophyte PCR',
    'enterovirus PCR',
  ),
  {
    ...row(
      'viral antigen test',
      'DFA',
      'viral DFA',
      'HSV DFA',
      'direct fluorescent antibody',
      'HSV/VZV DFA',
      'VZV DFA',
      'direct fluorescent antibody test',
    ),
    like: 'viral culture',
  },
  {
    ...row(
      'cytology',
      'Tzanck',
      'Tzanck smear',
      'touch prep',
      'smear',
      'touch preparation',
      'imprint cytology',
      'exfoliative cytology',
      'cytologic examination',
      'cytological examination',
      'smear cytology',
      'Tzanck preparation',
      'Tzanck test',
      'fine needle cytology',
      'slit-skin smear',
      'FNA cytology',
      'cytopathology',
      'touch imprint',
    ),
    tissue: false,
  },
  {
    ...row(
      'scraping under the microscope',
      'KOH',
      'KOH prep',
      'potassium hydroxide',
      'scabies prep',
      'mineral oil prep',
      'KOH preparation',
      'wet mount',
      'skin scraping',
      'ectoparasite exam',
      'scabies scraping',
      'KOH examination',
      'mineral oil preparation',
      'parasite exam',
      'KOH exam',
      'potassium hydroxide prep',
      'wet prep',
    ),
    tissue: false,
  },
  row(
    'electron microscopy',
    'EM',
    'ultrastructure',
    'transmission electron microscopy',
    'TEM',
    'electron microscope',
    'ultrastructural study',
    'EM study',
    'electron microscopic examination',
  ),
  row(
    'frozen section',
    'frozen',
    'frozen sections',
    'intraoperative frozen section',
    'frozens',
    'FS',
    'rush frozen',
    'intraoperative frozen sections',
    'frozen section analysis',
    'Mohs sections',
    'jelly roll',
    'intraoperative consultation',
    'frozen jelly roll',
    'Mohs frozen sections',
    'intraoperative consult',
  ),
  row(
    'flow cytometry',
    'flow',
    'flow cytometric analysis',
    'leukemia lymphoma panel',
    'flow cytometry analysis',
    'cytometry',
  ),
  row(
    'gene rearrangement',
    'TCR gene rearrangement',
    'T-cell gene rearrangement',
    'clonality',
    'T-cell clonality',
    'gene rearrangement studies',
    'clonality studies',
    'TCR',
    'T-cell receptor gene rearrangement',
    'B-cell gene rearrangement',
    'IgH gene rearrangement',
    'TCR clonality',
    'T-cell receptor',
    'TCR PCR',
    'B-cell clonality',
    'IgH',
    'TCR studies',
    'high-throughput sequencing',
    'TCR HTS',
    'TCR sequencing',
    'T cell gene rearrangement',
    'TCR rearrangement',
    'IGH clonality',
  ),
  molecular(
    'FISH',
    'fluorescence in situ hybridization',
    'melanoma FISH',
    'FISH panel',
    'in situ hybridization',
    'ISH',
    'EBER',
    'HPV ISH',
    'EBV ISH',
    'EBER ISH',
    'CISH',
  ),
  molecular(
    'gene expression profile',
    'GEP',
    'gene expression profiling',
    '31-gene expression profile',
    '23-gene expression profile',
    '31-GEP',
    'gene expression test',
  ),
  molecular(
    'sequencing',
    'next-generation sequencing',
    'NGS',
    'BRAF',
    'BRAF mutation',
    'mutation analysis',
    'tumor sequencing',
    'BRAF testing',
    'molecular studies',
    'genetic testing',
    'BRAF mutation analysis',
    'mutation testing',
    'KIT mutation',
    'next generation sequencing',
    'NRAS',
  ),
  molecular(
    'comparative genomic hybridization',
    'CGH',
    'array CGH',
    'SNP array',
    'chromosomal microarray',
    'microarray',
    'aCGH',
    'cytogenetics',
    'karyotype',
  ),
];
