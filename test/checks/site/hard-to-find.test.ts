import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/hard-to-find', () => {
  it('flags a large site with neither landmarks nor photo', () => {
    flags('site/hard-to-find', one('⟦left upper back⟧'), { severity: 'information' });
    flags('site/hard-to-find', one('⟦left upper back⟧', '    photo: no\n'));
    const [finding] = flags('site/hard-to-find', one('⟦left arm⟧'));
    assert.match(finding ? messageOf(finding) : '', /alone/);
  });

  it('is silent where the place can be found again', () => {
    silent('site/hard-to-find', one('left upper back', '    photo: yes\n'));
    silent('site/hard-to-find', one('left upper back', '    landmarks: 4 cm from midline\n'));
    silent('site/hard-to-find', one('left upper back', '    photo: ??\n'));
    silent('site/hard-to-find', one('left cheek, 2 cm below the eye'));
    silent('site/hard-to-find', one('left upper back', '    same-as: A\n'));
    for (const small of ['glabella', 'umbilicus', 'nasal tip', 'left earlobe', 'right tragus'])
      silent('site/hard-to-find', one(small));
    silent('site/hard-to-find', 'procedures: [{site: left upper back, method: cryotherapy}]\n');
  });
});
