import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';
import { note } from './_lesion.ts';

describe('method/scissor-flat', () => {
  const code = 'method/scissor-flat';

  it('flags scissors for what is flat', () => {
    flags(code, note('lesion: brown macule 5 mm; method: ⟦scissor⟧'), { severity: 'information' });
    flags(code, note('lesion: scaly patch; method: ⟦snip⟧'));
    const [finding] = flags(code, note('lesion: flat brown spot; method: ⟦snip⟧'));
    assert.match(messageOf(finding!), /the lesion is described as flat\./);
  });

  it('is silent on what stands up, on what is not described, and on other methods', () => {
    for (const lesion of [
      'skin tag 3 mm',
      'pedunculated papule',
      'flat-topped papule',
      'papule on a macule',
      'soft lesion 4 mm',
      'flat wart',
      '??',
    ])
      silent(code, note(`lesion: ${lesion}; method: scissor`));
    silent(code, note('method: scissor'));
    silent(code, note('lesion: brown macule 5 mm; method: shave'));
  });
});
