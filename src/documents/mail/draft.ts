import { plain } from '../one-line.ts';
import { headerWords, quotedPrintable } from './encode.ts';

export interface Draft {
  readonly subject: string;
  readonly text: string;
  /** The same as a page. */
  readonly html: string;
  readonly language: string;
  /** An address that `mailAddress` has passed; undefined for a draft without a recipient. */
  readonly to?: string | undefined;
  /** When the draft is made. */
  readonly now: Date;
}

// It can't be in a body: there, "=" is followed by two digits or by the end of the line.
const boundary = '=_wheal_alternative';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A moment as mail writes it, in UTC: `Mon, 02 Mar 2026 10:05:00 +0000`. */
export function mailDate(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = `${weekdays[now.getUTCDay()] ?? ''}, ${two(now.getUTCDate())} ${months[now.getUTCMonth()] ?? ''} ${now.getUTCFullYear()}`;
  return `${day} ${[now.getUTCHours(), now.getUTCMinutes(), now.getUTCSeconds()].map(two).join(':')} +0000`;
}

/** An address that can be in a header as it is; undefined for everything else, such as a list or a name with one. */
export function mailAddress(text: string): string | undefined {
  const typed = text.trim();
  const fits = /^[A-Za-z0-9!#$%&'*+/=?^_`{|}~.-]{1,64}@[A-Za-z0-9-]+(\.[A-Za-z0-9-]+)+$/.test(typed);
  return fits && typed.length <= 254 && !/(^|@)\.|\.\.|\.@/.test(typed) ? typed : undefined;
}

/**
 * A mail draft (RFC 5322) with the same words as text and as page (RFC 2046 multipart/alternative), which a mail
 * program opens as one that is not yet sent. It names no sender: that is whoever opens it.
 */
export function mailDraft({ subject, text, html, language, to, now }: Draft): string {
  const part = (type: string, body: string): readonly string[] => [
    `--${boundary}`,
    `Content-Type: ${type}; charset=utf-8`,
    `Content-Language: ${language}`,
    'Content-Transfer-Encoding: quoted-printable',
    '',
    quotedPrintable(body),
  ];
  return [
    'MIME-Version: 1.0',
    'X-Unsent: 1',
    `Date: ${mailDate(now)}`,
    ...(to === undefined ? [] : [`To: ${to}`]),
    `Subject: ${headerWords(plain(subject))}`,
    `Content-Type: multipart/alternative; boundary="${boundary}"`,
    '',
    ...part('text/plain', text),
    ...part('text/html', html),
    `--${boundary}--`,
    '',
  ].join('\r\n');
}
