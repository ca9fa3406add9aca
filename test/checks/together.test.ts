import assert from 'node:assert/strict';
import { messageOf } from '../../src/checks/index.ts';
import { together } from '../../src/checks/together.ts';
import type { Finding } from '../../src/note/tree/finding.ts';
import { readNote } from '../../src/note/read.ts';
import { judge } from './tester.ts';

const shown = (text: string): readonly Finding[] =>
  together(judge(text).findings, readNote(text).value).filter(({ severity }) => severity === 'information');

const visit = `visit: 2026-03-02
clinician: K.O.
consent: written
patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: none}
`;
const rest = `aftercare: {given: spoken}\ntime-out: done\n`;
const procedure = (site: string, more = ''): string => `  - site: ${site}
    photo: yes
    lesion: brown papule 4 mm
    question: nevus
    method: shave
    hemostasis: pressure
    specimen: {label: ${site === 'forehead' ? 'B' : 'A'}, medium: formalin, sent: 2026-03-02}
${more}`;

describe('what is missing', () => {
  it('in one procedure and its visit is one finding', () => {
    const found = shown(`${visit}procedures:\n${procedure('chin')}`);
    assert.deepEqual(
      found.map(({ args }) => args['what']),
      ['time-out, aftercare, depth, dressing, complications'],
    );
    found.forEach((one) => {
      assert.doesNotMatch(messageOf(one), /\{|record\//);
    });
  });

  it('from the visit is apart where several procedures are, and while they are being written', () => {
    const several = shown(`${visit}procedures:\n${procedure('chin')}${procedure('forehead')}`);
    assert.deepEqual(
      several.map(({ args }) => args['what']),
      ['time-out, aftercare', 'depth, dressing, complications'],
    );
    const text = `${visit}procedures:\n${procedure('chin')}`;
    const apart = together(judge(text).findings, readNote(text).value, true);
    assert.equal(apart.filter(({ code }) => code === 'record/not-recorded').length, 2);
  });

  it('in several procedures alike is one finding with its places', () => {
    const text = `${visit}${rest}procedures:\n${procedure('chin')}${procedure('forehead')}`;
    const found = shown(text);
    assert.equal(found.length, 1);
    assert.deepEqual(
      found[0]!.related.map(({ start, end }) => text.slice(start, end)),
      [text.slice(found[0]!.start, found[0]!.end)],
    );
    const other = shown(
      `${visit}${rest}procedures:\n${procedure('chin', '    depth: mid dermis\n')}${procedure('forehead')}`,
    );
    assert.deepEqual(
      other.map(({ args }) => args['what']),
      ['dressing, complications', 'depth, dressing, complications'],
    );
  });

  it('as a single thing stays the finding of its check', () => {
    const found = shown(
      `${visit}${rest}procedures:\n${procedure('chin', '    depth: mid dermis\n    dressing: none\n')}`,
    );
    assert.deepEqual(
      found.map(({ code }) => code),
      ['record/missing-complications'],
    );
  });

  it('and accepted is shown for itself, and what is graver is not hidden', () => {
    const accepted = '    accepted: [{check: record/missing-depth, reason: superficial, by: K.O.}]\n';
    const found = shown(`${visit}${rest}procedures:\n${procedure('chin', accepted)}`);
    assert.deepEqual(
      found.map(({ code, args }) => args['what'] ?? code),
      ['record/missing-depth', 'dressing, complications'],
    );
    const text = `${visit.replace('consent: written\n', '')}procedures:\n${procedure('chin')}`;
    const codes = together(judge(text).findings, readNote(text).value).map(({ code }) => code);
    assert.ok(codes.includes('record/missing-consent'));
  });
});

describe('information that is said of several procedures in the same words', () => {
  it('is one finding with its places', () => {
    const all = '    depth: mid dermis\n    dressing: none\n    complications: none\n';
    const text = `${visit}${rest}procedures:\n${procedure('L shin', all)}${procedure('L elbow', all)}${procedure('R elbow', all)}`;
    assert.deepEqual(
      shown(text)
        .filter(({ code }) => code === 'site/side-abbreviated')
        .map(({ related, start }) => [text[start], related.length]),
      [
        ['L', 1],
        ['R', 0],
      ],
    );
  });
});
