import type { Fact } from './facts.ts';
import type { Row, Topic } from './files.ts';
import { creamKey, effectKey, limitKey, percentiles, weightKey, windowKey } from './of-tables.ts';

/** The product's name of who publishes, where it is another. */
const authorities: Readonly<Record<string, string>> = {
  'US label': 'US prescribing information',
  'AAD 2016': 'AAD guideline 2016',
  'AAP 2019': 'AAP/AAPD guideline 2019',
  BNFC: 'BNF for Children',
  BNF: 'British National Formulary',
  'Irish label': 'UK and Irish product characteristics',
  'UK label': 'another UK product',
  'UK label 1%': 'another UK product',
  'UK label, second': 'another UK product',
  'export label': 'an export label',
  Australia: 'Therapeutic Guidelines (Australia)',
  'UK textbook': 'ABC of Practical Procedures',
  'US university teaching': 'Emergency Medicine Educational Pearls',
  Medscape: 'Medscape table',
  'Canada dental': 'Canadian dental table',
  Sweden: 'Swedish anesthesia guide',
  'question site': 'examination table',
};

function authorityOf({ agent, authority, age_from_years: from }: Row): string {
  if (agent === 'mepivacaine' && authority === 'UK label') return 'UK medicines reference';
  if (agent === 'levobupivacaine' && authority === 'UK and EU label') return 'UK medicines reference';
  // From 12 years on both books have the same doses, and the tables keep them as those of one.
  if (authority === 'BNFC' && from === '12') return 'British National Formulary';
  return authorities[authority!] ?? authority!;
}

/** Words after the population that narrow nothing that is judged here. */
const plainRest = new Set(['', 'dental', 'chiropody, in 24 hours', 'nerve block']);

const restOf = ({ population }: Row): string => {
  const rest = /, (.*)$/.exec(population!)?.[1] ?? '';
  return plainRest.has(rest) ? '' : `, ${rest}`;
};

const monthsOf = (years: string): number => Math.round(Number(years) * 12);

const ageOf = ({ age_from_years: from, age_below_years: below }: Row): Pick<Fact, 'from' | 'below'> => ({
  ...(from === '' ? {} : { from: monthsOf(from!) }),
  ...(below === '' ? {} : { below: monthsOf(below!) }),
});

const weightOf = ({ weight_from_kg: from, weight_below_kg: below }: Row): string =>
  (from === '' ? '' : `, from ${from} kg`) + (below === '' ? '' : `, below ${below} kg`);

/** Words of a label for "not for them". */
const refusals = new Set(['contraindicated', 'labelled for adults only', 'labelled from', 'not recommended']);

const kgOfPound = 0.45359237;

/** The tables have mg/kg cut to a tenth, where a label has pounds. */
const cut = (mgPerPound: number): string => String(Math.floor((mgPerPound / kgOfPound) * 10) / 10);

/** A dose by pounds as one by kg, and any other as it is. */
function inKg(row: Row): Row {
  const byKg = { quantity: 'dose per weight', unit: 'mg/kg' };
  if (row['unit'] === 'mg/lb') return { ...row, ...byKg, value: cut(Number(row['value'])) };
  if (row['quantity'] === 'weight in lb / 150 of')
    return { ...row, ...byKg, value: cut(Number(row['value']) / 150) };
  return row;
}

function ofLimit(typed: Row): readonly Fact[] {
  const row = inKg(typed);
  const { agent, epinephrine, quantity, value, unit } = row;
  const authority = authorityOf(row);
  if (epinephrine === '')
    return [{ key: `limits / ${agent} / ${authority} / ${quantity}, ${unit}`, value: value!, ...ageOf(row) }];
  if (refusals.has(quantity!))
    return [false, true].map((kind) => ({
      key: limitKey(agent!, kind, authority, 'not recommended'),
      value: 'yes',
      ...ageOf(row),
    }));
  const measured = quantity! + (unit === '' ? '' : `, ${unit}`) + weightOf(row) + restOf(row);
  return [
    { key: limitKey(agent!, epinephrine === 'yes', authority, measured), value: value!, ...ageOf(row) },
  ];
}

const preparations: Readonly<Record<string, string>> = {
  'lidocaine-prilocaine 2.5%/2.5% cream': 'lidocaine-prilocaine cream',
  'lidocaine 4% cream': 'lidocaine cream 4%',
  'lidocaine 5% ointment': 'lidocaine ointment 5%',
  'tetracaine 4% gel': 'tetracaine',
};

