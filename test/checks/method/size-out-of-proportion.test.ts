import { flags, silent } from '../tester.ts';
import { note } from './_method.ts';

describe('method/size-out-of-proportion', () => {
  const code = 'method/size-out-of-proportion';

  it('flags more than five times what the method usually takes', () => {
    flags(code, note('shave', 'size: ⟦90 x 8 mm⟧'), { severity: 'warning' });
    flags(code, note('punch', 'size: ⟦40 mm⟧'));
    flags(code, note('punch', 'size: ⟦4 cm⟧'));
    flags(code, note('scissor', 'size: ⟦60 mm⟧'));
  });

  it('is silent up to that, where the lesion is as large, and for methods of any size', () => {
    silent(code, note('shave', 'size: 75 x 8 mm'));
    silent(code, note('punch', 'size: 30 mm'));
    silent(code, note('shave', 'size: 90 x 80 mm\n    lesion: giant keratosis, 9 x 8 cm'));
    silent(code, note('excisional', 'size: 120 x 40 mm'));
    silent(code, note('cryotherapy', 'size: 200 mm'));
    silent(code, note('shave', 'size: ??'));
  });

  it('leaves such a punch to this check alone', () => {
    silent('method/punch-size', note('punch', 'size: 40 mm'));
    flags('method/punch-size', note('punch', 'size: ⟦9 mm⟧'));
  });
});
