/** Sources of wound closure and suture removal. */
export const closureSources = {
  'punch-leaflet': 'practice leaflet on punch biopsy, suture removal by site',
  'clinical-handbook': '5-Minute Clinical Consult, recommended suture removal times',
  'suture-handbook': 'web suture handbook, table of suture removal for adults and children',
  'suture-chart': 'WikEM, Sutures, chart of removal by site',
  'plastic-surgery-text': 'plastic surgery web textbook, suture removal',
  'family-practice-guide': 'family practice suture guide, table by site',
  'closure-removal-text': 'emergency medicine text, closure removal',
  'web-notes': 'web notes on wound closure, days to removal',
  'lengthened-window':
    'the days of a source for the site, lengthened as in a web suture handbook for at most two reasons',
  'practice-file': "the practice's own file",
  'ear-page': 'secondary page on ear wounds',
  'laceration-table':
    'Am Fam Physician, laceration repair, timing of suture removal (Forsch 2008; Forsch et al. 2017), from memory',
  'vulval-biopsy-page': 'DermNet, vulval biopsy (2016): nylon taken out after 5 to 7 days',
  'labiaplasty-page':
    'patient page on stitches of the labia that do not dissolve, taken out after 7 to 10 days',
  'vulva-textbook':
    "Ridley's The Vulva, ch. 7: absorbable stitches, no adhesive dressing, gauze held by underwear; formalin, and transport medium for immunofluorescence",
  'tissue-glue-reference':
    'Medscape drug reference, 2-octyl cyanoacrylate: not on mucosa, near the eye or in dense hair, not under tension (knuckles, elbows)',
  'tissue-glue-leaflets':
    'two leaflets on wounds closed with tissue glue: no ointment or other liquid on the film, no tape straight on it',
  'punch-closure-2005':
    'Christenson et al., Arch Dermatol 2005;141:1093-1099: 4 mm and 8 mm punch wounds, sutured or left open',
};