/** Populations whose rows are the maxima by age and weight. */
const byAge = /^(?:\d+ (?:to|month)|adult, as studied$|child up to 20 kg, US$)/;

const strengthKey = (agent: string, mgPerMl: number): string =>
  `strengths / ${agent} / ${Number(mgPerMl.toFixed(6))} mg/mL`;

/** Where the rows of the tables begin, in months and kg, for which a named population counts. */
const beginnings: Readonly<Record<string, readonly (readonly [months: number, kg: number])[]>> = {
  'lidocaine cream 4% / under 1 year, UK': [
    [0, 0],
    [3, 0],
  ],
  'lidocaine cream 4% / 1 to 3 months, UK': [[0, 0]],
  'lidocaine cream 4% / 3 to 12 months, UK': [[3, 0]],
  'lidocaine cream 4% / from 1 year, UK': [
    [12, 0],
    [12, 20],
  ],
  'lidocaine cream 4% / child up to 20 kg, US': [
    [0, 0],
    [3, 0],
    [12, 0],
  ],
  'tetracaine / 1 month to 5 years': [[0, 0]],
  'tetracaine / 5 to 18 years': [[60, 0]],
  'tetracaine / adult': [[60, 0]],
  'lidocaine ointment 5% / child': [[0, 0]],
  'lidocaine ointment 5% / adult': [[216, 0]],
};
const judged = new Set(['amount', 'area', 'time', 'lidocaine per weight']);

function ofCream(row: Row): readonly Fact[] {
  const { preparation, population, quantity, value, unit } = row;
  const agent = preparations[preparation!] ?? preparation!;
  if (quantity!.endsWith(' in one gram')) return [{ key: strengthKey(agent, Number(value)), value: 'made' }];
  const minutes = unit === 'h' && quantity === 'time';
  const measured = `${quantity}${unit === '' ? '' : `, ${minutes ? 'min' : unit}`}`;
  const amount = minutes ? String(Number(value) * 60) : value!;
  const rows = judged.has(quantity!) ? beginnings[`${agent} / ${population}`] : undefined;
  if (rows !== undefined)
    return rows.map(([months, kg]) => ({ key: creamKey(agent, months, kg, measured), value: amount }));
  if (!byAge.test(population!) || population!.endsWith('UK'))
    return [{ key: `creams / ${agent} / ${population} / ${measured}`, value: amount }];
  const fromKg = row['weight_from_kg'] === '' ? 0 : Number(row['weight_from_kg']);
  return [{ key: creamKey(agent, monthsOf(row['age_from_years']!), fromKg, measured), value: amount }];
}

const formsOfLidocaine: Readonly<Record<string, readonly string[]>> = {
  cream: ['lidocaine cream 4%', 'lidocaine cream'],
  ointment: ['lidocaine ointment 5%', 'lidocaine cream 5%', 'lidocaine cream'],
  'topical solution': ['lidocaine topical solution'],
};

/** What is made with levonordefrin is an agent of its own. */
const namesOf = ({ agent, use, vasoconstrictor }: Row): readonly string[] => {
  if (vasoconstrictor!.startsWith('levonordefrin')) return [`${agent} with levonordefrin`];
  return agent === 'lidocaine' ? (formsOfLidocaine[use!] ?? [agent]) : [agent!];
};

const ofStrength = (row: Row): readonly Fact[] =>
  namesOf(row).map((name) => ({
    key: strengthKey(name, Number(row['value']) * 10),
    value: 'made',
  }));

/** Anesthetics whose every form holds a sulfite, so that the tables keep one fact for all of them. */
const always = new Set(['procaine', 'mepivacaine with levonordefrin']);

/** E219 is a salt of methylparaben, the name under which allergies are kept. */
const parabensOf = (name: string): string => (name === 'tetracaine' ? 'methylparaben' : 'parabens');

function ofContents({ agent, form, kind, substance, value }: Row): readonly Fact[] {
  if (value === '0') return [];
  const own = form!.startsWith('with levonordefrin') ? `${agent} with levonordefrin` : agent!;
  const name = agent === 'lidocaine-prilocaine' ? 'lidocaine-prilocaine cream' : own;
  const what =
    kind === 'preservative'
      ? `preservative ${substance!.startsWith('parabens') ? parabensOf(name) : substance!.replace(', at most', '')}`
      : `sulfite, ${form!.startsWith('with epinephrine') ? 'with epinephrine' : always.has(name) ? 'plain' : form}`;
  return [{ key: `contents / ${name} / ${what}`, value: 'yes' }];
}

