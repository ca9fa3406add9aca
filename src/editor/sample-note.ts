/** An invented note with faults in it, for whoever tries the tool for the first time. */
export const sampleNote = `# An invented patient. The rows marked below are wrong on purpose.
wheal: 1
visit: 2026-03-02 10:05
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
    lesion: brown-black macule 7 mm
    question: rule out melanoma
    method: punch
    size: 4 mm
    depth: subcutis
    preparation: isopropyl alcohol
    anesthetic:
      - agent: lidocaine
        concentration: 1%
        epinephrine: 1:100,000
        volume: 45 mL        # over the limit: was it 4.5 mL?
    hemostasis: presure      # misspelt
    closure: {material: nylon, size: 4-0, technique: simple interrupted, count: 2}
    specimen:
      label: A
      medium: formalin
      tests: [direct immunofluorescence]   # formalin destroys this test
      sent: 2026-03-02
    dressing: [petrolatum, gauze, paper tape]
    complications: none
aftercare: {given: [spoken, printed], language: en}
`;
