import { rowsIn } from '../../checks/words.ts';
import { daysToFirstChange, isWithoutHelp } from '../../followup/home-care.ts';
import { stitchesLeft } from './dates.ts';
import type { Facts, Section } from './model.ts';
import { inOintments, ointmentWords } from './ointment.ts';
import { listed } from './language.ts';
import type { SiteRow } from '../../reference/sites.ts';
import { isTreated, type Wound } from './wounds.ts';

/** Care of what is open or sewn; nothing for a needle's mark. */
export function careSection(facts: Facts): Section | undefined {
  const { wording } = facts;
  const wounds = facts.wounds.filter(({ leaves }) => leaves === 'wound');
  if (wounds.length === 0) return undefined;
  const sewn = stitchesLeft(facts);
  const dry = wounds.filter((wound) => !isWet(wound));
  const items = [
    ...(alike(wounds) ? [wording.say('care-each')] : []),
    ...(dry.length === 0
      ? []
      : [
          firstDressing(dry, facts),
          wording.say('care-wash'),
          ...ointmentItems(dry, facts),
          ...coverItems(dry, facts),
        ]),
    ...placeItems(wounds, facts),
    ...regionItems(wounds, facts),
    ...reachItems(wounds, facts),
    ...(dry.length === 0 ? [] : [wording.say('care-water')]),
    ...(sewn ? [wording.say('care-rest'), wording.say('care-stretch')] : []),
    ...painItems(facts),
  ];
  return { heading: wording.say('care-title'), items };
}

/** Care of what was frozen, heated or painted: washing, and leaving blister and scab alone. */
export function treatedSection(facts: Facts): Section | undefined {
  const { wording } = facts;
  const treated = facts.wounds.filter(isTreated);
  if (treated.length === 0) return undefined;
  const dry = treated.filter((wound) => !isWet(wound));
  const dressed = treated.some((wound) => wound.dressed);
  const isOnly = !facts.wounds.some(({ leaves }) => leaves === 'wound');
  return {
    heading: wording.say('treated-title'),
    items: [
      ...(treated.some(({ leaves }) => leaves === 'chemical') ? [wording.say('treated-chemical')] : []),
      ...(dressed ? [wording.say('treated-cover')] : []),
      ...(dry.length === 0 ? [] : [wording.say('treated-wash')]),
      ...(dry.length === 0 || dressed ? [] : [wording.say('treated-open')]),
      wording.say('treated-scab'),
      ...treatedPlaces(treated, facts),
      ...regionItems(treated, facts),
      ...(isOnly ? painItems(facts) : []),
    ],
  };
}

/** What places ask for apart from how a bandage holds there. */
const treatedPlaces = (treated: readonly Wound[], facts: Facts): readonly string[] =>
  placeItems(
    treated.filter((wound) => isWet(wound) || wound.reading?.base.dressable === 'yes'),
    facts,
  );

/** Whether there are several wounds that are cared for in the same way. */
const alike = ([first, ...others]: readonly Wound[]): boolean =>
  first !== undefined && others.length > 0 && others.every((other) => kindOf(other) === kindOf(first));

const kindOf = ({ held, covered, leaves, reading }: Wound): string =>
  [held.join('+'), covered, leaves, reading?.base.dressable].join(' ');

/** Mouth, rim of the lid, inside of nose and ear: no place for soap and ointment. The red of the lip bears both. */
const isWet = ({ reading }: Wound): boolean =>
  reading?.base.earCanal === true ||
  (reading?.base.dressable === 'no' && reading.base.mucosa && !reading.base.name.includes('vermilion'));

