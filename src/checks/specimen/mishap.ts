import type { Check } from '../check.ts';
import { tellsOf } from '../mishaps.ts';

export const check: Check = {
  code: 'specimen/mishap',
  severity: 'warning',
  title: 'A specimen lost, mixed up or damaged, and no record of what was done',
  why: 'Tissue that is lost cannot be read, and tissue that is mixed up is read for somebody else. The note should also say what followed: who was told, whether the biopsy was repeated. Once it does, nothing is reported.',
  sources: [
    { source: 'empty-containers', mark: 'Q' },
    { source: 'histology-rejection', mark: 'Q' },
    { source: 'label-manuals', mark: 'Q' },
    { source: 'immunofluorescence-manuals', mark: 'Q' },
  ],
  messages: {
    main: '`{word}`: something happened to the specimen. Write what was done.',
    lost: '`{word}`: the specimen may be lost. Look for it, tell the clinician and the patient, and write whether the biopsy is repeated.',
    empty:
      '`{word}`: a container without a specimen. Look in the room and on the instruments, tell the clinician and the patient, and write what was done.',
    label:
      '`{word}`: a container whose label is not certain. Have its identity confirmed by who took the specimen, and write by whom and how.',
    mixed:
      '`{word}`: it is not certain which specimen is whose, or from where. Tell the laboratory before it reports, and write how it was settled.',
    shared:
      '`{word}`: specimens of several sites in one container cannot be told apart. Tell the laboratory and the clinician, and write what was done.',
    harmed:
      '`{word}`: the specimen may be damaged. Tell the laboratory, which may still be able to use it, and write what was done.',
    kept: '`{word}`: the specimen did not go out on its day. Ask the laboratory whether it can be used, and write what was done.',
    refused:
      '`{word}`: a test cannot be done on this specimen. Tell the clinician and the patient, and write whether another is taken.',
  },
  find: tellsOf(['lost', 'empty', 'label', 'mixed', 'shared', 'harmed', 'kept', 'refused']),
};
