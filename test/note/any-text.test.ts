import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { readPractice } from '../../src/note/read.ts';
import { judge } from '../checks/tester.ts';

const notes = ['samples', 'test/fixtures']
  .filter((folder) => existsSync(folder))
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /^(?!(?:right|lean|unseen)\b).*(?<!practice)\.wheal\.yaml$/.test(name))
      .map((name) => ({ folder, name, text: readFileSync(join(folder, name), 'utf8') })),
  );

function inBounds(text: string, findings: readonly { code: string; start: number; end: number }[]): void {
  for (const { code, start, end } of findings)
    assert.ok(
      0 <= start && start <= end && end <= text.length,
      `${code} at ${start}-${end} of ${text.length}`,
    );
}

function whole(text: string): void {
  const { findings, failures } = judge(text);
  assert.deepEqual(
    failures.map(({ check, error }) => `${check}: ${String(error)}`),
    [],
  );
  inBounds(text, findings);
  for (const { related } of findings)
    inBounds(
      text,
      related.map((one) => ({ code: 'related', ...one })),
    );
}

const signs = Array.from(':{}[]"\'#&*!|>%@-?,`\t\n \\');
const rows = notes.flatMap(({ text }) => text.split('\n'));

/** Texts grown from the lines of real notes, with signs put in and characters taken out. */
const grown = fc
  .tuple(
    fc.array(fc.constantFrom(...rows), { minLength: 1, maxLength: 12 }),
    fc.array(fc.tuple(fc.nat(), fc.constantFrom('', ...signs), fc.nat({ max: 2 })), { maxLength: 6 }),
  )
  .map(([lines, slips]) =>
    slips.reduce((text, [place, sign, cut]) => {
      const at = place % (text.length + 1);
      return text.slice(0, at) + sign + text.slice(at + cut);
    }, lines.join('\n')),
  );

describe('any text', () => {
  it('is answered with findings inside of it', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 80 }), whole), { numRuns: 300 });
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...signs, 'a', 'site', '1'), maxLength: 40 }), whole),
      {
        numRuns: 300,
      },
    );
  });

  it('that grew from notes by slips is answered too', () => {
    fc.assert(fc.property(grown, whole), { numRuns: 300 });
    fc.assert(
      fc.property(grown, (text) => {
        inBounds(
          text,
          readPractice(text).problems.map(({ code, at }) => ({ code, ...at })),
        );
      }),
      { numRuns: 100 },
    );
  });

  // Each state of every sample takes a minute; `npm test` asks for that with WHEAL_EXHAUSTIVE=1.
  const exhaustive = process.env['WHEAL_EXHAUSTIVE'] === '1';
  for (const { folder, name, text } of notes) {
    const step = folder === 'samples' ? (exhaustive ? 1 : 11) : 97;
    it(`each part of ${name}`, () => {
      for (let at = 0; at <= text.length; at += step) {
        whole(text.slice(0, at));
        whole(text.slice(0, at) + text.slice(at + 1));
      }
    }).timeout(60_000);
  }

  it('has the same findings with a mark of byte order, at places one further on, and with CRLF', () => {
    const { text } = notes.find(({ name }) => name.startsWith('design-example'))!;
    const broken = text.replace('site:', 'sitte:').replace('  label: A', '  label: "A');
    const places = (one: string): string[] =>
      judge(one).findings.map(
        ({ code, start, end }) => `${code} ${one.slice(start, end).replace(/\r/g, '')}`,
      );
    assert.ok(places(broken).some((place) => place.startsWith('shape/unknown-key')));
    assert.deepEqual(places(`\uFEFF${broken}`), places(broken));
    assert.deepEqual(places(broken.replace(/\n/g, '\r\n')), places(broken));
    const emoji = broken.replace('T.L.', '"\u{1F600}"');
    assert.deepEqual(places(emoji), places(broken));
  });
});
