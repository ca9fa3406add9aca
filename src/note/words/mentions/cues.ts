/**
 * Words that say how a danger that a text names is meant. Published ground: the triggers of NegEx (Chapman 2001,
 * negation and the terms that end its reach) and of ConText (Harkema 2009, the past and other persons). The short
 * forms of US clinics and the kinds of danger are Wheal's own.
 */

/** Kinds of danger that are spoken of in the same words. */
export type Kind = 'allergy' | 'implant' | 'condition' | 'medicine' | 'use' | 'event';

/** What a word does for the names in its clause. */
export type Does =
  /** Denies what follows it. */
  | 'denies'
  /** Says as a whole that there is nothing, and governs nothing after it. */
  | 'none'
  /** Says that it is over: removed, stopped, cured. */
  | 'ended'
  /** Says that it was had without harm. */
  | 'tolerated'
  /** Says that it is not known for sure. */
  | 'doubt'
  /** Takes back that it is over or denied: not removed, replaced, not tolerated. */
  | 'keeps'
  /** Puts it into the past: what lasts is said all the same. */
  | 'past'
  /** Begins what is of another person: FHx. */
  | 'family'
  /** Another person, who may have it or may mention it. */
  | 'relative'
  | 'subject'
  /** What a person does who mentions it. */
  | 'tells'
  /** What follows is what a denial leaves out. */
  | 'except'
  | 'contrast'
  /** What follows was asked about. */
  | 'asked'
  | 'verb'
  | 'auxiliary'
  | 'place'
  | 'reaction'
  | 'yes'
  | 'or'
  | 'and'
  /** Says nothing before or after a name. */
  | 'filler'
  /** Says nothing after a name: "latex allergy". */
  | 'tail'
  /** Goes on about the person before the comma: "his wife, who has". */
  | 'which'
  /** Begins words that say when, how or why, and not of what. */
  | 'trail';

export interface CueWords {
  readonly does: Does;
  /** The kinds of danger for which it does so; absent where for all. */
  readonly kinds?: readonly Kind[];
  /** Whether it may be an answer after what it is about. */
  readonly answers?: true;
  /** Whether it may be an order rather than an answer: "no latex". */
  readonly orders?: true;
  /** Whether it denies what the clause before it says: "tolerates procaine, not lidocaine". */
  readonly turns?: true;
  readonly words: string;
}

const relatives =
  "husband's|wife's|father's|mother's|brother's|sister's|son's|daughter's|technician|" +
  'father|mother|dad|mom|mum|brother|sister|son|daughter|aunt|uncle|grandmother|grandfather|grandma|grandpa|grandparent|' +
  'cousin|niece|nephew|wife|husband|spouse|parent|sibling|twin|fiance|boyfriend|girlfriend|roommate|relative|' +
  'stepfather|stepmother|maternal|paternal|in family|caregiver|guardian';

