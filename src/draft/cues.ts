import { Trie } from './trie.ts';

/** What a part of a text is about. */
export type Frame =
  | 'preparation'
  | 'anesthetic'
  | 'hemostasis'
  | 'closure'
  | 'dressing'
  | 'specimen'
  | 'depth'
  | 'method'
  | 'lesion'
  | 'question'
  | 'allergy'
  | 'implant'
  | 'medicine'
  | 'condition'
  | 'consent'
  | 'time-out'
  | 'complications'
  | 'aftercare'
  | 'due'
  | 'site'
  | 'margin';

/** How words keep a statement from being one of this visit. */
export type Hold = 'denied' | 'planned' | 'past' | 'other person' | 'report';

export type Cue =
  | { readonly frame: Frame }
  /** Everything to the end of the clause, or of the sentence, or the whole clause. */
  | { readonly hold: Hold; readonly reach: 'after' | 'sentence' | 'clause' }
  /** Parts a clause from the one before it. */
  | { readonly cuts: true }
  /** Says that all or each of several are meant. */
  | { readonly all: true }
  /** Takes back what was said before it. */
  | { readonly corrects: true };

/** A cue of a text, at places `at` to `end` of its words. */
export interface CueAt {
  readonly at: number;
  readonly end: number;
  readonly cues: readonly Cue[];
}

const frames: Readonly<Record<Frame, string>> = {
  preparation:
    'prep|prepped|prepared|preparation|skin prep|cleansed|cleaned|cleanse|disinfected|sterilized|sterilised|scrubbed|swabbed|wiped|antisepsis|washed',
  anesthetic:
    'anesthesia|anaesthesia|anesthetized|anesthetised|anaesthetised|anaesthetized|numbed|numbing|local|infiltrated|infiltration|injected|anesthetic|anaesthetic|injection',
  hemostasis:
    'hemostasis|haemostasis|hemostatic|bleeding|bleeders|oozing|stopped with|controlled with|hemostasis was achieved|coagulated',
  closure:
    'closed|closure|sutured|repaired|approximated|wound was closed|defect was closed|stitched|closing|repair|sutures|suture|stitches|stitch',
  dressing: 'dressed|dressing|bandaged|bandage|covered|dressing applied|wound was dressed|dressings',
  specimen:
    'specimen|specimens|sent|submitted|pathology|path|lab|laboratory|jar|bottle|container|vial|tissue|sample|samples|placed in|placed into|put in|put into|transported|histology|histopathology|dermatopathology|dermpath|in the|into',
  depth: 'depth|down to|to the level of|through|to the depth of|level of|deep to',
  method: 'procedure|biopsy|biopsied|biopsies|technique|performed|removed|excised|removal',
  lesion: 'lesion|lesions|growth|spot|mole',
  question:
    'rule out|r/o|to rule out|concern for|concerning for|suspicious for|suspect|suspected|clinical impression|clinical diagnosis|impression|differential|ddx|differential diagnosis|query|favor|favour|clinically|question of|consistent with|diagnosis|dx|preoperative diagnosis|preop diagnosis|indication|likely|evaluate for',
  allergy: 'allergic|allergies|allergy|reacts to|reaction to|nkda|adverse reactions|sensitivity',
  implant: 'implant|implants|implanted|device|devices',
  medicine:
    'meds|medications|medication|medicines|takes|taking|on|current medications|anticoagulated with|anticoagulation|blood thinners|blood thinner',
  condition: 'conditions|medical history|pmh|past medical history|history|hx|h/o|history of|hx of|has|with',
  consent: 'consent|consented',
  'time-out': 'time-out|timeout|time out',
  complications: 'complications|complication|complications:|tolerated',
  aftercare:
    'wound care|aftercare|after care|post-op instructions|postoperative instructions|instructions|care instructions|written instructions|handout',
  due: 'suture removal|sutures out|stitches out|suture removal in|removal of sutures|sutures to come out|remove sutures|take the sutures out|stitches removed|sutures removed',
  site: 'site|location|sites',
  margin: 'margin|margins',
};