const sutureSources: Readonly<Record<string, string>> = {
  sa: 'clinical-handbook',
  sb: 'suture-handbook',
  sc: 'suture-chart',
  sd: 'plastic-surgery-text',
  se: 'family-practice-guide',
  sf: 'punch-leaflet',
  sg: 'closure-removal-text',
  sh: 'laceration-table',
  sn: 'web-notes',
  ear: 'ear-page',
};

/**
 * Groups of sites that share a window. What a source says of "the trunk" is meant for both of its groups; what it says
 * of the hand is meant for the palm too, unless it has a row for palms, and so for foot and sole.
 */
const groupsOf: Readonly<Record<string, readonly string[]>> = {
  forehead: ['face'],
  eyebrow: ['face'],
  nose: ['face'],
  chest: ['chest or abdomen'],
  abdomen: ['chest or abdomen'],
  trunk: ['chest or abdomen', 'back'],
  hand: ['hand', 'palm'],
  'hand, extensor surface': ['hand'],
  foot: ['foot', 'sole'],
  penis: ['genital'],
  scrotum: ['genital'],
  'joint, extensor surface': ['joint extensor'],
  'joint, flexor surface': ['joint flexor'],
};

interface Window {
  readonly source: string;
  readonly group: string;
  readonly children: boolean;
  readonly from: number;
  readonly to: number;
}

const undersides = new Set(['palm', 'sole']);

const sourceOf = (id: string): string => sutureSources[/^[^-]+/.exec(id)![0]]!;

function windowsOf(rows: readonly Row[]): readonly Window[] {
  const own = new Set(rows.map(({ id, site }) => `${sourceOf(id!)} ${site}`));
  const ends = rows.filter(({ quantity }) => quantity === 'days to');
  return rows
    .filter(({ quantity }) => quantity === 'days from')
    .flatMap(({ id, site, population, value }) => {
      const to = ends.find((end) => end['id'] === id!.replace(/from$/, 'to'));
      const source = sourceOf(id!);
      const groups = (groupsOf[site!] ?? [site!]).filter(
        (group) => group === site || !undersides.has(group) || !own.has(`${source} ${group}`),
      );
      return groups.map((group) => ({
        source,
        group,
        children: population === 'child',
        from: Number(value),
        to: Number(to?.['value']),
      }));
    });
}

const widest = (windows: readonly Window[]): Window => ({
  ...windows[0]!,
  from: Math.min(...windows.map(({ from }) => from)),
  to: Math.max(...windows.map(({ to }) => to)),
});

/** Sites of the face share one window: the widest that a source gives for them. */
function facesAsOne(windows: readonly Window[]): readonly Window[] {
  const others = windows.filter(({ group }) => group !== 'face');
  const faces = windows.filter(({ group }) => group === 'face');
  const sources = new Set(faces.map(({ source, children }) => `${source} ${children}`));
  const one = [...sources].map((name) =>
    widest(faces.filter(({ source, children }) => `${source} ${children}` === name)),
  );
  return [...others, ...one];
}

const handbookSteps = [
  'everywhere else',
  'tension, lower limb, elderly, corticosteroids or diabetes',
  'several risk factors',
];

function ofSutures(rows: readonly Row[]): readonly Fact[] {
  const steps = handbookSteps.map((site) => Number(rows.find((row) => row['site'] === site)?.['value']));
  return [
    ...facesAsOne(windowsOf(rows.filter(({ site }) => !handbookSteps.includes(site!)))).map((one) => ({
      key: windowKey(one.source, one.group, one.children),
      value: `${one.from}-${one.to} d`,
    })),
    ...steps.slice(1).map((days, at) => ({
      key: 'suture windows / suture-handbook / lengthening step',
      value: `${days - steps[at]!} d`,
    })),
    ...rows
      .filter(({ quantity }) => !/^days (?:from|to)$/.test(quantity!))
      .map(({ id, value, unit }) => ({ key: `suture windows / ${id}`, value: `${value} ${unit}` })),
  ];
}

const testsOf: Readonly<Record<string, readonly string[]>> = {
  histology: ['routine histology'],
  culture: ['bacterial culture', 'fungal culture', 'mycobacterial culture'],
  'polymerase chain reaction': ['PCR'],
  // What the sheet of a medium for one test says of the others; polymerase chain reaction has a source of its own.
  'every other test': [
    'routine histology',
    'special stains',
    'immunohistochemistry',
    'bacterial culture',
    'fungal culture',
    'mycobacterial culture',
    'viral culture',
    'electron microscopy',
    'frozen section',
    'gene rearrangement',
  ],
};