export const cueWords: readonly CueWords[] = [
  {
    does: 'denies',
    answers: true,
    words:
      'denies|denied|denies any|n/a|negative|neg|none|nil|never|absent|ruled out|excluded|not present|no sign|not found|not there',
  },
  { does: 'denies', answers: true, words: 'no|not any' },
  { does: 'denies', kinds: ['allergy'], orders: true, words: 'no|not any' },
  { does: 'denies', turns: true, words: 'not|not with|not to|not on' },
  {
    does: 'denies',
    words:
      'denying|without|w/o|negative for|neg for|no evidence of|without evidence of|no sign of|no history of|no h/o|no hx of|no hx|' +
      'no past history of|no prior|no personal history of|denies history of|denies h/o|denies hx of|denies having|no known|no known history of|' +
      "never had|never has had|never having had|had no|has not had|have not had|hasn't had|haven't had|did not have|didn't have|" +
      "does not have|doesn't have|do not have|don't have|has no|have no|with no|w no|free of|absence of|not known to have|neither|" +
      'ruled out for|labs ruled out|workup negative for|never developed|reports no|states no|not have|not having|' +
      'never diagnosed with|not diagnosed with|no diagnosis of|lacks|no personal hx of|denies personal history of|denies past',
  },
  {
    does: 'denies',
    kinds: ['allergy'],
    words:
      "not allergic to|never allergic to|isn't allergic to|is not allergic to|denies being allergic to|no allergy to|no allergies to|" +
      'no known allergy to|no known allergies to|no known drug allergies to|denies allergy to|denies allergies to|denies any allergy to|denies any allergies to|' +
      'no reaction to|no adverse reaction to|no allergic reaction to|never had a reaction to|never had reaction to|never reacted to|' +
      "did not react to|didn't react to|does not react to|no sensitivity to|without reaction to|denies reaction to|denies sensitivity to|no adverse reactions to|" +
      'no hx of reaction to|no history of reaction to|no rxn to',
  },
  { does: 'denies', kinds: ['allergy'], answers: true, words: 'not allergic|no allergy|not an allergy' },
  {
    does: 'denies',
    kinds: ['medicine'],
    words:
      "not on|is not on|not currently on|not taking|is not taking|not currently taking|does not take|doesn't take|do not take|don't take|" +
      'never took|never taken|never on|has never taken|no longer on|no longer takes|no longer taking|no longer uses|denies taking|' +
      'denies use of|denies using|takes no|not using|does not use|stopped taking|no current use of',
  },
  { does: 'denies', kinds: ['implant', 'condition'], words: 'no longer has|no longer have' },
  {
    does: 'denies',
    kinds: ['implant'],
    answers: true,
    words:
      'never placed|not placed|never implanted|not implanted|never inserted|not inserted|declined|no longer in place|no longer present',
  },
  {
    does: 'denies',
    kinds: ['use'],
    words:
      'avoid|avoiding|avoids|instead of|rather than|in place of|told not to use|told not to|told to avoid|do not use|did not use|not using|no need for|no need of|no longer|if|kept away from|away from|kept out of',
  },
  {
    does: 'denies',
    kinds: ['use'],
    answers: true,
    words:
      'put away|set aside|not used|not needed|not done|not necessary|not applied|not required|not available|unit not used|avoided|declined|refused|stopped|discontinued|removed|contraindicated|held|left off|replaced',
  },
  {
    does: 'none',
    words:
      'nkda|nka|nkfa|nkma|no known drug allergy|no known allergy|no known drug or food allergy|no known medication allergy|no allergies|no drug allergies|no medication allergies|' +
      'no known drug allergies|no known allergies|denies allergies|denies any allergies|denies all allergies|denies drug allergies|none known|' +
      'no implants|no implanted devices|denies implants|no medical problems|no medical history|no meds|no medications|no daily meds|no pmh|no conditions|healthy',
  },
  {
    does: 'ended',
    kinds: ['implant'],
    answers: true,
    words:
      'removed|explanted|explant|explantation|taken out|removal|removal of|explant of|explantation of|extracted|extraction|surgically removed|' +
      'was removed|out|came out',
  },
  {
    does: 'ended',
    kinds: ['condition'],
    answers: true,
    words:
      'resolved|cured|in remission|has resolved|gone|in complete remission|no recurrence|fully recovered|recovered',
  },
  {
    does: 'ended',
    kinds: ['medicine'],
    answers: true,
    words:
      "off|off of|now off|stopped|discontinued|d/c|d/c'd|dc'd|dc|d/ced|quit|completed|finished|weaned off|taken off|came off|ended|no longer|not anymore|not any more",
  },
  {
    does: 'tolerated',
    kinds: ['allergy'],
    answers: true,
    words:
      'tolerates|tolerated|tolerating|has tolerated|tolerated well|well tolerated|ok|okay|fine|ok with|fine with|okay with|does fine with|does well with|' +
      'did fine with|did well with|safe|safe with|without reaction|without problem|without issue|without incident|without trouble|no reaction|no problem|no issue|no trouble|no problem with|' +
      'no issue with|no trouble with|without any reaction|uneventful|can have|can use|tested negative|test negative|negative test|' +
      'patch test negative|patch test neg|skin test negative|skin test neg|negative patch test|negative skin test|challenge negative|negative challenge|cleared|good with|uses without problem',
  },
  {
    does: 'doubt',
    words:
      'possible|possibly|suspected|suspect|suspects|suspicion of|suspicious for|questionable|question of|probable|probably|likely|maybe|perhaps|may have|' +
      'might have|may be|might be|could be|could have|unsure|not sure|unsure about|unsure if|unsure whether|not sure about|not sure if|not sure whether|unconfirmed|' +
      'not confirmed|unverified|not verified|thinks|thinks so|believes|r/o|rule out|rules out|to rule out|not ruled out|not been ruled out|' +
      "has not been ruled out|have not been ruled out|not excluded|did not rule out|didn't rule out|should be ruled out|to be ruled out|must be ruled out|can be ruled out|" +
      "cannot be ruled out|can't be ruled out|can not be ruled out|cannot rule out|can't rule out|cannot exclude|can't exclude|can not exclude|unlikely|not likely|" +
      'less likely|doubtful|not certain|not certain if|not certain whether|uncertain|uncertain if|evaluate for|evaluation for|eval for|work up for|workup for|test for|testing for|tested for|' +
      'not necessarily|concern for|concerned for|concern about|concerned about|workup pending|work up pending|pending|results pending|unknown|not known|unclear|query|vs|versus|' +
      "does not know|doesn't know|not documented|cannot recall|can't recall|cannot remember|can't remember|does not recall|does not remember|doesn't remember|no one knows|" +
      'presumed|presumptive|borderline|equivocal|inconclusive|indeterminate|rule-out|ask again|to be clarified|not tested|never tested|needs testing|low suspicion for|no treatment for|no new symptoms of|not clear',
  },
  {
    does: 'doubt',
    kinds: ['use'],
    words:
      'allergy|allergic|allergies|reaction|reacted|reacts|rash|hives|because of|due to|next time|would|will|plan|planned|future|switched from|changed from|changing from',
  },
  {
    does: 'verb',
    kinds: ['use'],
    words:
      'put|put on|covered|covered with|dressed|dressed with|cleaned|coated|changed to|switched to|reapplied',
  },
  { does: 'doubt', kinds: ['allergy'], words: 'outgrew|outgrown|has outgrown|grew out of' },
  {
    does: 'doubt',
    kinds: ['implant'],
    words:
      'turned off|switched off|deactivated|disconnected|planned|no issues with|no problems with|no issue with|no problem with|no trouble with',
  },
  {
    does: 'doubt',
    kinds: ['condition', 'medicine'],
    words:
      'held|holding|on hold|switched from|no issues with|no problems with|ran out of|ran out|never misses|never missed',
  },
  {
    does: 'keeps',
    words:
      "not removed|never removed|was never removed|was not removed|wasn't removed|not yet removed|not explanted|never explanted|not taken out|not resolved|has not resolved|" +
      "hasn't resolved|never resolved|not cured|not held|not stopped|did not stop|didn't stop|has not stopped|hasn't stopped|never stopped|not discontinued|no change in|" +
      "forgot to mention|failed to mention|did not mention|didn't mention|had not mentioned|not mentioned|never mentioned|denied earlier|denied at first|denied initially|initially denied|" +
      "not tolerated|does not tolerate|did not tolerate|cannot tolerate|can't tolerate|can not tolerate|doesn't tolerate|didn't tolerate|not able to tolerate|" +
      'unable to tolerate|no longer tolerates|never tolerated|hardly tolerates|barely tolerates|poorly tolerates|poorly tolerated|badly tolerated|tolerated poorly|tolerated badly|tolerates poorly|' +
      "intolerant|intolerant of|not ok|not okay|not fine|not safe|cannot have|can't have|can not have|must not have|should not have|do not give|do not use|don't use|no longer safe|" +
      'not dependent|non dependent|not pacer dependent|not off|' +
      'leads in place|leads remain|leads left|lead left|leads still|leads stay|wires left|wires in place|retained leads|retained lead|abandoned leads|abandoned lead|still in place|still there|' +
      'still has|still present|still on|still takes|no doubt|recurred|came back|relapsed|not negative|not denied|cannot deny|still being treated',
  },
  {
    does: 'keeps',
    kinds: ['medicine'],
    words: 'restarted|resumed|back on',
  },
  {
    does: 'keeps',
    kinds: ['implant'],
    words:
      'to be removed|removal planned|planned removal|scheduled for|scheduled for removal|removal scheduled|awaiting removal|needs removal|will be removed|' +
      'reimplanted|re-implanted|re implanted|new one|new device|new unit|new system|replaced|replacement placed|upgraded|exchanged|no issues|no problems|no events|no complaints|not checked|not interrogated|no shocks|never fired|no card|not available',
  },
  {
    does: 'past',
    words:
      'history of|h/o|hx of|hx|history|past|prior|previous|previously|former|formerly|had|remote|old|as a child|in childhood|years ago|in the past|' +
      'used to have|used to take|used to be on|past history of|past medical history of|pmh|pmhx|pmh of|childhood|once|before',
  },
  {
    does: 'family',
    words:
      'family history of|family history|family hx of|family hx|fam hx of|fam hx|fhx|fhx of|fh|fh of|famhx|fam history|fam history of|f/h|runs in family|family member|family members|family',
  },
  { does: 'relative', words: relatives },
  {
    does: 'which',
    words: 'who has|who had|who also has|who wears|who takes|who is on|who got|whose',
  },
  { does: 'past', kinds: ['medicine'], words: 'was on|was taking|had been on|had been taking' },
  { does: 'subject', words: 'pt|patient|he|she|both|self|herself|himself|them|they' },
  {
    does: 'tells',
    words:
      'says|said|states|stated|reports|reported|reporting|notes|noted|mentions|mentioned|told us|tells us|told|tells|confirms|confirmed|adds|added|called|calls|recalls|remembers|claims|insists|called back|endorses|per|according to',
  },
  {
    does: 'except',
    words:
      'except|except for|excepting|other than|apart from|aside from|besides|with the exception of|with exception of|save for|excluding|outside of|not counting|barring',
  },
  {
    does: 'contrast',
    words:
      'but|however|although|though|then|now|yet|whereas|while|nevertheless|nonetheless|even so|instead|only',
  },
  { does: 'contrast', kinds: ['use'], words: 'so|therefore|thus|hence' },
  {
    does: 'asked',
    words:
      'asked about|asked re|asked regarding|asked for|asked|asked again about|asked specifically about|screened for|incl|including|includes|include|specifically|such as|checked for|re|regarding|also asked about|includes no|question about|questions about',
  },
  {
    does: 'verb',
    words:
      'has|have|reports having|admits|admits to|presents|presents with|presented|causes|caused|cause|gets|get|got|gave|gives|give|does|did|takes|take|took|taking|started|starts|' +
      'start|continues|continue|diagnosed|diagnosed with|dx|dx with|lives|lives with|uses|used|using|applied|placed|implanted|inserted|made|makes|make|turned|breaks|developed|develops|reacts|' +
      'reacted|react|allergic|wears|receives|received|shows|showed|found|felt|feels|needs|checked|interrogated|fired|since|s/p|status post|positive|positive for|pos|pos for|known to have|' +
      'with|w|wants|came|underwent|lists|avoid|avoids|documented|per chart|untreated|followed|daily|bid|qhs|this morning|on|c/o|complains of|noted to have|found to have|itches|swells|swelled|burns|burned|blistered|itched',
  },
  { does: 'auxiliary', words: 'is|was|were|are|be|been|has been|have been|had been|being|came back as' },
  {
    does: 'auxiliary',
    kinds: ['implant'],
    words: 'offered|recommended|discussed|considered',
  },
  {
    does: 'auxiliary',
    kinds: ['condition'],
    words:
      'resected|excised|removed|treated|resection|resection of|excision of|s/p resection|s/p resection of|status post resection of|s/p excision of|ablated|operated',
  },
  {
    does: 'place',
    words:
      'left|right|l|r|lt|rt|chest|abdomen|abdominal|side|arm|leg|ear|ears|shoulder|neck|belly|upper|lower|bilateral|b/l|behind|under|buttock|clavicle|subclavian|pectoral',
  },
  {
    does: 'reaction',
    kinds: ['allergy'],
    words:
      'hives|rash|swelling|anaphylaxis|anaphylactic|itching|itch|itchy|blister|wheezing|wheeze|dermatitis|redness|angioedema|urticaria|welts|eczema|throat swelling|red|burning|palpitations|syncope|fainting|nausea|reaction|' +
      'contact dermatitis|racing heart|shock|sob|trouble breathing|edema|swollen|pustules|flushing|vomiting|peeling|skin tears',
  },
  { does: 'yes', words: 'yes|y|present|in place|positive|confirmed|true' },
  { does: 'or', words: 'or|nor|and/or' },
  { does: 'and', words: 'and|plus|&' },
  {
    does: 'filler',
    words:
      "yrs|years|year|yr|months|month|mo|weeks|week|wks|days|the|a|an|any|his|her|their|my|this|that|these|those|also|too|again|all|really|just|so|to|of|as|it|well|very|patient's|pt's|there|" +
      'implanted|implantable|cardiac|permanent|severe|serious|significant|major|known|other|drug|medication|food|local|electronic|internal|current|currently|recent|recently|real|true|further|additional|documented|' +
      'diagnosed|formal|definite|definitely|kind of|type of|sort of|kind|type|medical|anything|absolutely|certainly|previously|personal|using|having|taking|use of|ever|actually|per pt|per patient|per record|by report|self|at|specifically',
  },
  {
    does: 'tail',
    words:
      'at all|whatsoever|of any kind|of any type|either|known|reported|noted|currently|at present|at this time|today|so far|ever|listed|documented|on file|per pt|per patient|per chart|anymore|any more|many times|since|several times|before|multiple times|then',
  },
  {
    does: 'tail',
    kinds: ['allergy'],
    words:
      'allergy|allergies|allergic reaction|allergic reactions|reaction|reactions|sensitivity|sensitivities|intolerance|intolerances|trouble|problem|issue|adr|rxn|hypersensitivity',
  },
  {
    does: 'tail',
    kinds: ['implant'],
    words:
      'placement|placed|implant|implants|implanted|implantation|device|devices|inserted|in place|present|put in|ever placed|in situ',
  },
  {
    does: 'tail',
    kinds: ['use'],
    words: 'used|applied|given|needed|required|done|necessary|on hand|available',
  },
  {
    does: 'denies',
    kinds: ['condition'],
    answers: true,
    words: 'normal|tested normal|wnl|within normal limits',
  },
  {
    does: 'tail',
    kinds: ['condition'],
    words:
      'disease|syndrome|disorder|phenomenon|diagnosis|symptoms|tested|test|tests|level|levels|screen|screening|activity',
  },
  { does: 'tail', kinds: ['medicine'], words: 'use|therapy|currently|now|usage|anymore' },
  {
    does: 'trail',
    words:
      'before|prior to|when asked|on exam|this visit|by|per|on|at|in|for|due to|because of|because|after|during|from|following|last year|last month|last week|ago|years ago|months ago|in the past|early|late|surgically|completely|by cardiology|with|when|as|not replaced|no replacement|without replacement|without complication|leads out|leads out too|leads removed|with leads|and leads|spring|summer|fall|winter',
  },
];
