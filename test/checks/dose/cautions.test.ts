import assert from 'node:assert/strict';
import { judgeBy, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';
import { person, at } from './_caution-findings.ts';

describe('an answer behind a colon', () => {
  it('denies a condition that calls for care', () => {
    const finger = (conditions: string): string =>
      at('left index finger', note([withEpinephrine('1 mL')], person(`conditions: ["${conditions}"]`)));
    for (const text of ['Raynaud: denies', 'Raynaud: no, diabetes: no'])
      silent('dose/epinephrine-end-artery', finger(text));
    assert.equal(judgeBy('dose/epinephrine-end-artery', finger('Raynaud: yes')).length, 1);
  });
});