const mediumOf: Readonly<Record<string, string>> = { michel: 'Michel', frozen: 'snap-frozen' };

const verdicts: Readonly<Record<string, string>> = { fits: 'serves', 'fits, for a time': 'serves' };

function ofMedium({ id, test, medium, quantity, value, unit }: Row): readonly Fact[] {
  const name = mediumOf[medium!] ?? medium!;
  if (quantity === 'verdict')
    return (testsOf[test!] ?? [test!]).map((one) => ({
      key: effectKey(one, name),
      value: verdicts[value!] ?? value!,
    }));
  if (test === 'direct immunofluorescence' && /^time(?: at room temperature)?$/.test(quantity!))
    return [
      { key: `${effectKey(test, name)} / keeps`, value: `${unit === 'h' ? Number(value) / 24 : value} d` },
    ];
  return [{ key: `media / ${id}`, value: `${value} ${unit}`.trim() }];
}

/** Rows of the files that have a number of the tables for a twin, and how it is written there. */
const twins: Readonly<Record<string, readonly [key: string, value: (row: Row) => string]>> = {
  'lab-routine-to': ['follow-up / expected', ({ value, unit }) => `${value} ${unit}`],
  'tell-benign': ['follow-up / telling', ({ value, unit }) => `${value} ${unit}`],
  'tell-nonmelanoma': ['follow-up / tellingUrgent', ({ place }) => place!],
  'tell-melanoma': ['follow-up / tellingUrgent', ({ place }) => place!],
  'patient-calls-business-days': ['follow-up / result overdue', ({ value }) => `${value} working days`],
  'pressure-to': ['follow-up / pressMinutes', ({ value }) => value!],
  'pressure-times': ['follow-up / pressTimes', ({ value }) => value!],
  'first-dressing': ['follow-up / firstChangeHours', ({ value }) => value!],
  fever: ['follow-up / feverCelsius', ({ value }) => value!],
  'fever-fahrenheit': ['follow-up / feverFahrenheit', ({ value }) => value!],
  'steroid-session': ['follow-up / triamcinolone, session', ({ value }) => `${value} mg`],
  'steroid-per-area': ['follow-up / triamcinolone, cm2', ({ value }) => `${value} mg`],
  'washed-to': ['follow-up / washedTo', ({ value }) => `${value} days`],
  'max-healthy': ['epinephrine / healthy', ({ value, unit }) => `${value} ${unit}`],
  'max-cardiac': ['epinephrine / cardiac', ({ value, unit }) => `${value} ${unit}`],
  'unlock-chloroprocaine': ['epinephrine / unlocksFrom', ({ value }) => `1:${value}`],
  'unlock-bupivacaine': ['epinephrine / unlocksFrom', ({ value }) => `1:${value}`],
  'strongest-dental': ['epinephrine / strongest', ({ value }) => `1:${value}`],
  'buffered-stock-refrigerated': ['epinephrine / bufferedDays', ({ value, unit }) => `${value} ${unit}`],
};

function ofNamed(topic: string, row: Row): Fact {
  const twin = twins[row['id']!];
  if (twin !== undefined) return { key: twin[0], value: twin[1](row) };
  if (row['quantity'] === 'concentration')
    return { key: `epinephrine / ${row['population']}`, value: `${row['value']} ${row['unit']}` };
  return { key: `${topic} / ${row['id']}`, value: `${row['value']} ${row['unit']}`.trim() };
}

/** The tables have the percentiles of `percentiles`, up to 18 years. */
function ofWeight({ age_years: years, sex, quantity, value }: Row): readonly Fact[] {
  const percentile = Number(/\d+$/.exec(quantity!)![0]);
  if (Number(years) > 18 || !percentiles.includes(percentile)) return [];
  return [{ key: weightKey(monthsOf(years!), sex!, percentile), value: Number(value).toFixed(1) }];
}

/** Every number of a file, under the key that its twin in the tables has. */
export function factsOfFile(topic: Topic, rows: readonly Row[]): readonly Fact[] {
  switch (topic) {
    case 'limits':
      return rows.flatMap(ofLimit);
    case 'creams':
      return rows.flatMap(ofCream);
    case 'strengths':
      return rows.flatMap(ofStrength);
    case 'sulfite-and-preservative':
      return rows.flatMap(ofContents);
    case 'suture-windows':
      return ofSutures(rows);
    case 'media':
      return rows.flatMap(ofMedium);
    case 'weights':
      return rows.flatMap(ofWeight);
    case 'follow-up':
    case 'epinephrine':
      return rows.map((row) => ofNamed(topic, row));
  }
}
