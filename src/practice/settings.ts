import type { Severity } from '../note/tree/finding.ts';
import type { Practice } from '../note/generated/types.ts';
import type { Leaf, OpenEntry } from '../note/tree/leaf.ts';
import type { WordTable } from '../note/words/word-table.ts';
import type { AuthorityRow } from '../reference/authorities.ts';
import type { SiteRow } from '../reference/sites.ts';
import { sutureWindows, type PracticeSutureWindow } from '../reference/suture-windows.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { Faults } from './faults.ts';
import { bounded, pressBounds, termBounds, windowBounds } from './bounds.ts';
import { defined, textOf } from './leaves.ts';

/** What a practice tells its patients, in its own words; empty where it says nothing. */
export interface PracticeFacts {
  readonly name: string;
  readonly telephone: string;
  readonly afterHours: string;
  readonly woundCare: WoundCare;
  /** Which of two spellings completions write. */
  readonly spelling: 'american' | 'british';
  /** Language of handouts where the note names none. */
  readonly language: 'en' | 'es';
  readonly handout: HandoutFacts;
}

/** How a practice wants its handouts. */
export interface HandoutFacts {
  readonly largePrint: boolean;
  /** Whether a diagnosis that the patient has been told is in it. */
  readonly diagnosis: boolean;
  /** The practice's own words by the name of the sentence that they replace. */
  readonly sentences: Readonly<Record<'en' | 'es', ReadonlyMap<string, string>>>;
}

/** The wound-care routine of a practice; empty or undefined where it says nothing. */
export interface WoundCare {
  readonly ointment: string;
  readonly firstChange: string;
  readonly open: boolean | undefined;
  readonly pressMinutes: number | undefined;
  readonly pressTimes: number | undefined;
}

/** When something counts as overdue. */
export interface Overdue {
  /** Working days until an ordinary result. */
  readonly result: number;
  /** Days. */
  readonly fungalCulture: number;
  /** Days. */
  readonly mycobacterialCulture: number;
  /** Working days from a result until the patient is told; undefined where the practice does not say. */
  readonly telling: number | undefined;
  /** The same for a diagnosis that can't wait. */
  readonly cancer: number | undefined;
  /** Tries to reach a patient after which a letter is proposed. */
  readonly attempts: number;
}

export const usualFacts: PracticeFacts = {
  name: '',
  telephone: '',
  afterHours: '',
  woundCare: {
    ointment: '',
    firstChange: '',
    open: undefined,
    pressMinutes: undefined,
    pressTimes: undefined,
  },
  spelling: 'american',
  language: 'en',
  handout: { largePrint: false, diagnosis: false, sentences: { en: new Map(), es: new Map() } },
};

export const usualOverdue: Overdue = {
  result: 10,
  fungalCulture: 42,
  mycobacterialCulture: 56,
  telling: undefined,
  cancer: undefined,
  attempts: 3,
};

export function factsOf(practice: Practice, faults: Faults): PracticeFacts {
  const { ointment, firstChange, open, pressMinutes, pressTimes } = practice.woundCare ?? {};
  return {
    name: textOf(practice.name),
    telephone: textOf(practice.telephone),
    afterHours: textOf(practice.afterHours),
    woundCare: {
      ointment: textOf(ointment),
      firstChange: textOf(firstChange),
      open: open?.value,
      pressMinutes: bounded(pressMinutes, pressBounds.minutes, faults),
      pressTimes: bounded(pressTimes, pressBounds.times, faults),
    },
    spelling: choice(practice.spelling, ['american', 'british'], faults) ?? usualFacts.spelling,
    language: choice(practice.language, ['en', 'es'], faults) ?? usualFacts.language,
    handout: handoutOf(practice),
  };
}

function handoutOf({ handout }: Practice): HandoutFacts {
  const { largePrint, diagnosis, sentences } = handout ?? {};
  return {
    largePrint: largePrint?.value ?? false,
    diagnosis: diagnosis?.value ?? false,
    sentences: { en: wordsOf(sentences?.en), es: wordsOf(sentences?.es) },
  };
}

const wordsOf = (entries: readonly OpenEntry[] | undefined): ReadonlyMap<string, string> =>
  new Map((entries ?? []).map(({ name, value }) => [name, textOf(value)]));

