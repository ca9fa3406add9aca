import type { AgentDose, DoseJudgement, Given } from '../../dose/judge.ts';
import { mgText, percentText, productText } from '../../dose/words.ts';
import type { Aftercare, Closure, Injection, Note, Procedure, Specimen } from '../../note/generated/types.ts';
import { isRunning } from '../../followup/sutures.ts';
import type { Tables } from '../../practice/tables.ts';
import { saidGeneric, saidGenericList } from '../generic.ts';
import { joined, said, saidAs, saidList, saidYesNo } from '../from-note.ts';
import type { Fact } from './model.ts';

/** What the note says of one procedure, in the order in which the trade tells it. */
export function factsOf(
  procedure: Procedure,
  note: Note,
  dose: DoseJudgement | null,
  tables: Tables,
): readonly Fact[] {
  const facts: readonly (readonly [topic: string, label: string, text: string | undefined])[] = [
    ['site', 'Site', siteOf(procedure)],
    ['lesion', 'Lesion', said(procedure.lesion)],
    ['question', 'Clinical question', said(procedure.question)],
    ['consent', 'Consent', said(note.consent)],
    ['time-out', 'Time-out', said(note.timeOut)],
    ['preparation', 'Preparation', preparationOf(procedure, tables)],
    ['anesthesia', 'Anesthesia', anesthesiaOf(procedure.anesthetic, dose, tables)],
    ['method', 'Method', methodOf(procedure)],
    ['injected', 'Injected', injectedOf(procedure.injected)],
    ['hemostasis', 'Hemostasis', saidGenericList(procedure.hemostasis, tables.hemostasis)],
    [
      'closure',
      'Closure',
      joined(
        (procedure.closure ?? []).map((one) => closureOf(one, tables)),
        '; ',
      ),
    ],
    [
      'specimen',
      'Specimen',
      joined(
        (procedure.specimen ?? []).map((one) => specimenOf(one, tables)),
        '; ',
      ),
    ],
    ['dressing', 'Dressing', saidGenericList(procedure.dressing, tables.dressings)],
    ['complications', 'Complications', said(procedure.complications)],
    ['remarks', 'Remarks', joined([saidList(procedure.remarks), saidList(note.remarks)], '; ')],
    ['codes', 'Codes', saidList(procedure.codes)],
    ['aftercare', 'Aftercare', aftercareOf(note.aftercare)],
  ];
  return facts.flatMap(([topic, label, text]) =>
    text === undefined ? [] : [{ topic, text: `${label}: ${text}` }],
  );
}

/** Injections and applications with their mg and their share of the limit; undefined where there is none. */
export function anesthesiaOf(
  injections: readonly Injection[] | undefined,
  dose: DoseJudgement | null,
  tables: Tables,
): string | undefined {
  return joined(
    (injections ?? []).map((injection) => injectionOf(injection, dose, tables)),
    '; ',
  );
}

function injectionOf(
  injection: Injection,
  dose: DoseJudgement | null,
  { agents }: Tables,
): string | undefined {
  const counted = countedOf(injection, dose);
  const meant = counted?.given.product === undefined ? undefined : `(${productText(counted.given)})`;
  const words = [
    saidGeneric(injection.agent, agents),
    said(injection.concentration),
    epinephrineOf(injection),
  ];
  const name = said(injection.product);
  const drug = joined(name === undefined ? [...words, meant] : [name, meant, ...words], ' ');
  return joined([
    drug,
    saidYesNo(injection.preservativeFree, 'preservative-free', 'with preservative'),
    joined([said(injection.volume) ?? said(injection.amount), counted && worked(counted)], ' '),
    saidAs('on', injection.area),
    saidAs('put on', injection.on),
    saidAs('taken off', injection.off),
    bufferedOf(injection),
    saidAs('lot', injection.lot),
    saidAs('expires', injection.expires),
    said(injection.route),
    saidAs('at', injection.time),
  ]);
}

/** Drugs that were injected and are no anesthetics, each with its strength, volume and area; undefined where there is none. */
export const injectedOf = (entries: Procedure['injected']): string | undefined =>
  joined(
    (entries ?? []).map(({ drug, concentration, volume, area, lot, expires }) =>
      joined([
        joined([said(drug), said(concentration), said(volume)], ' '),
        saidAs('into', area),
        saidAs('lot', lot),
        saidAs('expires', expires),
      ]),
    ),
    '; ',
  );

