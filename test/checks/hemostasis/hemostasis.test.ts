import { fixed, flags, judgeBy, silent } from '../tester.ts';
import assert from 'node:assert/strict';

const note = (lines: readonly string[], patient = 'id: C-1, implants: none'): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n${lines.map((line, at) => `  ${at === 0 ? '- ' : '  '}${line}\n`).join('')}`;

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

describe('one fault, one message', () => {
  const codes = ['hemostasis/missing', 'specimen/missing', 'closure/missing'];

  it('a misspelt key is not missing too', () => {
    for (const key of ['hemostais', 'specimin', 'closur', 'haemostassis']) {
      const text = note(['site: left cheek', 'method: punch', `${key}: none`]);
      const found = codes.filter((code) => judgeBy(code, text).length > 0);
      assert.equal(found.length, 2, `${key}: ${found.join(', ')}`);
    }
  });

  it('a key behind a syntax error is not called missing', () => {
    const text = note(['site: left cheek', 'method: punch', 'lesion: "papule', 'hemostasis: none']);
    silent('hemostasis/missing', text);
  });
});

describe('hemostasis/ambiguous', () => {
  const used = (hemostasis: string): string =>
    note(['site: left cheek', 'method: shave', `hemostasis: ${hemostasis}`]);

  it('flags words that mean heat or current', () => {
    for (const word of ['cautery', 'electrocautery', 'electrodesiccation', 'cauterised'])
      flags('hemostasis/ambiguous', used(`[pressure, ⟦${word}⟧]`), { severity: 'information' });
  });

  it('offers both meanings', () => {
    assert.equal(
      fixed('hemostasis/ambiguous', used('cautery'), 'correct the record: heat cautery'),
      used('heat cautery'),
    );
    assert.equal(
      fixed('hemostasis/ambiguous', used('cautery'), 'correct the record: electrosurgery'),
      used('electrosurgery'),
    );
  });

  it('is silent on clear words, and where a device already asks', () => {
    for (const word of ['heat cautery', 'electrosurgery', 'bipolar cautery', 'battery cautery', 'pressure'])
      silent('hemostasis/ambiguous', used(word));
    silent(
      'hemostasis/ambiguous',
      note(['site: left cheek', 'hemostasis: cautery'], 'id: C-1, implants: [ICD]'),
    );
  });
});

describe('hemostasis/fire', () => {
  const burnt = (preparation: string, dry: string, hemostasis: string, site = 'left cheek'): string =>
    note([
      `site: ${site}`,
      `preparation: ${preparation}`,
      ...(dry === '' ? [] : [`dry: ${dry}`]),
      `hemostasis: ${hemostasis}`,
    ]);

  it('flags heat and sparks beside wet alcohol', () => {
    for (const preparation of ['isopropyl alcohol', 'chlorhexidine in alcohol', '[povidone-iodine, alcohol]'])
      for (const word of ['electrosurgery', 'heat cautery', 'cautery', 'bipolar'])
        flags('hemostasis/fire', burnt(preparation, 'no', `[pressure, ⟦${word}⟧]`), { severity: 'error' });
  });

  it('is information in hair, and beside an agent in alcohol', () => {
    flags('hemostasis/fire', burnt('isopropyl alcohol', '', '⟦electrosurgery⟧', 'scalp'), {
      severity: 'information',
    });
    flags(
      'hemostasis/fire',
      burnt('povidone-iodine', '', '[aluminum chloride in alcohol, ⟦electrosurgery⟧]'),
      {
        severity: 'information',
      },
    );
  });

  it('is silent when dry, when nothing is said of drying, without alcohol, without a spark', () => {
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'yes', 'electrosurgery', 'scalp'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', '', 'electrosurgery'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', '??', 'electrosurgery'));
    silent('hemostasis/fire', burnt('chlorhexidine', 'no', 'electrosurgery'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'no', '[aluminum chloride, pressure]'));
    silent('hemostasis/fire', burnt('isopropyl alcohol', 'no', '[aluminum chloride in alcohol, pressure]'));
  });
});

describe('hemostasis/flammable-spray', () => {
  const sprayed = (agent: string, hemostasis: string): string =>
    note(['site: left cheek', `anesthetic: {agent: ${agent}}`, `hemostasis: ${hemostasis}`]);

  it('flags the spray', () => {
    flags('hemostasis/flammable-spray', sprayed('⟦ethyl chloride⟧', 'heat cautery'), { severity: 'warning' });
    flags('hemostasis/flammable-spray', sprayed('⟦cold spray⟧', 'electrosurgery'), {
      severity: 'information',
    });
  });

  it('is silent without a spark and on what is injected', () => {
    silent('hemostasis/flammable-spray', sprayed('ethyl chloride', 'pressure'));
    silent('hemostasis/flammable-spray', sprayed('lidocaine', 'electrosurgery'));
  });
});

describe('hemostasis/near-eye', () => {
  const at = (site: string, line: string): string => note([`site: ${site}`, line]);

  it('flags chemicals near the eye', () => {
    for (const word of ['aluminum chloride', 'ferric subsulfate', 'silver nitrate', 'trichloroacetic acid'])
      flags('hemostasis/near-eye', at('left upper eyelid', `hemostasis: [⟦${word}⟧, pressure]`), {
        severity: 'warning',
      });
    flags('hemostasis/near-eye', at('right lower eyelid', 'preparation: [⟦chlorhexidine in alcohol⟧]'), {
      severity: 'warning',
    });
  });

  it('is silent on what does no harm there, and elsewhere', () => {
    silent('hemostasis/near-eye', at('left upper eyelid', 'hemostasis: [heat cautery, pressure]'));
    silent('hemostasis/near-eye', at('left upper eyelid', 'preparation: povidone-iodine'));
    silent('hemostasis/near-eye', at('left cheek', 'hemostasis: aluminum chloride'));
    silent('hemostasis/near-eye', at('left upper back', 'preparation: chlorhexidine'));
    silent('hemostasis/near-eye', at('nowhere known', 'hemostasis: aluminum chloride'));
  });

  it('flags chlorhexidine in the ear canal, but no hemostatic', () => {
    flags('hemostasis/near-eye', at('left ear canal', 'preparation: ⟦chlorhexidine⟧'));
    silent('hemostasis/near-eye', at('left ear canal', 'hemostasis: aluminum chloride'));
    silent('hemostasis/near-eye', at('left earlobe', 'preparation: chlorhexidine'));
  });
});

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
