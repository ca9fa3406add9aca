import type { Check } from '../check.ts';
import { namesLanguage } from '../../note/words/language.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/aftercare-language',
  severity: 'information',
  title: 'A language that no handout is written in',
  why: 'The handout is written in English and Spanish. A patient who reads neither needs an interpreter or a page of the practice, and the record should say who explained it.',
  sources: [{ source: 'aftercare-leaflets', mark: 'Q' }, format],
  messages: {
    main: 'There is no handout in "{text}", only in English (`en`) and Spanish (`es`). Use a page of your own, and write who explained it.',
  },
  find({ note }) {
    const language = note.aftercare?.language;
    const text = language?.value?.trim();
    if (language === undefined || text === undefined || text === '' || namesLanguage(text)) return [];
    return [{ at: language, args: { text } }];
  },
};
