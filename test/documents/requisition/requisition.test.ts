import assert from 'node:assert/strict';
import { requisitionFormats } from '../../../src/documents/requisition/forms.ts';
import { requisitionOf, type Request } from '../../../src/documents/requisition/requisition.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

const requestsOf = (text: string): readonly Request[] => {
  const { value } = readNote(text);
  assert.ok(value);
  return requisitionOf(value, referenceTables).requests;
};
const textOf = (text: string): string => {
  const { value } = readNote(text);
  assert.ok(value);
  return requisitionFormats.text.write(requisitionOf(value, referenceTables));
};
const rowOf = ({ rows }: Request, name: string): string | undefined =>
  rows.find((row) => row.name === name)?.text;

const whole = `visit: 2026-03-02 10:05
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, sex: F}
procedures:
  - site: left upper back
    landmarks: 4 cm from midline
    lesion: brown macule 7 mm
    question: rule out melanoma
    method: punch
    size: 4 mm
    specimen:
      - {label: A, medium: formalin, tests: [routine histology], laboratory: North, requisition: R-1}
      - {label: B, medium: Michel, tests: [DIF]}
  - site: chin
    specimen: not sent, typical skin tag
`;

describe('requisition', () => {
  it('carries when the tissue was taken and how it is turned', () => {
    const [first, second] = requestsOf(`visit: 2026-03-02 10:05
procedures:
  - site: left upper back
    method: excisional
    specimen:
      - {label: A, collected: 10:20, orientation: suture at 12 o'clock (superior)}
      - {label: B, collected: 2026-03-03 08:10, orientation: ??}
`);
    assert.ok(first && second);
    assert.equal(rowOf(first, 'Time of collection'), '10:20');
    assert.equal(rowOf(first, 'Collected'), '2026-03-02');
    assert.equal(rowOf(first, 'Orientation'), "suture at 12 o'clock (superior)");
    assert.equal(rowOf(second, 'Time of collection'), '08:10');
    assert.equal(rowOf(second, 'Collected'), '2026-03-03');
    assert.equal(rowOf(second, 'Orientation'), undefined);
    assert.equal(second.label.find(({ name }) => name === 'Collected')?.text, '2026-03-03');
  });

  // What laboratories ask for: specimen guides of three laboratories and 42 CFR 493.1241.
  it('carries what a laboratory asks for', () => {
    const [first] = requestsOf(whole);
    assert.ok(first);
    assert.deepEqual(Object.fromEntries(first.rows.map(({ name, text }) => [name, text])), {
      'Patient name': undefined,
      'Chart number': 'C-1',
      'Date of birth': '1961-08-09',
      Sex: 'F',
      'Requested by': 'K.O.',
      Collected: '2026-03-02',
      'Time of collection': undefined,
      Specimen: 'A',
      Site: 'left upper back, 4 cm from midline',
      'Clinical findings': 'brown macule 7 mm',
      'Clinical question': 'rule out melanoma',
      Procedure: 'punch, 4 mm',
      In: 'formalin',
      Tests: 'routine histology',
      Laboratory: 'North',
      'Request number': 'R-1',
    });
  });

  it('is one for each container that is sent', () => {
    assert.deepEqual(
      requestsOf(whole).map(({ heading }) => heading),
      ['Container 1 of 2', 'Container 2 of 2'],
    );
  });

  it('asks for the relation and the sun where immunofluorescence is asked for', () => {
    const [first, second] = requestsOf(whole);
    const names = (request: Request | undefined): readonly string[] =>
      (request?.rows ?? []).map(({ name }) => name);
    assert.ok(
      names(second).includes('Relation to the lesion') && names(second).includes('Sun exposure of the site'),
    );
    assert.ok(!names(first).includes('Relation to the lesion'));
  });

  it('agrees with its label in every word that both have', () => {
    for (const request of requestsOf(whole))
      for (const { name, text } of request.label)
        if (['Chart number', 'Date of birth', 'Specimen', 'Collected', 'In'].includes(name))
          assert.equal(text, rowOf(request, name), name);
  });

  it('leaves open what is missing or not yet known, and makes nothing up', () => {
    const text = textOf(
      'procedures:\n  - method: punch\n    specimen: {label: ??, medium: ??, tests: [??]}\n',
    );
    for (const name of [
      'Chart number',
      'Date of birth',
      'Sex',
      'Requested by',
      'Collected',
      'Specimen',
      'Site',
      'In',
      'Tests',
    ])
      assert.match(text, new RegExp(`${name}: +_+ \\(not in the note\\)`), name);
    assert.match(text, /Patient name: +_+ \(names stay in the chart\)/);
    assert.doesNotMatch(text, /not yet known|undefined|\?\?/);
  });

  it('shows hostile words as words', () => {
    const { value } = readNote(
      `patient: {id: "<script>alert(1)</script>"}\nprocedures:\n  - site: "a\\u001b[31m\\u202eb"\n    specimen: {label: '<b>"x"</b>'}\n`,
    );
    assert.ok(value);
    const model = requisitionOf(value, referenceTables);
    const html = requisitionFormats.html.write(model);
    assert.doesNotMatch(html, /<script>alert|<b>"x"/);
    const text = requisitionFormats.text.write(model);
    // eslint-disable-next-line no-control-regex -- the very characters that must not get through
    for (const form of [html, text]) assert.doesNotMatch(form, /[\u001b\u202e]/);
  });
});
