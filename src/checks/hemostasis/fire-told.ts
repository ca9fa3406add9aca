import type { Check } from '../check.ts';
import type { Mishap } from '../mishaps.ts';
import type { Subject } from '../check.ts';
import { tellsOf } from '../mishaps.ts';
import { sparks } from './_procedure.ts';

/** What only makes a fire likelier matters where there was heat or a spark. */
const isNearSpark = (subject: Subject, { row, procedure }: Mishap): boolean =>
  row.kind === 'burn' ||
  sparks(subject).some((one) => procedure === undefined || one.procedure === procedure);

export const check: Check = {
  code: 'hemostasis/fire-told',
  severity: 'warning',
  title: 'Fire, a burn, oxygen or a wet preparation in free text',
  why: 'Heat or a spark, something that burns, and oxygen make a fire. Oxygen or a wet preparation counts where heat or current is recorded; a fire or a burn always counts until the note says what was done for the patient.',
  sources: [
    { source: 'fire-poster', mark: 'Q' },
    { source: 'alcohol-label', mark: 'Q' },
    { source: 'return-electrode-burns', mark: 'Q' },
  ],
  messages: {
    main: '`{word}`: a fire risk. Write what was done.',
    oxygen:
      '`{word}`: oxygen beside heat or a spark. Stop it for a minute before and while they are used; if it was off, write that.',
    wet: '`{word}`: a preparation that burns, and heat or current is recorded. Let it dry for 3 minutes first; if it was dry by then, write that.',
    burn: '`{word}`: a fire or a burn. Write what was done for the patient and who was told; keep the pad and the device for inspection.',
  },
  find: tellsOf(['oxygen', 'wet', 'burn'], isNearSpark),
};
