/** Where published sources differ: what is followed here, and which keys of the practice file follow another. */
interface Difference {
  readonly codes: readonly string[];
  /** How the sources differ, and which is followed. */
  readonly how: string;
  /** Keys of the practice file, a key inside of another behind a point; none where nothing may follow another. */
  readonly settings: readonly string[];
}

const severities = ['severities'];

export const differences: readonly Difference[] = [
  {
    codes: ['dose/over-limit', 'dose/near-limit'],
    how: 'Limits of the same anesthetic differ by half and more between countries and texts, and so does the weight that counts in obesity. The text of one authority is followed, US prescribing information where the practice chooses none, with the actual weight; nothing is averaged.',
    settings: ['authority', 'limits'],
  },
  {
    codes: ['dose/advisory-passed', 'dose/other-countries'],
    how: 'Guidelines and other countries give less than the ceiling. The ceiling of the practice’s authority is followed, and each of the others is named beside it.',
    settings: ['authority', 'limits', 'severities'],
  },
  {
    codes: ['dose/agents-mixed'],
    how: 'Labels do not recommend mixing, teaching adds the shares of the limits, a hospital stops at the first maximum. The shares are added.',
    settings: severities,
  },
  {
    codes: ['dose/epinephrine-total'],
    how: 'A textbook allows 500 µg, dental teaching 200 µg and 40 µg with heart disease; labels give no maximum. The dental ones are followed.',
    settings: severities,
  },
  {
    codes: ['dose/epinephrine-end-artery'],
    how: 'Reviews and trials hold epinephrine safe in fingers, toes, nose and ears; a monograph and one review do not. The reviews are followed: only Raynaud and vascular disease are told of.',
    settings: severities,
  },
  {
    codes: ['dose/epinephrine-care'],
    how: 'For the same medicines one text asks for care and another forbids epinephrine. Care is asked for.',
    settings: severities,
  },
  {
    codes: ['dose/epinephrine-does-not-unlock', 'dose/buffered-old'],
    how: 'A study found more than 90% of the epinephrine left in buffered stock after two weeks in the cold; other pages tell of a quarter lost in each week. The study is followed.',
    settings: severities,
  },
  {
    codes: ['dose/volume-for-site'],
    how: 'Sources inject 1 to 3 mL, 2 to 5 mL, or 4 mL into a finger and 6 mL into a toe; 8 to 12 mL around an ear; 6 to 10 mL or up to 20 mL around a penis. The greatest is followed.',
    settings: severities,
  },
  {
    codes: ['closure/removal-early', 'closure/removal-late', 'follow-up/sutures-overdue'],
    how: 'Days to removal differ by site up to fourfold. One leaflet on punch biopsies gives the usual days, and only a day outside of every source is a warning.',
    settings: ['suture-windows'],
  },
  {
    codes: ['closure/odd-suture-size'],
    how: 'Texts differ by a step: 3-0 to 5-0 in trunk and limbs, 3-0 to 5-0 in the foot. All of them count as usual, and one step beyond.',
    settings: severities,
  },
  {
    codes: ['record/missing-lesion', 'record/missing-question'],
    how: 'Asked what a request needs, clinicians name three items and pathologists ten. What laboratories ask for in writing is followed.',
    settings: severities,
  },
  {
    codes: ['follow-up/result-overdue'],
    how: 'Leaflets ask patients to call after 10 working days, a practice calls after 14 days, laboratories promise 1 to 3 working days. Ten working days are followed.',
    settings: ['overdue.result', 'overdue.fungal-culture', 'overdue.mycobacterial-culture'],
  },
  {
    codes: ['follow-up/not-told', 'follow-up/attempts-only'],
    how: 'A published practice tells of benign results within a day and of cancers on the same day; others take longer. The days are those of the practice, or else working days of this tool.',
    settings: ['overdue.telling', 'overdue.cancer'],
  },
  {
    codes: ['method/melanoma-sample'],
    how: 'A table of 2005 forbids every shave; the academy and the network allow one below the plane of the lesion. The latter are followed.',
    settings: severities,
  },
  {
    codes: ['method/blister-sample'],
    how: 'Most laboratories want skin beside the blister, an older one the edge of the blister. Both pass.',
    settings: severities,
  },
  {
    codes: ['specimen/too-long-in-medium'],
    how: 'One laboratory keeps Michel medium at room temperature for 5 days, another in the cold for 7 and refuses it warm. The shorter time is followed.',
    settings: severities,
  },
  {
    codes: ['specimen/small-for-immunofluorescence'],
    how: 'Laboratories want 4 to 5 mm, an older entry takes 3 mm. Only less than 3 mm is told of.',
    settings: severities,
  },
  {
    codes: ['hemostasis/fire'],
    how: 'Labels ask for 3 minutes on hairless skin and up to an hour in hair; in an experiment nothing caught fire from the sixtieth second on. Whether it was dry is asked, and no minutes are counted.',
    settings: severities,
  },
  {
    codes: ['hemostasis/thinner-unheld'],
    how: 'Some guidance continues newer blood thinners for small procedures, a German guideline leaves out the last dose before. That they go on is followed; nothing is said against it.',
    settings: severities,
  },
  {
    codes: ['method/hair-loss-sample'],
    how: 'Laboratories take 4 mm, one would rather have 6 mm. Four are followed.',
    settings: severities,
  },
  {
    codes: ['dressing/rubbed'],
    how: 'Most leaflets keep a wound moist and covered, one leaves it to the air until there is a scab. Covering is followed.',
    settings: ['wound-care.open'],
  },
  {
    codes: ['record/consent-of-minor'],
    how: 'The age from which patients consent alone differs by country. Under 16 years it is asked who did.',
    settings: severities,
  },
  {
    codes: ['allergy/preservative'],
    how: 'Some name a cross-reaction between parabens and para-aminobenzoic acid, others see none that matters. It is mentioned, and no more.',
    settings: [],
  },
  {
    codes: ['device/electrosurgery'],
    how: 'Surveys find short bursts far from a pacemaker without harm, makers of some devices forbid all current. For defibrillators and stimulators the makers are followed, for pacemakers the surveys.',
    settings: [],
  },
];

const byCode: ReadonlyMap<string, Difference> = new Map(
  differences.flatMap((row) => row.codes.map((code): [string, Difference] => [code, row])),
);

/** Where the sources of a check differ; undefined where they agree, or there is one. */
export const differenceOf = (code: string): Difference | undefined => byCode.get(code);
