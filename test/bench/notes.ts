/**
 * The notes that are measured: 60 lines as a scribe leaves them, the same with many faults, and one of 2,000 lines. The
 * bench puts another number for each `@`, so that no text of them is seen twice.
 */

const head = `wheal: 1 # invented
visit: 2026-03-02 10:05
clinician: K.O.
scribe: T.L.
patient:
  id: C-@
  born: 1961-08-09
  weight: 62 kg
  allergies: [bacitracin]
  implants: none
  medications: [apixaban]
  conditions: none
consent: written
time-out: 10:12
aftercare: {given: [spoken, printed], language: en}
procedures:
`;

const procedure = (number: number): string => `  - site: ${number % 2 === 0 ? 'left' : 'right'} upper back
    landmarks: ${number + 1} cm from midline, 9 cm below the hairline
    photo: yes
    lesion: brown-black macule 7 mm, irregular border, number @ on the map
    question: rule out melanoma, compare with photo @
    method: shave
    size: 9 x 8 mm
    depth: mid dermis
    preparation: isopropyl alcohol
    anesthetic:
      - agent: lidocaine
        concentration: 1%
        epinephrine: 1:100,000
        volume: 0.${(number % 9) + 1} mL
        time: 10:13
    hemostasis: [aluminum chloride, pressure]
    closure: none
    specimen:
      label: S${number}-@
      medium: formalin
      tests: [routine histology]
      sent: 2026-03-02
      results: [{received: 2026-03-09, diagnosis: benign nevus, told: 2026-03-10}]
    dressing: [petrolatum, gauze, paper tape]
    complications: none
`;

/** A note of about `rows` lines. */
export function noteOf(rows: number): string {
  const count = Math.max(1, Math.round((rows - 16) / 25));
  return head + Array.from({ length: count }, (_, number) => procedure(number)).join('');
}

const faults: readonly (readonly [string, string])[] = [
  ['method: shave', 'metod: shave'],
  ['depth: mid dermis', 'depth: middle'],
  ['photo: yes', 'photo: perhaps'],
  ['concentration: 1%', 'concentration: 1'],
  ['volume: 0.', 'volume: .'],
  ['agent: lidocaine', 'agent: lidocane'],
  ['medium: formalin', 'medium: formaline'],
  ['sent: 2026-03-02', 'sent: 2026-02-30'],
  ['size: 9 x 8 mm', 'size: 9 x 8'],
  ['site: left upper back', 'site: upper back'],
  ['site: right upper back', 'site: rigth uper back'],
  ['closure: none', 'closure: nothing'],
];

/** A note of about 60 lines in which forty things are wrong, or as many as it has lines for. */
export function faultyNote(): string {
  let text = noteOf(100);
  for (const [right, wrong] of faults) text = text.split(right).join(wrong);
  return text
    .replace('wheal: 1 # invented', 'wheal: 1')
    .replace('time-out: 10:12', 'time-out: 25:99')
    .replace('weight: 62 kg', 'weight: 62')
    .replace('consent: written', 'consnet: writen');
}
