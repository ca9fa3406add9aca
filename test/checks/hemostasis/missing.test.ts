import { flags, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/missing', () => {
  it('flags the procedure', () => {
    flags('hemostasis/missing', note(['⟦site⟧: left cheek', 'method: shave']), { severity: 'warning' });
    flags('hemostasis/missing', note(['⟦site⟧: left cheek']));
  });

  it('is silent on any word, and where nothing is cut', () => {
    for (const hemostasis of ['none', 'pressure', '??', '[aluminum chloride, pressure]'])
      silent('hemostasis/missing', note(['site: left cheek', 'method: shave', `hemostasis: ${hemostasis}`]));
    silent('hemostasis/missing', note(['site: left cheek', 'method: shave', 'haemostasis: none']));
    silent('hemostasis/missing', note(['site: left cheek', 'method: cryotherapy']));
  });
});
