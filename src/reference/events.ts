import type { WordRow } from './types.ts';

/** What may happen after the visit. */
export const events: readonly WordRow[] = [
  { name: 'bleeding', synonyms: ['bleed', 'bled', 'hemorrhage', 'haemorrhage', 'oozing', 'rebleeding'] },
  {
    name: 'infection',
    synonyms: ['infected', 'wound infection', 'surgical site infection', 'cellulitis', 'abscess'],
  },
  {
    name: 'contact rash',
    synonyms: ['rash', 'contact dermatitis', 'dermatitis', 'tape rash', 'tape reaction'],
  },
  { name: 'hematoma', synonyms: ['haematoma', 'bruise', 'bruising', 'ecchymosis'] },
  { name: 'dehiscence', synonyms: ['wound opened', 'wound reopened', 'wound open', 'opened'] },
  {
    name: 'numbness',
    synonyms: ['numb', 'paresthesia', 'paraesthesia', 'tingling', 'nerve injury', 'weakness'],
  },
  {
    name: 'faint',
    synonyms: ['fainted', 'syncope', 'presyncope', 'vasovagal', 'vasovagal syncope', 'collapse'],
  },
  { name: 'raised scar', synonyms: ['keloid', 'hypertrophic scar', 'thick scar'] },
  { name: 'allergic reaction', synonyms: ['anaphylaxis', 'hives', 'urticaria', 'drug reaction'] },
  {
    name: 'anesthetic toxicity',
    synonyms: ['anaesthetic toxicity', 'LAST', 'local anesthetic systemic toxicity'],
  },
  { name: 'pain', synonyms: ['painful', 'soreness'] },
  {
    name: 'wound check',
    synonyms: ['recheck', 'wound review', 'dressing change', 'check', 'follow-up visit'],
  },
  { name: 'suture removal', synonyms: ['stitches out', 'sutures out', 'removal of sutures'] },
  { name: 'steroid injection', synonyms: ['intralesional steroid', 'scar injection'] },
  {
    name: 'call',
    synonyms: ['phone call', 'telephone call', 'telephone', 'message', 'portal message', 'called'],
  },
  { name: 'other', synonyms: [] },
];
