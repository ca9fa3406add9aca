import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';

describe('site/danger-area', () => {
  const cut = (site: string, how: string): string => `procedures: [{site: ${site}, ${how}}]\n`;

  it('flags what goes through the skin over a nerve', () => {
    for (const site of ['left temple', 'right jawline', 'left lateral neck', 'right upper eyelid'])
      flags('site/danger-area', cut(`⟦${site}⟧`, 'method: punch'), { severity: 'information' });
    for (const site of ['left volar wrist', 'right achilles', 'left medial elbow', 'right fibular head'])
      flags('site/danger-area', cut(`⟦${site}⟧`, 'method: punch, depth: subcutis'));
    flags('site/danger-area', cut('⟦left dorsal hand⟧', 'method: punch, depth: subcutis'));
    flags('site/danger-area', cut('⟦left temple⟧', 'method: excisional, depth: subcutis'));
    flags('site/danger-area', cut('⟦left temple⟧', 'method: shave, depth: subcutis'));
    const [finding] = flags('site/danger-area', cut('⟦left temple⟧', 'method: punch, depth: ??'));
    assert.match(finding ? messageOf(finding) : '', /temporal branch/);
  });

  it('is silent for what stays in the skin, and elsewhere', () => {
    silent('site/danger-area', cut('left temple', 'method: shave'));
    silent('site/danger-area', cut('left temple', 'method: deep shave, depth: deep dermis'));
    silent('site/danger-area', cut('left temple', 'method: punch, depth: mid dermis'));
    silent('site/danger-area', cut('left temporal scalp', 'method: punch'));
    silent('site/danger-area', cut('left cheek', 'method: punch, depth: subcutis'));
    silent('site/danger-area', cut('left elbow', 'method: punch, depth: subcutis'));
    silent('site/danger-area', cut('left lateral lower leg', 'method: punch, depth: subcutis'));
    // Over the tendons of the hand the skin is loose: only what goes into the fat is near them.
    silent('site/danger-area', cut('left dorsal hand', 'method: punch'));
    silent('site/danger-area', cut('left dorsal hand', 'method: punch, depth: deep dermis'));
  });
});
