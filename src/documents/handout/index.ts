import type { Format } from '../format.ts';
import { mailDraft } from '../mail/draft.ts';
import { handoutHtml } from './html.ts';
import type { Handout } from './model.ts';
import { handoutText } from './text.ts';

export { handoutOf } from './handout.ts';
export type { Language } from '../../note/words/language.ts';
export type { Handout, NoHandout } from './model.ts';

export type HandoutFormat = 'text' | 'html' | 'eml';

/** The forms of a handout, the usual one first; a mail draft bears the moment at which it is made. */
export const handoutFormats: Readonly<Record<HandoutFormat, Format<[handout: Handout, now: Date]>>> = {
  text: { write: handoutText, ending: 'txt', title: 'Text' },
  html: { write: handoutHtml, ending: 'html', title: 'Page for printing' },
  eml: { write: handoutMail, ending: 'eml', title: 'Mail draft' },
};

function handoutMail(handout: Handout, now: Date): string {
  return mailDraft({
    subject: handout.subject,
    text: handoutText(handout),
    // Many mail programs leave drawings out.
    html: handoutHtml({ ...handout, place: () => undefined }),
    language: handout.language,
    to: handout.mailTo,
    now,
  });
}
