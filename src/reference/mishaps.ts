import type { Sourced, WordRow } from './types.ts';

/** What kind of mishap it is; each kind is reported by one check, under the form of this name. */
export type MishapKind =
  | 'lost'
  | 'empty'
  | 'label'
  | 'mixed'
  | 'shared'
  | 'harmed'
  | 'kept'
  | 'refused'
  | 'wet'
  | 'oxygen'
  | 'burn'
  | 'site'
  | 'sharps'
  | 'consent'
  | 'expired'
  | 'recalled'
  | 'injury'
  | 'toxicity'
  | 'reaction';

/** Words which only beside others mention a mishap: "lost" of a specimen, "burn" under a pad. */
export type Beside =
  'specimen' | 'container' | 'specimens' | 'test' | 'fuel' | 'burning' | 'drug' | 'lot' | 'label';

/** Words by which a free text says that something went wrong at the visit or later. */
export interface MishapRow extends WordRow, Sourced {
  readonly kind: MishapKind;
  /** What has to be named in the same sentence; one word of the group is enough. */
  readonly beside?: Beside;
  /** Whether it says little about the mouth and face, where an injection by itself does the same. */
  readonly notOnFace?: true;
}

const row = (
  kind: MishapKind,
  { source, mark }: Sourced,
  words: string,
  more: Pick<MishapRow, 'beside' | 'notOnFace'> = {},
): MishapRow => {
  const [name = '', ...synonyms] = words.split('|');
  return { name, synonyms, kind, source, mark, ...more };
};

const emptied: Sourced = { source: 'empty-containers', mark: 'Q' };
const rejected: Sourced = { source: 'histology-rejection', mark: 'Q' };
const labels: Sourced = { source: 'label-manuals', mark: 'Q' };
const fluorescence: Sourced = { source: 'immunofluorescence-manuals', mark: 'Q' };
const fire: Sourced = { source: 'fire-poster', mark: 'Q' };
const sites: Sourced = { source: 'wrong-site-review', mark: 'Q' };
const sharps: Sourced = { source: 'sharps-dermatology-2016', mark: 'Q' };
const format: Sourced = { source: 'format', mark: 'format' };
const toxic: Sourced = { source: 'toxicity-signs', mark: 'Q2' };