/** When the first dressing comes off, or how long a wound without one stays dry. */
function firstDressing(wounds: readonly Wound[], { tables, wording }: Facts): string {
  const covered = wounds.some((wound) => wound.covered);
  const { firstChange } = tables.practice.woundCare;
  const id = (when: string): string => `care-${covered ? 'first' : 'dry'}-${when}`;
  if (firstChange === '') return wording.say(id('hours'), { hours: tables.aftercare.firstChangeHours.value });
  const hours = /\b(\d{1,3})\s*(?:h|hrs?|hours?)\b/i.exec(firstChange)?.[1];
  if (hours !== undefined) return wording.say(id('hours'), { hours });
  const days = daysToFirstChange(firstChange);
  if (days === 1) return wording.say(id('morning'));
  if (days !== undefined && days > 1) return wording.say(id('days'), { days });
  // The practice's own words are in its own language.
  if (wording.language !== tables.practice.language) return wording.say(id('asked'));
  return wording.say(id('other'), { when: firstChange });
}

const isGlued = ({ held }: Wound): boolean => held.includes('glue') || held.includes('strips');

function ointmentItems(wounds: readonly Wound[], facts: Facts): readonly string[] {
  const { ointment, wording, avoided, tables } = facts;
  const name = ointment.kind === 'none' ? undefined : ointment.name;
  const avoid = inOintments(avoided, tables).map((one) => ointmentWords(one, wording.language) ?? one);
  return [
    ...(wounds.every(isGlued)
      ? []
      : [name === undefined ? wording.say('care-no-ointment') : ointmentItem(name, facts)]),
    ...(avoid.length === 0 ? [] : [wording.say('care-avoid', { things: listed(avoid, wording.language) })]),
    ...(wounds.some(({ held }) => held.includes('glue')) ? [wording.say('care-glue')] : []),
    ...(wounds.some(({ held }) => held.includes('strips')) ? [wording.say('care-strips')] : []),
  ];
}

/** Which ointment; one for which there is no word is named only in the practice's own language. */
function ointmentItem(name: string, { wording, tables }: Facts): string {
  const own = wording.language === tables.practice.language ? name : undefined;
  const ointment = ointmentWords(name, wording.language) ?? own;
  return ointment === undefined
    ? wording.say('care-ointment-asked')
    : wording.say('care-ointment', { ointment });
}

function coverItems(wounds: readonly Wound[], { tables, wording, avoided }: Facts): readonly string[] {
  const holds = wounds.some(({ reading }) => coverOf(reading?.base.dressable) !== 'none');
  const cover = tables.practice.woundCare.open === true ? 'care-open' : 'care-cover';
  return [
    ...(holds ? [wording.say(cover)] : []),
    ...(avoided.allergens.has('adhesive') ? [wording.say('care-no-tape')] : []),
  ];
}

/** Whether a dressing can be told to be put there; what is not known holds one. */
const coverOf = (dressable: 'yes' | 'hair' | 'fold' | 'no' = 'yes'): 'some' | 'none' =>
  dressable === 'yes' || dressable === 'fold' ? 'some' : 'none';

const byDressable: Readonly<Record<'yes' | 'hair' | 'fold' | 'no', string | undefined>> = {
  yes: undefined,
  hair: 'place-hair',
  fold: 'place-fold',
  no: 'place-uncovered',
};

/** What is particular to the places, each once. */
function placeItems(wounds: readonly Wound[], { wording }: Facts): readonly string[] {
  const ids = wounds.flatMap((wound) => {
    if (wound.reading === undefined) return [];
    const { dressable, friction, nearEye, slowHealing } = wound.reading.base;
    return [
      isWet(wound) ? 'place-wet' : byDressable[dressable],
      friction === undefined ? undefined : `place-${friction}`,
      nearEye ? 'place-eye' : undefined,
      slowHealing ? 'place-slow' : undefined,
    ];
  });
  return [...new Set(ids)].flatMap((id) => (id === undefined ? [] : wording.say(id)));
}

