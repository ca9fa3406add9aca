/** What the words about the next step say: somebody has to do something, to look again later, or nothing. */
export type NextKind = 'action' | 'recall' | 'nothing';

const words = (list: string): RegExp => new RegExp(`(?<![a-z])(?:${list})(?![a-z])`, 'i');

const action = words(
  'excis(?:e|ed|ion|ional)|re-?excis(?:e|ion)|mohs|wle|slnb|sentinel|surgery|surgical|refer(?:ral|red|s)?|ed&c|edc|ed and c|curett?(?:age|e)|electrodesiccation|' +
    'desiccation|cryo(?:therapy|surgery)?|ln2|liquid nitrogen|freeze|treat(?:ment)?|start|begin|apply|prescri(?:be|ption)|rx|imiquimod|fluorouracil|5-?fu|efudex|pdt|photodynamic|radiation|' +
    'shave|punch|re-?biopsy|biopsy|bx|rebx|culture|labs?|bloodwork|imaging|ct|mri|pet|ultrasound|x-?ray|patch test(?:ing)?|tumor board|remove|removal|inject(?:ion)?|' +
    'call|order|send|discuss|repeat (?:biopsy|shave|punch|sample|test)|re-?sample|stain|second opinion|consult(?:ation)?|oncology|surgeon|plastics|laser|antibiotics?|topical|steroid|' +
    'genetic|book|obtain|request|notify|inform|resubmit|rework|increase|switch|stop|taper|refill',
);
const recall = words(
  'follow[- ]?up|follow|f/u|fu|fup|rtc|rtn|return|returns|recheck|re-?check|check|checks|skin check|skin exam|exam(?:ination)?|fbse|tbse|fse|tbsc|annual(?:ly)?|yearly|monitor(?:ing)?|' +
    'observe|observation|watch|surveillance|see (?:again|back|in)|seen again|recall|revisit|visit|as needed|prn|review|photo(?:graph)?s?|self[- ]?exam(?:s|ination)?|' +
    'come back|back in|every \\d+|q ?\\d+ ?(?:mo|m|months?|y|yr)|routine|appointment|appt|screening|keep an eye|month|months|year|years|if',
);
/** What the patient or the lesion may do later, and nobody now: "rebiopsy if it grows", not "Mohs if insurance approves". */
const later =
  'needed|necessary|any|it|this|they|there|new|still|lesion|spot|symptom\\w*|worse\\w*|worsen\\w*|recur\\w*|regrow\\w*|regrowth|return\\w*|persist\\w*|change\\w*|changing|grow\\w*|bleed\\w*|' +
  'irritat\\w*|bother\\w*|problem\\w*|concern\\w*|question\\w*|itch\\w*|pain\\w*|not (?:better|healed|healing|resolved|improv\\w*|clear\\w*)|no (?:better|improvement|response)|does not|doesn.?t|flar\\w*|infect\\w*|pigment\\w*';
const waits = words(
  `if (?:the |a |an |pt |patient )?(?:${later})|unless|prn|as needed|when needed|should (?:it|this|the)|only when`,
);
const denied = words(
  'no|not|none|without|nothing|never|don.?t|declin(?:e|ed|es)|unnecessary|already|deferred|needless',
);
const none = words(
  'none|no|nothing|nil|n/a|na|not needed|not required|not indicated|not necessary|unnecessary|reassur\\w*|benign|discharged?|no further|clear(?:ed)?|done|complete|closed|resolved|sunscreen|' +
    'already (?:excised|treated|removed)|stable',
);

const clauses = /[;.,+()\n]|\s(?:and|then|but|&)\s|->|→/gi;
const abbreviation = /\bf\/u\b|\bed&c\b/gi;

/** What a text about the next step says; words that nobody knows are something to do. */
export function nextKind(text: string): NextKind {
  const kept = text.replace(abbreviation, (word) => (word.toLowerCase() === 'ed&c' ? 'edc' : 'follow up'));
  const kinds = new Set(kept.split(clauses).flatMap((clause) => kindOf(clause.trim())));
  return (['action', 'recall', 'nothing'] as const).find((kind) => kinds.has(kind)) ?? 'action';
}

function kindOf(clause: string): readonly NextKind[] {
  if (clause === '') return [];
  if (waits.test(clause)) return ['recall'];
  if (denied.test(clause)) return ['nothing'];
  if (action.test(clause)) return ['action'];
  if (recall.test(clause)) return ['recall'];
  return none.test(clause) ? ['nothing'] : [];
}