/** Mishaps by the words that mention them. What is published of each is its source; the words are the clinic's own. */
export const mishaps: readonly MishapRow[] = [
  row(
    'lost',
    emptied,
    "lost|misplaced|missing|went missing|gone missing|not found|never found|cannot be found|could not be found|cannot find|can't find|couldn't find|cannot locate|can't locate|could not locate|unable to locate|vanished|disappeared|" +
      'lost in transit|down the sink|down the drain|never arrived|did not arrive|never received|fell out of the jar|never made it|could not find|unable to find',
    { beside: 'specimen' },
  ),
  row('lost', emptied, 'courier lost|lab lost|laboratory lost|lost by the courier|lost by the lab'),
  row('lost', emptied, 'thrown away|thrown out|in the trash|discarded by mistake|accidentally discarded', {
    beside: 'specimen',
  }),
  row('lost', emptied, 'broke|broken|shattered', {
    beside: 'container',
  }),
  row(
    'empty',
    emptied,
    'empty|no specimen|no tissue|no sample|no biopsy|nothing in|without a specimen|without specimen|without tissue',
    { beside: 'container' },
  ),
  row(
    'label',
    labels,
    'no label|not labeled|not labelled|unlabeled|unlabelled|without a label|without label|label missing|missing label|label fell off|label came off|' +
      'label illegible|illegible label|label unreadable|label smeared|labeled later|labelled later|labeled afterward|labeled by memory|labeled from memory|no name on|forgot to label|forgot the label|did not label|was never labeled',
    { beside: 'specimen' },
  ),
  row(
    'label',
    labels,
    'label on lid|label on the lid|labels on the lids|lid swapped|lids swapped|lids switched',
  ),
  row(
    'mixed',
    rejected,
    'switched|swapped|reversed|mixed up|mix up|interchanged|transposed|mislabeled|mislabelled|misidentified|wrong label|wrong name|wrong jar|wrong bottle|' +
      'wrong container|wrong vial|wrong requisition|label mismatch|mismatch|discrepancy|does not match|do not match|did not match|not matching',
    { beside: 'specimen' },
  ),
  row(
    'mixed',
    rejected,
    "wrong patient's name|wrong patient name|another patient's name|other patient's name|another patient's label|another patient's requisition|another patient's form|wrong patient's label",
  ),
  row(
    'mixed',
    rejected,
    'requisition says|req says|form says|order says|requisition reads|requisition has|requisition shows',
    { beside: 'label' },
  ),
  row(
    'shared',
    labels,
    'same jar|same container|same bottle|same vial|one jar|one container|one bottle|one vial|single container|single jar',
    { beside: 'specimens' },
  ),
  row(
    'harmed',
    rejected,
    'dropped|fell on|fell onto|fell to|fell off|fell from|fell out|on the floor|on floor|onto the floor|onto floor|spilled|spilt|knocked over|dried out|dried up|dried on|dried in|dry on arrival|desiccated|crushed|macerated|' +
      'leaked|leaking|leaks|no fluid|contaminated',
    { beside: 'specimen' },
  ),
  row(
    'kept',
    rejected,
    'found in fridge|found in the fridge|found in refrigerator|found in the refrigerator|found in drawer|found in the drawer|still in the fridge|' +
      'still in the office|sat in fridge|sat in the fridge|sat overnight|sat over the weekend|sat on the counter|forgotten in|left overnight|left on the counter|on the counter|left out|never sent|never picked up|not picked up|forgot to send|was not sent by mistake',
    { beside: 'specimen' },
  ),
  row(
    'refused',
    fluorescence,
    'arrived fixed|received fixed|came fixed|wrong fixative|wrong medium|wrong media|wrong solution|wrong fluid|wrong preservative|cannot be run|' +
      "can't be run|could not be run|cannot be done|could not be done|not possible|cannot be performed|could not be performed|not performed|unsuitable|unsatisfactory for",
    { beside: 'test' },
  ),
  row(
    'wet',
    { source: 'alcohol-label', mark: 'Q' },
    'wet|still wet|pooled|pooling|not dry|not dried|not yet dry|did not dry|before it dried|before it was dry|never dried',
    { beside: 'fuel' },
  ),
  row(
    'oxygen',
    fire,
    'oxygen|o2|nasal cannula|supplemental oxygen|home oxygen|home o2|nasal o2|face mask oxygen|oxygen by mask',
  ),
  row('burn', fire, 'fire on|flames|flame|flash|flashed|scorched|fire|burn|burned|burnt', {
    beside: 'burning',
  }),
  row(
    'burn',
    fire,
    'caught fire|caught on fire|on fire|set fire to|ignited|singed|caught a spark|drape melted|gown melted',
  ),
  row(
    'burn',
    { source: 'return-electrode-burns', mark: 'Q' },
    'pad burn|burn under|burned under|burn at the pad',
  ),
  row(
    'site',
    sites,
    'wrong site|wrong side|wrong lesion|wrong spot|wrong location|wrong mole|wrong place|wrong area|wrong finger|wrong toe|wrong ear|wrong patient|' +
      'incorrect site|incorrect side|incorrect lesion|not the right lesion|not the right side|should have been left|should have been right|' +
      'should have been the left|should have been the right|should have been the other|from neighbor|from the neighbor|from a neighbor|from the wrong',
  ),
  row(
    'sharps',
    sharps,
    'needlestick|needle stick|sharps injury|stuck herself|stuck himself|stuck self|stuck with needle|stuck by needle|stuck finger|stuck her finger|stuck his finger|needle injury|' +
      'poked herself|poked himself|scalpel cut to|blood splash|splash to eye|splashed in eye|blood in eye|blood exposure|exposure incident',
  ),
  row(
    'consent',
    format,
    'consent was not obtained|consent not obtained|no consent|without consent|consent not signed|consent was not signed|consent forgotten|forgot consent|' +
      'never consented|did not consent|consent obtained after|consent signed after|consent form never signed|consent form not signed|consent never signed',
  ),
  row(
    'expired',
    format,
    'expired|out of date|outdated|past expiration|past its expiration|past the expiration|past its date|past exp|expiration passed|beyond use date',
    {
      beside: 'drug',
    },
  ),
  row('recalled', format, 'recalled|under recall', { beside: 'lot' }),
  row(
    'injury',
    format,
    'hit head|hit her head|hit his head|hit the head|struck head|struck her head|struck his head|head injury|head strike|fell off table|fell off the table|' +
      'fell from table|fell from the table|fell off chair|fell off the exam table|fell off exam table|fell off the bed|slid off the table|fell to the floor|fell on floor|cardiac arrest|respiratory arrest|collapsed|unresponsive',
  ),
  row(
    'toxicity',
    toxic,
    'LAST symptoms|signs of LAST|LAST protocol|possible LAST|suspected LAST|local anesthetic toxicity|local anesthetic systemic toxicity|metallic taste|ringing in ears|ringing in the ears|ringing in her ears|ringing in his ears|ears ringing|ear ringing|ringing ears|tinnitus|slurred speech|' +
      'slurred|slurring|muscle twitching|twitching|tremor|seizure|seizure like|seizure activity|seized|convulsion|convulsed|tonic clonic|blurred vision|double vision',
  ),
  row(
    'toxicity',
    toxic,
    'perioral numbness|circumoral numbness|perioral tingling|circumoral tingling|tingling around mouth|tingling around the mouth|numb around the mouth|' +
      'lips tingling|lip tingling|tingling lips|tongue numb|numb tongue|tongue numbness|tongue tingling|numbness of the tongue|numbness of tongue|mouth numb',
    { notOnFace: true },
  ),
  row(
    'reaction',
    { source: 'us-label-amide-contraindication', mark: 'Q' },
    'generalized hives|hives|urticaria|welts|generalized rash|itching all over|generalized itching|anaphylaxis|anaphylactic|wheezing|wheeze|wheezy|short of breath|shortness of breath|' +
      'throat tight|throat felt tight|tight throat|throat tightness|throat closing|throat swelling|trouble breathing|difficulty breathing|stridor',
  ),
  row(
    'reaction',
    { source: 'us-label-amide-contraindication', mark: 'Q' },
    'lip swelling|lips swelling|lips swelled|lips swollen|swollen lips|lip swelled|swelling of lips|swelling of the lips|tongue swelling|tongue swelled|swollen tongue|' +
      'face swelling|facial swelling|face swelled|angioedema|eyes swelled shut',
    { notOnFace: true },
  ),
];

/** Names that hold a word of a mishap and mention none. */
export const noMishaps: readonly WordRow[] = [
  {
    name: 'lost to follow-up',
    synonyms: [
      'lost consciousness',
      'lost weight',
      'hair lost',
      'blood lost',
      'hot flash',
      'hot flashes',
      'fire ant',
      'flame figures',
      'burn scar',
      'old burn',
      'sun burn',
      'freezer burn',
      'oxygen saturation',
      'oxygen sat',
      'o2 sat',
      'o2 sats',
      'o2 saturation',
      'hyperbaric oxygen',
      'electronic consent',
      'wet dressing',
      'wet gauze',
      'wet wrap',
      'essential tremor',
      'seizure disorder',
      'febrile seizure',
      'no tissue sent',
      'no biopsy needed',
      'no biopsy today',
      'urticaria pigmentosa',
      'consent for photo not obtained',
    ],
  },
];
