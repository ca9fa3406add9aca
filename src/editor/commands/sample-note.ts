/**
 * An invented note with faults in it, for whoever tries the tool for the first time.
 * @param today the day of its visit, so that nothing in it is overdue
 */
export const sampleNote = (today: string): string => `# An invented visit
wheal: 1
visit: ${today}
clinician: K.O.
scribe: T.L.
patient:
  id: C-0001
  born: 1961-08-09
  weight: 62 kg
  allergies: none
  implants: none
  medications: none
  conditions: none
consent: written
time-out: 10:12
procedures:
  - site: left upper back
    landmarks: 4 cm from midline, 9 cm below the hairline
    lesion: brown-black macule 3 mm
    question: rule out melanoma
    method: deep shave
    size: 6 x 6 mm
    margin: 1 mm
    depth: mid dermis
    preparation: isopropyl alcohol
    anesthetic:
      # Over the limit: was it 4.5 mL?
      - agent: lidocaine
        concentration: 1%
        epinephrine: 1:100,000
        volume: 45 mL
    # Misspelled.
    hemostasis: presure
    closure: second intention
    specimen:
      label: A
      # Formalin destroys what this test looks for.
      medium: formalin
      tests: [direct immunofluorescence]
      sent: ${today}
    dressing: [petrolatum, gauze, paper tape]
    complications: none
aftercare: {given: [spoken, printed], language: en}
`;
