import type { Check } from '../check.ts';
import { tellsOf } from '../mishaps.ts';

export const check: Check = {
  code: 'dose/toxicity-signs',
  severity: 'warning',
  title: 'Possible signs of too much local anesthetic',
  why: 'A metallic taste, ringing ears, numb lips, slurred speech or a seizure after an injection may be the beginning of systemic toxicity, which can come some time later. Not reported once the note says that the patient was watched or treated; numbness about the mouth counts only where nothing was injected there.',
  sources: [
    { source: 'aagbi-toxicity', mark: 'Q' },
    { source: 'toxicity-signs', mark: 'Q2' },
  ],
  messages: {
    main: '`{word}`: a sign of systemic toxicity.',
    toxicity:
      '`{word}` can be a sign of systemic toxicity of the anesthetic. Stop injecting, call for help, watch pulse, pressure and breathing, keep lipid emulsion at hand; write what was done and how it ended.',
  },
  find: tellsOf(['toxicity']),
};
