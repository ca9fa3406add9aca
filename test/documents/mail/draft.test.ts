import assert from 'node:assert/strict';
import fc from 'fast-check';
import { simpleParser, type ParsedMail } from 'mailparser';
import PostalMime, { type Email } from 'postal-mime';
import { plain } from '../../../src/documents/one-line.ts';
import { mailAddress, mailDate, mailDraft, type Draft } from '../../../src/documents/mail/draft.ts';
import { hostileText } from '../hostile.ts';
import { times } from '../../share.ts';

const base: Draft = {
  subject: 'Cuidado después del procedimiento – Ejemplo',
  text: 'Señor:\n\nLínea que termina en espacio \n--\n.\nFrom here = on\n',
  html: '<!DOCTYPE html>\n<p>Señor: <b>x = y</b></p>\n',
  language: 'es',
  to: 'someone@example.org',
  now: new Date('2026-03-02T10:05:09Z'),
};

interface Read {
  readonly mailparser: ParsedMail;
  readonly postal: Email;
}

async function readBack(draft: string): Promise<Read> {
  return {
    mailparser: await simpleParser(draft, {
      skipTextToHtml: true,
      skipHtmlToText: true,
      skipTextLinks: true,
    }),
    postal: await PostalMime.parse(draft),
  };
}

const lines = (text: string): string => text.replace(/\r\n?/g, '\n');
/** Parsers differ in whether the last line break belongs to a body. */
const body = (text: string | false | undefined): string =>
  lines(text === false ? '' : (text ?? '')).replace(/\n+$/, '');

function hasBodies({ mailparser, postal }: Read, text: string, html: string): void {
  for (const read of [mailparser, postal]) {
    assert.equal(body(read.text), body(text));
    assert.equal(body(read.html), body(html));
  }
}

describe('mail draft', () => {
  it('is read back by two parsers with every letter', async () => {
    const read = await readBack(mailDraft(base));
    assert.equal(read.mailparser.subject, base.subject);
    assert.equal(read.postal.subject, base.subject);
    hasBodies(read, base.text, base.html);
    assert.equal(read.mailparser.date?.toISOString(), '2026-03-02T10:05:09.000Z');
    assert.equal(new Date(read.postal.date ?? '').toISOString(), '2026-03-02T10:05:09.000Z');
    assert.equal(read.mailparser.headers.get('x-unsent'), '1');
    assert.equal(read.mailparser.attachments.length + read.postal.attachments.length, 0);
    assert.deepEqual(
      read.postal.to?.map(({ address }) => address),
      ['someone@example.org'],
    );
  });

  it('names no recipient and no sender of its own', async () => {
    const { mailparser, postal } = await readBack(mailDraft({ ...base, to: undefined }));
    assert.equal(mailparser.to, undefined);
    assert.equal(postal.to, undefined);
    assert.equal(mailparser.from, undefined);
    assert.equal(postal.from, undefined);
  });

  it('is plain ASCII in lines of at most 76 characters, each ended by CRLF, and the same every time', () => {
    const draft = mailDraft(base);
    assert.match(draft, /^[\r\n\t -~]*$/);
    assert.doesNotMatch(draft, /[^\r]\n|\r[^\n]/);
    for (const line of draft.split('\r\n')) assert.ok(line.length <= 76, line);
    assert.equal(mailDraft(base), draft);
  });

  it('keeps hostile words in subject and bodies words', async () => {
    await fc.assert(
      fc.asyncProperty(hostileText, hostileText, async (subject, words) => {
        const text = lines(words).replaceAll('\u0000', '');
        const draft = mailDraft({ ...base, to: undefined, subject, text, html: text });
        const [head = ''] = draft.split('\r\n\r\n');
        assert.deepEqual(
          head
            .split('\r\n')
            .filter((line) => !line.startsWith(' '))
            .map((line) => line.split(':')[0]),
          ['MIME-Version', 'X-Unsent', 'Date', 'Subject', 'Content-Type'],
        );
        assert.match(draft, /^[\r\n\t -~]*$/);
        for (const line of draft.split('\r\n')) assert.ok(line.length <= 76, line);
        const { mailparser, postal } = await readBack(draft);
        const said = plain(subject).trim();
        if (said !== '') assert.equal((mailparser.subject ?? '').trim(), said);
        assert.equal((postal.subject ?? '').trim(), said);
        for (const read of [mailparser, postal]) {
          assert.equal(read.to, undefined);
          assert.equal(read.bcc, undefined);
          assert.equal(read.attachments.length, 0);
        }
        assert.equal(body(postal.text), body(whole(text)));
      }),
      { numRuns: times(150) },
    );
  });
});

/** Half a character can't be written in UTF-8. */
const whole = (text: string): string => new TextDecoder().decode(new TextEncoder().encode(text));

describe('address of a mail draft', () => {
  for (const good of ['a@example.org', 'first.last+tag@mail.example.org', " o'neil@example.org "])
    it(`takes ${good}`, () => {
      assert.equal(mailAddress(good), good.trim());
    });

  for (const bad of [
    '',
    'a',
    'a@b',
    'a@example.org, b@example.org',
    'A <a@example.org>',
    'a@example.org\r\nBcc: b@example.org',
    'á@example.org',
    'a b@example.org',
    '.a@example.org',
    'a..b@example.org',
    'a@example.org;b@example.org',
    `${'a'.repeat(65)}@example.org`,
  ])
    it(`refuses ${JSON.stringify(bad).slice(0, 50)}`, () => {
      assert.equal(mailAddress(bad), undefined);
    });
});

describe('date of a mail draft', () => {
  it('is the moment in UTC, on every day', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1970-01-01'), max: new Date('2100-01-01'), noInvalidDate: true }),
        (date) => {
          const second = Math.floor(date.getTime() / 1000) * 1000;
          assert.equal(new Date(mailDate(date)).getTime(), second);
          // The platform's own writer of the same form, but for the name of the zone.
          assert.equal(mailDate(date).replace('+0000', 'GMT'), date.toUTCString());
        },
      ),
    );
  });
});