function epinephrineOf({ epinephrine }: Injection): string | undefined {
  if (epinephrine?.value?.microgramsPerMl === 0) return 'plain';
  return saidAs('with epinephrine', epinephrine)?.replace(/[µμ]g|\bug\b/g, 'mcg');
}

function bufferedOf({ buffered, mixedOn }: Injection): string | undefined {
  if (buffered?.value?.buffered === false) return 'not buffered';
  const parts = buffered?.value?.parts;
  const how =
    buffered?.value !== undefined && parts === undefined ? 'buffered' : saidAs('buffered', buffered);
  return joined([how, saidAs('mixed on', mixedOn)], ' ');
}

interface Counted {
  readonly given: Given;
  readonly agent: AgentDose;
}

/** What was worked out for an injection, of the visit or of a later day. */
function countedOf(injection: Injection, dose: DoseJudgement | null): Counted | undefined {
  for (const day of dose === null ? [] : [dose, ...dose.later])
    for (const agent of day.agents) {
      const given = agent.given.find((one) => one.injection === injection);
      if (given !== undefined) return { given, agent };
    }
  return undefined;
}

function worked({ given: { mg }, agent: { limitMg } }: Counted): string {
  const share = limitMg === Infinity ? '' : `, ${percentText(mg / limitMg)}% of its limit`;
  return `(${mgText(mg)} mg${share})`;
}

function siteOf({ site, landmarks, photo, relation, sameAs }: Procedure): string | undefined {
  return joined([
    said(site),
    said(landmarks),
    said(relation),
    saidAs('same site as specimen', sameAs),
    saidYesNo(photo, 'photograph taken', 'no photograph'),
  ]);
}

function preparationOf({ preparation, dry }: Procedure, { preparations }: Tables): string | undefined {
  return joined([saidGenericList(preparation, preparations), saidYesNo(dry, 'dry', 'not dry')]);
}

function methodOf({ method, size, margin, depth, instrument }: Procedure): string | undefined {
  return joined([
    said(method),
    said(size),
    saidAs('margin', margin),
    saidAs('to', depth),
    saidAs('with', instrument),
  ]);
}

function closureOf(
  { how, material, size, technique, count, layer }: Closure,
  { closures, materials }: Tables,
): string | undefined {
  const what = joined([
    saidGeneric(how, closures),
    joined([said(size), saidGeneric(material, materials)], ' '),
    said(technique),
    stitchesSaid(count, technique),
  ]);
  return joined([layer && `${said(layer) ?? ''} layer`, what], ': ');
}

/** How many stitches; of a running suture the number counts threads and is shown as typed. */
export function stitchesSaid(count: Closure['count'], technique?: Closure['technique']): string | undefined {
  if (count?.value === undefined || isRunning({ technique })) return saidAs('count', count);
  return `${count.value} ${count.value === 1 ? 'stitch' : 'stitches'}`;
}

function specimenOf(specimen: Specimen, { media }: Tables): string | undefined {
  return joined([
    said(specimen.label),
    notSentOf(specimen),
    saidAs('label on', specimen.labelOn),
    saidAs('collected', specimen.collected),
    saidAs('orientation:', specimen.orientation),
    mediumOf(specimen, media),
    saidList(specimen.tests),
    saidAs('to', specimen.laboratory),
    saidAs('request', specimen.requisition),
    saidAs('sent', specimen.sent),
  ]);
}

function mediumOf({ medium }: Specimen, media: Tables['media']): string | undefined {
  const text = saidGeneric(medium, media);
  return text === undefined ? undefined : `in ${text}`;
}

export function notSentOf({ notSent }: Specimen): string | undefined {
  const text = said(notSent);
  if (text === undefined) return undefined;
  return /^not sent\b/i.test(text) ? text : `not sent: ${text}`;
}

const languages: Readonly<Record<string, string>> = { en: 'English', es: 'Spanish' };

function languageOf(language: Aftercare['language']): string | undefined {
  const name = languages[language?.value?.toLowerCase() ?? ''];
  return name === undefined ? saidAs('in language', language) : `in ${name}`;
}

function aftercareOf(aftercare: Aftercare | undefined): string | undefined {
  return joined([
    saidList(aftercare?.given),
    saidAs('to', aftercare?.to),
    languageOf(aftercare?.language),
    saidAs('helper at home', aftercare?.helper),
  ]);
}