/** What is said of a wound by where it is, beside how a dressing holds there. Common practice. */
const adviceByPlace: readonly (readonly [applies: (site: SiteRow) => boolean, ...ids: readonly string[]])[] =
  [
    [({ region, mucosa, name }) => region === 'mouth' && (mucosa || name.includes('lip')), 'mouth-food'],
    [
      ({ region, mucosa, name }) => region === 'mouth' && mucosa && !name.includes('vermilion'),
      'mouth-rinse',
    ],
    [isGenital, 'genital-wash', 'genital-sex'],
    [(site) => isGenital(site) && !isAnal(site), 'genital-urine'],
    [isAnal, 'anal-stool'],
    [({ region }) => region === 'nail', 'nail-raise', 'nail-grows'],
    [({ region, nearEye }) => region === 'eye' && nearEye, 'place-lid'],
    [({ region }) => region === 'scalp', 'scalp-wash'],
  ];

function isGenital({ region }: SiteRow): boolean {
  return region === 'genital';
}

function isAnal({ name }: SiteRow): boolean {
  return name === 'perianal skin' || name === 'natal cleft';
}

/** Advice for the places of the wounds, each once. */
function regionItems(wounds: readonly Wound[], { wording }: Facts): readonly string[] {
  const ids = wounds.flatMap(({ reading }) =>
    adviceByPlace.flatMap(([applies, ...said]) =>
      reading !== undefined && applies(reading.base) ? said : [],
    ),
  );
  return [...new Set(ids)].map((id) => wording.say(id));
}

/** Where a wound is out of reach and the note says that nobody helps. */
const reachItems = (wounds: readonly Wound[], { note, tables, wording }: Facts): readonly string[] =>
  isWithoutHelp(note, tables) && wounds.some(({ reading }) => reading?.base.outOfReach === true)
    ? [wording.say('care-reach')]
    : [];

/** What makes acetaminophen a matter for the clinician. */
const notForAcetaminophen = /acetaminophen|paracetamol|liver|hepat|cirrho/i;

function painItems({ note: { patient }, wording }: Facts): readonly string[] {
  const said = [
    ...(patient?.allergies ?? []).map(({ to }) => to?.text ?? ''),
    ...(patient?.conditions ?? []).map(({ text }) => text),
  ];
  return said.some((text) => notForAcetaminophen.test(text)) ? [] : [wording.say('care-pain')];
}

/** What need not worry anybody. */
export function normalSection(facts: Facts): Section {
  const { wounds, wording } = facts;
  const numbed = numbedIn(facts);
  const open = wounds.some(({ leaves }) => leaves === 'wound');
  const blisters = wounds.some(({ leaves }) => leaves === 'frozen' || leaves === 'chemical');
  const mouth = numbed && wounds.some(({ reading }) => reading?.base.region === 'mouth');
  return {
    heading: wording.say('normal-title'),
    items: [
      ...(numbed ? [wording.say('normal-numb')] : []),
      ...(mouth ? [wording.say('place-mouth')] : []),
      wording.say('normal-sore'),
      ...(open ? [wording.say('normal-ooze')] : []),
      ...(blisters ? [wording.say('normal-blister-blood')] : []),
      ...(wounds.some(isTreated) ? [wording.say('normal-color')] : []),
      ...(wounds.some(({ steroid }) => steroid) ? [wording.say('normal-steroid')] : []),
      ...(wounds.some((wound) => stains(wound, facts)) ? [wording.say('normal-dark')] : []),
    ],
  };
}

/** Whether an anesthetic was injected: a spray or a cream wears off before the patient leaves. */
function numbedIn({ note, tables }: Facts): boolean {
  const given = [
    note.anesthetic ?? [],
    ...(note.procedures ?? []).map(({ anesthetic }) => anesthetic ?? []),
  ].flat();
  return given.some(({ volume, agent, product }) => {
    const row = tables.agents.find(agent?.value ?? '');
    const known = agent?.value !== undefined || product?.value !== undefined;
    return known && volume?.value !== undefined && row?.form !== 'spray' && row?.class !== 'none';
  });
}

const stains = ({ procedure }: Wound, { tables }: Facts): boolean =>
  (procedure.hemostasis ?? []).some((leaf) =>
    rowsIn(tables.hemostasis, leaf).some((row) => row.stains === true),
  );
