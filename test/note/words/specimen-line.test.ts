import assert from 'node:assert/strict';
import { readNote } from '../../../src/note/read.ts';
import { readSpecimen } from '../../../src/note/words/specimen-line.ts';
import { judge } from '../../checks/tester.ts';

const note = (specimen: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    specimen: ${specimen}\n`;

/** What a bare text says, key by key. */
function stated(text: string): Readonly<Record<string, string>> | undefined {
  const line = readSpecimen(text);
  return line && Object.fromEntries(line.fields.map(({ key, from, to }) => [key, text.slice(from, to)]));
}

describe('a specimen in one line', () => {
  it('is sent, with what the words say of it', () => {
    for (const [text, fields] of [
      ['sent', { sent: 'sent' }],
      ['tissue', {}],
      ['sent to pathology', { sent: 'sent to pathology' }],
      ['pathology', { tests: 'pathology' }],
      ['yes', { sent: 'yes' }],
      ['A', { label: 'A' }],
      ['jar B', { label: 'B' }],
      ['formalin', { medium: 'formalin' }],
      ['sent in formalin', { sent: 'sent', medium: 'formalin' }],
      ['A, formalin', { label: 'A', medium: 'formalin' }],
      ['A in formalin for routine histology', { label: 'A', medium: 'formalin', tests: 'routine histology' }],
      ['to path in formalin, H&E', { sent: 'to path', medium: 'formalin', tests: 'H&E' }],
      ['formalin, sent on 2026-03-02', { medium: 'formalin', sent: '2026-03-02' }],
      ['sent 2026-03-02', { sent: '2026-03-02' }],
      ['Michel, DIF', { medium: 'Michel', tests: 'DIF' }],
    ] as const) {
      assert.deepEqual(stated(text), fields, text);
      assert.deepEqual(readSpecimen(text)?.problems, [], text);
    }
  });

  it('is none where the words deny it, or nobody knows', () => {
    for (const text of [
      'not sent, skin tag',
      'none',
      'discarded',
      'patient declined pathology',
      'no specimen',
      '??',
      'nothing to pathology',
      'skin tags, no path',
    ])
      assert.equal(readSpecimen(text), undefined, text);
  });

  it('reports words that are none of it, and reads each thing once', () => {
    for (const [text, words] of [
      ['sent to the county laboratory', 'sent to the county laboratory'],
      ['A, formalin, oriented with ink', 'oriented'],
      ['formalin, saline', 'saline'],
    ] as const) {
      const [problem] = readSpecimen(text)?.problems ?? [];
      assert.equal(text.slice(problem?.at.start, problem?.at.end), words);
    }
  });

  it('is followed like any other: it asks for what is missing, and its result is awaited', () => {
    const { value } = readNote(note('sent'));
    assert.equal(value?.procedures?.[0]?.specimen?.[0]?.notSent, undefined);
    const codes = judge(note('sent'), { today: '2026-04-20' }).findings.map(({ code }) => code);
    for (const code of ['specimen/medium-missing', 'quantity/date-form']) assert.ok(codes.includes(code));
    for (const code of [
      'specimen/not-sent-without-reason',
      'follow-up/specimen-not-sent',
      'specimen/missing',
    ])
      assert.ok(!codes.includes(code), code);
    const late = judge(note('A, formalin, sent 2026-03-02'), { today: '2026-04-20' }).findings;
    assert.ok(late.some(({ code }) => code === 'follow-up/result-overdue'));
    const two = readNote(note('[A, B]')).value?.procedures?.[0]?.specimen ?? [];
    assert.deepEqual(
      two.map((one) => one.label?.value),
      ['A', 'B'],
    );
  });
});
