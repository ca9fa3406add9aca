import { silent } from '../tester.ts';
import { note } from './_thinner.ts';

describe('a blood thinner, and no word on hemostasis', () => {
  it('takes a stitch alone for hemostasis of a punch', () => {
    silent('hemostasis/missing', note('none', 'suture', 'none', 'method: punch'));
  });
});
