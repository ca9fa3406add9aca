import assert from 'node:assert/strict';
import { readNote } from '../../src/note/read.ts';

describe('reading a note', () => {
  // What YAML 1.1 or 1.2 would take for a number, a truth value, nothing, a time or a date.
  const typed = [
    '0042',
    '1_000',
    '0x1F',
    '0o17',
    '1e3',
    '.5',
    '1.50',
    '+1',
    'yes',
    'No',
    'null',
    '~',
    '12:30:45',
    '2026-03-02',
  ];

  for (const [style, note] of [
    ['blocks', (text: string) => `patient:\n  id: ${text}\nprocedures:\n  - lesion: ${text}\n`],
    ['braces', (text: string) => `patient: {id: ${text}}\nprocedures: [{lesion: ${text}}]\n`],
    ['quotes', (text: string) => `patient: {id: "${text}"}\nprocedures:\n  - lesion: '${text}'\n`],
  ] as const)
    it(`keeps the characters that were typed, in ${style}`, () => {
      for (const text of typed) {
        const { value } = readNote(note(text));
        assert.equal(value?.patient?.id?.text, text);
        assert.equal(value.procedures?.[0]?.lesion?.text, text);
      }
    });

  it('says where a value stands in UTF-16 units, behind other scripts, signs of two units, CRLF and a byte order mark', () => {
    for (const mark of ['', '\ufeff'])
      for (const end of ['\n', '\r\n']) {
        const text = `${mark}# Grün 😀${end}clinician: 😀 é${end}patient: {id: "😀", weight: 62 kg}${end}`;
        const weight = readNote(text).value?.patient?.weight;
        assert.equal(text.slice(weight?.start, weight?.end), '62 kg');
      }
  });
});
