import { flags, silent } from '../tester.ts';
import { note } from './_method.ts';

describe('method/punch-size', () => {
  it('flags a diameter that is not made, and two numbers', () => {
    flags('method/punch-size', note('punch', 'size: ⟦9 mm⟧'), { severity: 'information' });
    flags('method/punch-size', note('punch', 'size: ⟦14 mm⟧'));
    flags('method/punch-size', note('punch', 'size: ⟦4 x 6 mm⟧'));
  });

  it('is silent on sizes that are made, and on other methods', () => {
    for (const size of [
      '1.5 mm',
      '2 mm',
      '3 mm',
      '3.5 mm',
      '4 mm',
      '6 mm',
      '8 mm',
      '0.4 cm',
      '4 x 4 mm',
      '??',
    ])
      silent('method/punch-size', note('punch', `size: ${size}`));
    silent('method/punch-size', note('shave', 'size: 9 mm'));
  });
});
