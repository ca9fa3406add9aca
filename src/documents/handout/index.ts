import { mailDraft } from '../mail/draft.ts';
import { handoutHtml } from './html.ts';
import type { Handout } from './model.ts';
import { handoutText } from './text.ts';

export { handoutOf } from './handout.ts';
export type { Language } from './language.ts';
export type { Handout, NoHandout } from './model.ts';

export type HandoutFormat = 'text' | 'html' | 'eml';

/** How each form of a handout is written; a mail draft bears the moment at which it is made. */
export const handoutForms: Readonly<Record<HandoutFormat, (handout: Handout, now: Date) => string>> = {
  text: handoutText,
  html: handoutHtml,
  eml: (handout, now) =>
    mailDraft({
      subject: handout.subject,
      text: handoutText(handout),
      html: handoutHtml(handout),
      language: handout.language,
      to: handout.mailTo,
      now,
    }),
};
