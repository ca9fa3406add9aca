import { flags, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/iron-stain', () => {
  it('flags iron where it shows', () => {
    flags('hemostasis/iron-stain', note(['site: left cheek', 'hemostasis: [⟦ferric subsulphate⟧]']), {
      severity: 'information',
    });
  });

  it('is silent elsewhere and on other agents', () => {
    silent('hemostasis/iron-stain', note(['site: left upper back', 'hemostasis: ferric subsulfate']));
    silent('hemostasis/iron-stain', note(['site: left cheek', 'hemostasis: aluminum chloride']));
  });
});
