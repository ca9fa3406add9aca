import type { Severity } from '../../note/tree/finding.ts';
import type { Sourced } from '../../reference/types.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

type Row = readonly [
  what: string,
  severity: Severity,
  title: string,
  why: string,
  messages: Check['messages'] | string,
];

const sources: readonly Sourced[] = [format];

const rows: readonly Row[] = [
  [
    'unknown-severity',
    'warning',
    'A word that is not a severity',
    'The check keeps its own severity, though the practice wanted another.',
    '“{word}” is not a severity, so this setting does nothing. Write one of: {choices}.',
  ],
  [
    'unknown-check',
    'warning',
    'A severity for a check that does not exist',
    'A misspelled code sets nothing, and the check that was meant keeps its own severity.',
    {
      main: 'There is no check {word}, so this setting does nothing. Copy the code from a finding.',
      nearest: 'There is no check {word}, so this setting does nothing. Did you mean {nearest}?',
    },
  ],
  [
    'lowered-danger',
    'warning',
    'A danger that the practice wants to lower or turn off',
    'What can hurt the patient stays an error in every practice. The clinician can accept it in the note, with the reason.',
    '{word} is a danger, or says that not all was judged, so its errors stay errors here. Remove this line.',
  ],
  [
    'looser-limit',
    'error',
    'A dose limit that is looser than the published one, without an approval',
    'A practice may tighten a limit freely. Loosening it needs a name, a day and a reason, and every summary then says so.',
    {
      mgPerKg:
        '{value} mg/kg of {product} is more than the ceiling of {most} mg/kg, so it is not used. Lower it, or write `approved` with by, on and reason.',
      capMg:
        '{value} mg of {product} is more than the ceiling of {most} mg, so it is not used. Lower it, or write `approved` with by, on and reason.',
      none: 'No limit is published for {product}, so this one is not used by itself. Write `approved` with by, on and reason.',
    },
  ],
  [
    'looser-follow-up',
    'error',
    'A setting of follow-up that is looser than usual, without an approval',
    'Without these limits nobody notices a missing result or a patient who was never told. Loosening what watches over them needs a name, a day and a reason, and every summary then says so.',
    {
      severity:
        '{what} is {usual} by itself and would be {own}, so this is not used. Take it out, or write `follow-up-approved` with by, on and reason.',
      term: '{own} until {what} are more than twice the usual {usual}, so the usual is used. Lower it, or write `follow-up-approved` with by, on and reason.',
      window:
        'The window for {what} ends on {own}, more than twice the published {usual}, so it is not used. Lower it, or write `follow-up-approved` with by, on and reason.',
    },
  ],
  [
    'loosening-ignored',
    'information',
    'A loosened limit that restricted mode leaves out',
    'Whoever writes a folder that is not trusted must not be able to loosen a limit. The ceiling applies until the folder is trusted.',
    {
      followUp: 'In restricted mode {own} for {what} is not used. Trust this folder to use it.',
      severities:
        'In restricted mode the severities of the practice are not used, so every check keeps its own. Trust this folder to use them.',
      main: 'In restricted mode the limit for {product} is not used. Trust this folder to use it.',
      authority:
        'In restricted mode the ceilings of US prescribing information apply beside those of {authority}. Trust this folder to go by the latter alone.',
    },
  ],
  [
    'limit-without-number',
    'error',
    'A dose limit without a number or an anesthetic',
    'The practice wanted a limit of its own, and none is in force.',
    {
      main: 'This limit for {agent} has no number, so nothing is limited. Write `max-mg-per-kg`, `max-mg` or both.',
      agent: 'This limit names no anesthetic, so nothing is limited. Write `agent`.',
    },
  ],
  [
    'shadowed-word',
    'warning',
    'A word that Wheal knows already',
    'A known word keeps its meaning, so that no practice file can make a checked word an unchecked one.',
    '“{word}” is known already, as {known}, and keeps that meaning. Remove it, or choose another word.',
  ],
  [
    'word-unjudged',
    'information',
    'A word of the practice of which only the name is known',
    'A note may use it without being asked, but what follows from it cannot be checked, and silence about it says nothing.',
    {
      sites:
        'Only the name of “{word}” is known. Write `like` with a known site, so that side, dressing and suture window are checked.',
      dressings:
        'Only the name of “{word}” is known: no check compares it with allergies. Write `{name: {word}, adhesive: yes}`, or no.',
      media: 'Only the name of “{word}” is known: no check says which tests it suits.',
      materials: 'Only the name of “{word}” is known: it counts as a suture that must come out.',
      preparations:
        'Only the name of “{word}” is known: no check compares it with allergies, sparks or the eye. Write `{name: {word}, flammable: yes}`, or no.',
      hemostasis:
        'Only the name of “{word}” is known: no check compares it with devices, allergies or the site. Write `{name: {word}, current: yes}`, or no.',
    },
  ],
  [
    'unknown-agent',
    'error',
    'An anesthetic that is not known',
    'A product or limit for an agent that is not known is not in force, though the practice relies on it.',
    {
      main: '“{word}” is not a known anesthetic, so this entry is not used. Write its generic name.',
      nearest: '“{word}” is not a known anesthetic, so this entry is not used. Did you mean {nearest}?',
    },
  ],
  [
    'unknown-generic',
    'warning',
    'A trade name for a word that is not known',
    'A name without a known generic word is unknown in every note, and no allergy or dose is checked for it.',
    {
      main: '“{word}” is not a known generic word, so this trade name is not read. Write the generic name of a drug, dressing or material.',
      nearest:
        '“{word}” is not a known generic word, so this trade name is not read. Did you mean {nearest}?',
    },
  ],
  [
    'incomplete-agent',
    'error',
    'An anesthetic of the practice that is not described in full',
    'An agent that Wheal does not know is judged by the practice alone, so it needs class, limit, source and the person responsible for it.',
    '{agent} is not used yet, since something is missing: {missing}.',
  ],
  [
    'unknown-authority',
    'error',
    'An authority that sets no ceiling',
    'The default ceiling is used, which may be looser than the one that the practice wants.',
    '“{word}” cannot set the ceiling, so US prescribing information does. Write one of: {choices}.',
  ],
  [
    'repeated-product',
    'error',
    'A product name for two products',
    'A note that names the product would be judged by the first, and the second may be stronger.',
    '“{product}” is in stock twice. Give each product a name of its own; until then the first counts.',
  ],
  [
    'product-differs',
    'error',
    'A product whose name contradicts its entry',
    'Whoever writes the name in a note means what it says, and the dose would be judged by the entry.',
    {
      agent:
        '“{product}” names {named}, and its entry has {own}, so the product is not used. Correct the name or the entry.',
      strength:
        '“{product}” says {named}, and its concentration is {own}, so the product is not used. Correct the name or the entry.',
      epinephrine:
        '“{product}” says {named}, and its entry has {own}, so the product is not used. Correct the name or the entry.',
    },
  ],
  [
    'out-of-proportion',
    'error',
    'A number of the practice that is out of proportion',
    'A slip in a term would put off what is overdue, or call everything overdue, and stitches would come out of a wound that is not ready.',
    {
      main: '{value} {what} is out of proportion, so the usual number is used. Write one from {low} to {high}.',
      early:
        'The window for stitches of the {site} ends on day {value}, less than half of the first published day, {usual}, so it is not used. Correct its days.',
    },
  ],
  [
    'unknown-site',
    'warning',
    'A body site that is not known',
    'What the practice says of this site does not reach any note.',
    {
      main: '“{word}” is not a known site or region, so this is not used. Write the name of a known one.',
      nearest: '“{word}” is not a known site or region, so this is not used. Did you mean {nearest}?',
    },
  ],
  [
    'window-backwards',
    'error',
    'A suture window that ends before it begins',
    'No day is in it, so the published window is used instead.',
    'The window for {site} runs from day {from} to day {to}. Swap the two days, or correct one.',
  ],
  [
    'unknown-day',
    'warning',
    'A closed day that is neither a weekday nor a date',
    'The day counts as open, and patients may be asked to come then.',
    {
      main: '“{word}” is neither a weekday nor a date. Write a weekday such as Saturday, or a date such as 2026-12-25.',
      nearest: '“{word}” is neither a weekday nor a date. Did you mean {nearest}?',
    },
  ],
  [
    'holidays-unread',
    'warning',
    'A calendar of holidays that was not read in full',
    'Its days count as open, and patients may be asked to come then.',
    {
      main: 'The calendar “{word}” was not read, so its days count as open. Name it from the folder of this file, or write the dates under `closed`.',
      restricted:
        'In restricted mode the calendar “{word}” is not read, so its days count as open. Trust this folder to have it read.',
      none: 'The calendar “{word}” has no all-day event, so it closes no day. Check the file, or write the dates under `closed`.',
      some: '{count} events of “{word}” repeat, have a clock time or a date that can’t be read, and count as open. Write their dates under `closed`.',
    },
  ],
  [
    'unknown-sentence',
    'warning',
    'A sentence of the practice that replaces none',
    'The handout keeps its own words, though the practice wanted others; a gap that nothing fills is printed with its braces.',
    {
      main: 'The handout has no sentence called {word}, so this one is not used. The editor offers the names.',
      nearest: 'The handout has no sentence called {word}, so this one is not used. Did you mean {nearest}?',
      gap: 'Nothing fills in “{word}” here, and its braces would be printed as they are. Remove them.',
      gaps: 'Nothing fills in “{word}” here, and its braces would be printed as they are. This sentence can use: {choices}.',
    },
  ],
  [
    'unknown-choice',
    'warning',
    'A word that is not one of the choices',
    'The default is used instead.',
    '“{word}” is not one of the choices here, so it is not used. Write one of: {choices}.',
  ],
];

/** Faults of the practice file itself. They are noticed where the file is laid over the tables. */
export const checks: readonly Check[] = rows.map(([what, severity, title, why, messages]) => ({
  code: `practice/${what}`,
  severity,
  title,
  why,
  sources,
  messages: typeof messages === 'string' ? { main: messages } : messages,
}));
