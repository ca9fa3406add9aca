import { catalogue } from '../../checks/index.ts';
import { catalogue as sentences } from '../../documents/handout/sentences/index.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Cursor } from './cursor.ts';

/** A value that can be typed in a practice file; one with `row` set is a key with its colon, or a whole `key: value`. */
interface PracticeOffer {
  readonly text: string;
  readonly detail?: string;
  readonly synonyms?: readonly string[];
  readonly row?: true;
}

type Offer = (asked: { readonly tables: Tables; readonly cursor: Cursor }) => readonly PracticeOffer[];

const fixed =
  (...texts: readonly string[]): Offer =>
  () =>
    texts.map((text) => ({ text }));

const authorities: Offer = ({ tables }) =>
  tables.authorities.rows
    .filter(({ choosable }) => choosable)
    .map(({ name, synonyms }) => ({ text: name, synonyms }));

/** Regions first, since a window or a likeness is most often for one. */
const places: Offer = ({ tables }) => {
  const regions = [...new Set(tables.sites.rows.map(({ region }) => region))];
  const names = tables.sites.rows.filter(({ name }) => !regions.some((region) => region === name));
  return [
    ...regions.map((region) => ({ text: region, detail: 'region' })),
    ...names.map(({ name, synonyms, region }) => ({ text: name, synonyms, detail: region })),
  ];
};

const sites: Offer = ({ tables }) =>
  tables.sites.rows.map(({ name, synonyms, region }) => ({ text: name, synonyms, detail: region }));

const ointments: Offer = ({ tables }) => [
  { text: 'none' },
  ...tables.dressings.rows
    .filter(({ ointment }) => ointment === true)
    .map(({ name, synonyms }) => ({ text: name, synonyms })),
];

const preservatives: Offer = ({ tables }) =>
  [...new Set(tables.agents.rows.flatMap((agent) => agent.preservatives.map(({ name }) => name)))].map(
    (text) => ({ text }),
  );

const severityWords = ['error', 'warning', 'information', 'hint', 'off'];

/** The code of a check; after one that is typed its severity. */
const severities: Offer = ({ cursor }) => {
  const typed = /^([a-z-]+\/[a-z0-9-]+)\s*:/.exec(cursor.typed)?.[1];
  return typed === undefined
    ? catalogue.map(({ code, title }) => ({ text: `${code}: `, detail: title, row: true as const }))
    : severityWords.map((word) => ({ text: `${typed}: ${word}`, row: true as const }));
};

const named =
  (language: 'en' | 'es'): Offer =>
  () =>
    [...sentences.values()].map((one) => ({
      text: `${one.id}: `,
      detail: one[language],
      row: true as const,
    }));

/** What is offered in a practice file where the path says more than the reader; the last two keys, or the last one. */
export const practiceOffers: ReadonlyMap<string, Offer> = new Map<string, Offer>([
  ['agents.class', fixed('amide', 'ester')],
  ['authority', authorities],
  ['closed', fixed('Saturday', 'Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'none')],
  ['language', fixed('en', 'es')],
  ['sentences.en', named('en')],
  ['sentences.es', named('es')],
  ['severities', severities],
  ['sites.like', sites],
  ['spelling', fixed('american', 'british')],
  ['stock.preservatives', preservatives],
  ['suture-windows.site', places],
  ['wheal', fixed('1')],
  ['wound-care.first-change', fixed('next morning', '24 hours', '48 hours')],
  ['wound-care.ointment', ointments],
]);
