import type { Sourced } from './types.ts';

/** Words that are written beside a word of the trade and change nothing that a check judges. */
export interface QualifierRow extends Sourced {
  /** The table beside whose words they are written; `any` for every table. */
  readonly table: string;
  readonly words: readonly string[];
}

const beside = (table: string, words: string): QualifierRow => ({
  table,
  words: words
    .trim()
    .split(/\s*[|\n]\s*/)
    .filter((word) => word !== ''),
  source: 'common',
  mark: 'common',
});

/**
 * None of them names anything that a check looks for, nor denies a danger: a test compares them with the tables of
 * agents, implants and blood thinners, and with the words for heat and current.
 */
export const qualifiers: readonly QualifierRow[] = [
  beside(
    'any',
    `
    a|an|the|of|with|w|by|in|into|on|onto|at|to|for|from|under|over|after|before|via|using|through|per|as|during|until|upon
    and|plus|then|followed by|also|both|only|alone|just|first|next|finally|initially|thereafter|along with|together with
    was|were|is|are|be|been|being|it|its|this|that|these|which|her|his|their|our|my|patient|patient's|pt|we|i
    applied|used|done|performed|placed|obtained|given|taken|made|achieved|completed|carried out|provided|utilized|employed|put on
    site|sites|wound|wounds|area|areas|skin|lesion|procedure
    x|approximately|approx|about|roughly|ca|one|two|three|four|five|six|seven|eight|nine|ten|fifteen|single
    light|lightly|firm|firmly|gentle|gently|brief|briefly|small|large|medium|standard|usual|regular|new|fresh
    well|good|adequate|adequately|sufficient|sufficiently|was sufficient|satisfactory|complete|completely|fully|entirely
    minimal|minimally|careful|carefully|sterile|clean|as usual|in the usual way|in standard fashion|in the usual fashion|each|all|total
    uneventful|uneventfully|without difficulty|without complication|without complications|tolerated well
    with good result|with good effect|successfully|today|same day
    `,
  ),
  beside(
    'closures',
    `
    heal|heals|healed|healing|on its own|left|allowed|edges|approximated|wound edges|necessary|needed|required|not required|not needed|buried
    skin|surface|deep|running|interrupted|simple|suture|sutures|stitch|stitches|closed with|repaired with|repair|closure
    `,
  ),
  beside(
    'consents',
    `
    informed|consent|consents|consented|gave|form|forms|signed|on file|in chart|in the chart|scanned|copy|witnessed|risks|benefits|alternatives
    discussed|explained|reviewed|discussion|after discussion|questions answered|all questions answered|yes|out loud|aloud|said yes
    agreed|agrees|understands|understood|wishes to proceed|for today's procedure|paper|in person|bleeding|infection|scar|scarring
    recurrence|nerve damage|prior to|including
    `,
  ),
  beside(
    'depths',
    `
    down|down to|middle|middle of|through|reached|reaching|extends|extending|extended|level|depth|layer|visible|seen|exposed|not entered|just|upper|to the level of
    `,
  ),
  beside(
    'dressings',
    `
    thin|layer|thick|amount|generous|liberal|held|held with|secured|secured with|covered|covered with|topped with|wrapped|dressed with
    white|plain|dry|nonlatex|latex-free|latex free|sized|cut to size|overlying|snug|loose|loosely|snugly|supportive underwear
    finger|toe|ear|scalp|roll|rolled|kept dry|on top|24 hours|for 24 hours|for 48 hours|hours|hour|days|day
    `,
  ),
  beside('events', 'visit|routine|planned|scheduled|minor|mild|slight|reported|noted|mild to moderate'),
  beside(
    'hemostasis',
    `
    hemostasis|haemostasis|bleeding controlled|bleeding stopped|bleeding|controlled|stopped|with gauze|gauze|minutes|direct|manual|held
    tip|swab|applicator|stick|sticks|pen|soln|solution|topical|excellent|good hemostasis|base|at the base|of the base|to the base|vessel|vessels|bleeder|bleeders
    no electric current|no electric current was used|no electrical current|no current|no electricity|handheld|hand-held|battery|low power
    absorbable|low setting|no bleeding|minimal bleeding|needed|required|with good hemostasis|ties not needed|closure
    `,
  ),
  beside('layers', 'layer|layers|stitches|sutures|closure|suture|stitch'),
  beside(
    'materials',
    'suture|sutures|stitch|stitches|suture material|undyed|dyed|clear|black|blue|violet|white|monofilament',
  ),
  beside(
    'media',
    `
    container|containers|bottle|bottles|jar|jars|cup|vial|vials|specimen|labeled|labelled|buffered|neutral|neutral buffered
    little|moistened|a little|small amount|amount|filled with|prefilled|moist|wet
    `,
  ),
  beside(
    'methods',
    `
    biopsy|biopsies|bx|sample|off|shallow|mucosal|technique|blade|flexible|flexible blade|razor|razor blade|scalpel|number 15 blade|15 blade|disposable|dermatome
    whole lesion|whole mole|entire lesion|lesion removed completely|removed completely|removed|side by side|at the base|base|of the base
    superficial|broad|form|in the form of|elliptical|small ellipse|ellipse|forceps|scissors|with scissors|tool|instrument|curved|for diagnosis|diagnostic
    lesional|perpendicular|to the skin|size|diameter|margin|margins|narrow|narrow margins|clinical margin|with clinical margins
    `,
  ),
  beside(
    'preparations',
    `
    prepped|prep|prepped with|cleaned|cleansed|cleaned with|cleansed with|wiped|wiped with|wipe|wipes|swab|swabs|swabbed|pad|pads|stick|scrub|scrubbed|painted
    let dry|allowed to dry|allowed to dry completely|allowed to dry fully|air dried|air dry|dried|dry|drying|dried fully|dries|left to dry
    mucosal|soln|solution|rinsed|rinsed with|draped|sterile drape|drape|fashion|manner|field
    `,
  ),
  beside(
    'relations',
    `
    from|new|new spot|spot|plaque|patch|papule|sore|ulcer|blister|rash|lesion's|beside|adjacent|center|normal-looking|normal looking|near
    old|older|early|fresh
    `,
  ),
  beside(
    'tests',
    `
    direct|sent|sent for|request|requested|please|tissue|stains|stain|staining|stained|culture|cultures|cx|processing|permanent|sections|section|levels
    vertical|horizontal|vertical sections|horizontal sections|transverse|immunostain|immunostains|immunohistochemistry panel|rush|urgent|half|halves|each half
    `,
  ),
  beside(
    'recalls',
    `
    months|month|mo|mos|years|year|yr|yrs|weeks|week|wk|wks|days|day|yearly|annual|annually|every|q|monthly|twice|half|later|time|times
    as needed|prn|if needed|if any change|if anything changes|sooner|sooner if needed|or sooner if needed|or|should|if|concerns|changes|change|recurs
    recurrence|any|back|here|us|me|clinic|office|dermatology|other|further|routine|otherwise|only
    `,
  ),
];
