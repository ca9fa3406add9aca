import type { Implant } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Range } from '../../note/tree/tree.ts';
import { asMeant, rowMeant } from '../../note/words/as-meant.ts';
import { isAllDenied, readMentions } from '../../note/words/mentions/read.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import type { Concern, ImplantRow } from '../../reference/implants.ts';
import type { Subject } from '../check.ts';
import { implantNames } from '../lookups.ts';
import { patientTexts, toldIn, type Told } from '../patient-texts.ts';
import { shared } from '../shared.ts';

/** A device that current can harm, and where the note says so or leaves it open. */
export interface Device {
  readonly implant: Pick<Implant, 'where' | 'dependent'>;
  readonly at: Range;
  readonly row: ImplantRow;
  readonly open: boolean;
}

/** What a word may mean that current can harm. */
const atRisk: ReadonlySet<Concern> = new Set<Concern>([
  'forbidden',
  'pacemaker',
  'cochlear',
  'ask',
  'unruled',
]);

/** An entry as one text, so that its place may answer: `{pacemaker: removed 2019}`. */
function entryText({ kind, where }: Implant, { implants }: Subject['tables']): string {
  const typed = kind?.value ?? '';
  const words = asMeant(typed, implants);
  const isRead = phrasesOf(implants).mentionsIn(words).length > 0;
  const device = (isRead ? undefined : rowMeant(implants, typed)?.name) ?? words;
  return where?.value === undefined ? device : `${device}: ${where.value}`;
}

/** The devices of a note, whether they are listed under implants or told elsewhere. */
export const devicesOf = shared((subject): readonly Device[] => {
  const listed: Device[] = [];
  for (const implant of subject.note.patient?.implants ?? []) {
    const at = implant.kind ?? implant.where;
    if (at === undefined) continue;
    for (const { row, answer } of readMentions(
      entryText(implant, subject.tables),
      implantNames(subject.tables),
    ))
      if (answer !== 'denied' && atRisk.has(row.concern))
        listed.push({ implant, at, row, open: answer === 'unclear' });
  }
  const names = implantNames(subject.tables);
  const others = [
    ...patientTexts(subject).told(names),
    ...placesOf(subject).flatMap((leaf) => toldIn(leaf, names)),
  ]
    .filter((told) => isDevice(told) && !listed.some(({ row, open }) => row === told.row && !open))
    .map(({ row, at, answer }): Device => ({ implant: {}, at, row, open: answer === 'unclear' }));
  return [...listed, ...others];
});

/** Where somebody may name a device in passing: among the allergies, or to say where the lesion is. */
const placesOf = ({ note: { patient, procedures = [] } }: Subject): readonly Leaf<string>[] =>
  [
    ...(patient?.allergies ?? []).map(({ to }) => to),
    ...procedures.flatMap(({ site, landmarks, question }) => [site, landmarks, question]),
  ].filter((leaf) => leaf !== undefined);

/** What is before or after PM that says that it is a time of day. */
const timeBefore = /(?:\d|\bAM ?[/&-]? ?|\b(?:the|this|each|every|in|and)) ?$/i;
const timeAfter = /^ (?:dose|meds?|shift|clinic)\b/i;

/** What after ICD says that it is no device: the codes of diseases, and irritant contact dermatitis. */
const noDevice =
  /^[- ]?(?:9|10)\b|^,? (?:of|on) (?:the |both |her |his )?(?:hands?|feet|foot|face|fingers?|skin|arms?|eyelids?|neck|wrists?)\b/;

const isPacemaker = (word: string, before: string, after: string): boolean =>
  word === 'PM' && !timeBefore.test(before) && !timeAfter.test(after);

/** What after CRT says that it is the refill of capillaries. */
const refill = /^\s{0,3}(?:[<>≤=]|(?:under|of|less than) )?\s{0,3}\d{1,4}(?:\.\d{1,3})?\s{0,3}s/i;

/** Whether a short word that may be a device is something else: a code of diseases, a refill time, a time of day. */
export function isOtherShort(word: string, before: string, after: string): boolean {
  if (word === 'ICD') return noDevice.test(after);
  if (word === 'CRT') return refill.test(after);
  return word.toLowerCase() === 'pm' && !isPacemaker(word, before, after);
}

function isDevice({ row, leaf, from, to }: Told<ImplantRow>): boolean {
  const text = leaf.value ?? '';
  return atRisk.has(row.concern) && !isOtherShort(text.slice(from, to), text.slice(0, from), text.slice(to));
}

const saysNothing =
  /^[\s\d.,;:()/-]*(?:(?:in|since|of|the|a|an|and|with|for|has|had|yrs?|years?|ago)[\s\d.,;:()/-]*)*$/i;

/** Whether all that a text names is known elsewhere, and so is no device: "quit smoking 2012", but not "thing for tremor". */
function isOtherThing(text: string, { otherConditions }: Subject['tables']): boolean {
  const mentions = phrasesOf(otherConditions).mentionsIn(text);
  if (mentions.length === 0) return false;
  const between = mentions.map(({ from }, at) => text.slice(mentions[at - 1]?.to ?? 0, from));
  return [...between, text.slice(mentions.at(-1)!.to)].every((rest) => saysNothing.test(rest));
}

/** Whether a text under implants names nothing that is known, not even to deny it. */
export function isUnknown(implant: Implant, { tables }: Subject): boolean {
  if (implant.kind?.value === undefined) return false;
  const text = entryText(implant, tables);
  if (isOtherThing(text, tables)) return false;
  const lookup = implantNames(tables);
  return readMentions(text, lookup).length === 0 && !isAllDenied(text, lookup);
}