/** The terms of the practice; the usual one where its own is out of proportion. */
export function overdueOf({ overdue }: Practice, faults: Faults): Overdue {
  const { result, fungalCulture, mycobacterialCulture, telling, cancer, attempts } = overdue ?? {};
  return {
    ...usualOverdue,
    ...defined({
      result: bounded(result, termBounds.result, faults),
      fungalCulture: bounded(fungalCulture, termBounds.fungalCulture, faults),
      mycobacterialCulture: bounded(mycobacterialCulture, termBounds.mycobacterialCulture, faults),
      telling: bounded(telling, termBounds.telling, faults),
      cancer: bounded(cancer, termBounds.cancer, faults),
      attempts: bounded(attempts, termBounds.attempts, faults),
    }),
  };
}

export type SeverityWord = Severity | 'off';

const severityWords: readonly SeverityWord[] = ['error', 'warning', 'information', 'hint', 'off'];

/** The severities that the practice sets, by code. Whether there is such a check is not known here. */
export function severitiesOf({ severities }: Practice, faults: Faults): ReadonlyMap<string, SeverityWord> {
  const found = new Map<string, SeverityWord>();
  for (const { name, value } of severities ?? []) {
    const word = choice(value, severityWords, faults, 'unknown-severity');
    if (word !== undefined) found.set(name, word);
  }
  return found;
}

/** The authority that sets the ceiling: undefined where the file names none that can. */
export function authorityOf(
  { authority }: Practice,
  authorities: WordTable<AuthorityRow>,
  faults: Faults,
): string | undefined {
  if (authority?.value === undefined) return undefined;
  const row = authorities.find(authority.value);
  if (row?.choosable === true) return row.name;
  const choosable = authorities.rows.filter((one) => one.choosable).map(({ name }) => name);
  faults.add('unknown-authority', authority, { word: authority.value, choices: choosable.join('; ') });
  return undefined;
}

/** The practice's own windows; each for a site, a region or a group of sites that is known. */
export function windowsOf(
  { sutureWindows }: Practice,
  sites: WordTable<SiteRow>,
  faults: Faults,
): readonly PracticeSutureWindow[] {
  return (sutureWindows ?? []).flatMap(({ site, from, to }): PracticeSutureWindow[] => {
    if (site?.value === undefined || from?.value === undefined || to?.value === undefined) return [];
    const name = sites.find(site.value)?.name ?? placeOf(site.value, sites);
    if (name === undefined) faults.unknown('unknown-site', site, site.value, placesOf(sites));
    else if (from.value > to.value)
      faults.add('window-backwards', from, { site: name, from: from.value, to: to.value });
    else if (isWindow(from, to, name, sites, faults)) return [{ site: name, from: from.value, to: to.value }];
    return [];
  });
}

/** Whether stitches may come out on such days at all. */
function isWindow(
  from: Leaf<number>,
  to: Leaf<number>,
  site: string,
  sites: WordTable<SiteRow>,
  faults: Faults,
): boolean {
  if ([from, to].some((day) => bounded(day, windowBounds, faults) === undefined)) return false;
  const usual = publishedDays(site, sites)?.first;
  if (usual === undefined || to.value! >= usual / 2) return true;
  faults.add('out-of-proportion', to, { site, value: to.value!, usual }, 'early');
  return false;
}

/** The first and the last day that any source gives for a site, a region or a group; undefined where none does. */
export function publishedDays(
  place: string,
  sites: WordTable<SiteRow>,
): { readonly first: number; readonly last: number } | undefined {
  const groups = new Set(
    sites.rows
      .filter(({ name, region, group }) => name === place || region === place || group === place)
      .map(({ group }) => group),
  );
  const windows = sutureWindows.filter(({ group }) => groups.has(group));
  if (windows.length === 0) return undefined;
  return {
    first: Math.min(...windows.map(({ from }) => from)),
    last: Math.max(...windows.map(({ to }) => to)),
  };
}

function* placesOf(sites: WordTable<SiteRow>): Generator<string> {
  for (const { region, group } of sites.rows) {
    yield region;
    if (group !== null) yield group;
  }
  yield* sites.words;
}

function placeOf(text: string, sites: WordTable<SiteRow>): string | undefined {
  const plain = plainWord(text);
  for (const place of placesOf(sites)) if (plainWord(place) === plain) return place;
  return undefined;
}

function choice<Word extends string>(
  leaf: Leaf<string> | undefined,
  words: readonly Word[],
  faults: Faults,
  code = 'unknown-choice',
): Word | undefined {
  if (leaf?.value === undefined) return undefined;
  const typed = leaf.value.trim().toLowerCase();
  const known = words.find((word) => word === typed);
  if (known === undefined) faults.add(code, leaf, { word: leaf.value, choices: words.join(', ') });
  return known;
}