const holds: readonly (readonly [Hold, 'after' | 'sentence' | 'clause', string])[] = [
  [
    'denied',
    'after',
    "no|not|without|never|denies|denied|neither|nor|none of|unable to|instead of|rather than|declined|declines|refused|avoided|didn't|isn't|don't|doesn't|w/o|negative for|did not|no need for|absent",
  ],
  [
    'denied',
    'clause',
    "was not|were not|wasn't|weren't|not used|not needed|not done|not necessary|not required|not indicated|not performed|not placed|not taken|not given|deferred|withheld|not applied|not obtained|unnecessary",
  ],
  [
    'planned',
    'clause',
    "will|would|could|should|may need|might|plan|plans|planned|planning|going to|scheduled|schedule|we'll|he'll|she'll|needs|recommend|recommended|advised|consider|considered|considering|discussed|offered|option|options|next visit|at follow-up|at follow up|follow-up|follow up|followup|return|returns|tomorrow|next week|next month|call|pending|await|awaiting|until|alternatives|risks|gonna|prefer|preferred|wants|asked about|shall|in the future",
  ],
  ['planned', 'sentence', 'if|in case|should it|unless|once|whether'],
  [
    'planned',
    'clause',
    'refer for|refer to|refer her|refer him|referred for|referred to|referral|referral for|referral to|referring to',
  ],
  [
    'report',
    'sentence',
    'pathology report|path report|pathology result|pathology results|path result|path results|biopsy result|biopsy results|lab result|lab results|pathology showed|path showed|pathology shows|path shows|pathology revealed|biopsy showed|biopsy shows|specimen showed|pathology came back|path came back|biopsy came back|result came back|results came back|came back as|came back positive|came back negative|pathology returned|path returned|results show|result shows|result showed|results showed|final pathology|final path|read as|microscopic diagnosis|results reviewed|result reviewed',
  ],
  [
    'past',
    'clause',
    'has had|have had|had had|prior|previous|previously|last year|last month|last week|last visit|years ago|year ago|months ago|weeks ago|days ago|month ago|week ago|days after|weeks after|months after|day after|week after|month after|in the past|formerly|outside|elsewhere|used to|had been|earlier this year|already had|s/p|status post|healed|at birth|in childhood|last time|ago|remote',
  ],
  ['past', 'after', 'history of|hx of|h/o|history|hx|pmh|past medical history'],
  [
    'other person',
    'clause',
    "mother|father|mom|mum|dad|brother|sister|son|daughter|aunt|uncle|grandmother|grandfather|grandma|grandpa|cousin|niece|nephew|wife|husband|spouse|parent|sibling|family history|family|fhx|mother's|father's|sister's|brother's|wife's|husband's|relative|relatives|another patient|roommate|friend|neighbor|neighbour|partner",
  ],
];

const cuts =
  'but|however|although|though|then|while|whereas|because|since|so|today|now|presents|presenting|presented|which|who|after|before|and then|followed by|except';
const alls = 'each|both|all|every|all sites|both sites|each site|all three|bilateral|bilaterally';
const corrections =
  'correction|i mean|i meant|make that|sorry|strike that|scratch that|excuse me|no wait|wait no|rather|let me correct that|correct that|i misspoke|actually make that|my mistake|no sorry|sorry no|actually|no make that|change that to';

function built(): Trie<readonly Cue[]> {
  const trie = new Trie<readonly Cue[]>();
  const add = (words: string, cue: Cue): void => {
    for (const word of words.split('|')) trie.add(word, (before = []) => [...before, cue]);
  };
  for (const [frame, words] of Object.entries(frames)) add(words, { frame: frame as Frame });
  for (const [hold, reach, words] of holds) add(words, { hold, reach });
  add(cuts, { cuts: true });
  // Who was sent here is seen here.
  add('referred to us|referred to me|referred to our', { cuts: true });
  add(alls, { all: true });
  add(corrections, { corrects: true });
  return trie;
}

let made: Trie<readonly Cue[]> | undefined;

/** The words that say what a part of a text is about, and how it is meant. */
export const cueTrie = (): Trie<readonly Cue[]> => (made ??= built());
