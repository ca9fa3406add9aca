/** Sources of care at home. */
export const aftercareSources = {
  'leaflet-press-twice':
    'practice leaflet on care after a skin biopsy: press 20 minutes without looking, once more, then call; first dressing left for 24 hours',
  'leaflet-fever':
    'cancer center and practice leaflets on care after a skin biopsy: call for 101 °F (38.3 °C) or more, spreading redness, pus, streaks, growing pain',
  'freezing-pages':
    'published aftercare pages on freezing of skin lesions: a blister, clear or with blood, is left closed; washing is allowed, no bandage is needed; the scab falls off by itself; color may stay changed',
  'steroid-injection-pages':
    'published pages on injection of corticosteroids into scars: thin skin, a dent, lighter or darker skin, for months or for good',
  'accp-anticoagulants':
    'American College of Chest Physicians, perioperative antithrombotic guideline, restated by a university page and in J Dtsch Dermatol Ges 2015;13:346-356: minor skin procedures, warfarin and aspirin go on',
};
