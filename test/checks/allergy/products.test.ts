import assert from 'node:assert/strict';
import type { Severity } from '../../../src/note/tree/finding.ts';
import { flags, judgeBy, silent } from '../tester.ts';
import { note } from './_products.ts';

type Verdict = Severity | '-';

/**
 * For each allergen the products that conflict, and how gravely; every other product of the same check must be
 * silent. What a thing is made of is plain from its name; cross-reactions: Dermatology Nursing (Medscape 735534) for
 * the antibiotics, Australas J Dermatol 2003;44:180-184 and PubMed 6239881 for benzoin.
 */
const families: readonly {
  readonly code: string;
  readonly line: (product: string) => string;
  readonly products: readonly string[];
  readonly conflicts: Readonly<Record<string, Readonly<Record<string, Verdict>>>>;
}[] = [
  {
    code: 'allergy/hemostatic',
    line: (product) => `hemostasis: [${product}]`,
    products: [
      'aluminum chloride',
      'ferric subsulfate',
      'silver nitrate',
      'pressure',
      'gelatin sponge',
      'chitosan',
      'epinephrine',
      'heat cautery',
      'none',
    ],
    conflicts: {
      aluminum: { 'aluminum chloride': 'error' },
      iron: { 'ferric subsulfate': 'error' },
      silver: { 'silver nitrate': 'error' },
      gelatin: { 'gelatin sponge': 'error' },
      epinephrine: { epinephrine: 'error' },
      // Mil Med 2011;176:1153-1156: made of shrimp shells, and tolerated by ten patients allergic to shellfish.
      shellfish: { chitosan: 'warning' },
      shrimp: { chitosan: 'warning' },
      seafood: { chitosan: 'warning' },
      'crab and lobster': { chitosan: 'warning' },
      chitosan: { chitosan: 'error' },
      oyster: {},
      fish: {},
      sulfa: {},
      nickel: {},
      penicillin: {},
    },
  },
  {
    code: 'allergy/preparation',
    line: (product) => `preparation: [${product}]`,
    products: [
      'isopropyl alcohol',
      'chlorhexidine',
      'chlorhexidine in alcohol',
      'povidone-iodine',
      'soap and water',
    ],
    conflicts: {
      chlorhexidine: { chlorhexidine: 'error', 'chlorhexidine in alcohol': 'error' },
      'povidone-iodine': { 'povidone-iodine': 'error' },
      'topical iodine': { 'povidone-iodine': 'error' },
      iodine: { 'povidone-iodine': 'warning' },
      'isopropyl alcohol': { 'isopropyl alcohol': 'error', 'chlorhexidine in alcohol': 'error' },
      shellfish: {},
      'iodinated contrast': {},
      'IV contrast': {},
      'iodine contrast dye': {},
      latex: {},
    },
  },
  {
    code: 'allergy/dressing',
    line: (product) => `dressing: [${product}]`,
    products: [
      'petrolatum',
      'gauze',
      'paper tape',
      'adhesive bandage',
      'silicone tape',
      'bacitracin',
      'neomycin',
      'polymyxin B',
      'triple antibiotic ointment',
      'double antibiotic ointment',
      'antibiotic ointment',
      'mupirocin',
      'lanolin ointment',
      'healing ointment',
      'hydrocolloid',
      'silver sulfadiazine',
      'benzoin',
      'liquid adhesive',
      'adhesive strips',
      'elastic wrap',
      'latex-free elastic wrap',
      'transparent film',
      'none',
    ],
    conflicts: {
      bacitracin: {
        bacitracin: 'error',
        'triple antibiotic ointment': 'error',
        'double antibiotic ointment': 'error',
        'antibiotic ointment': 'warning',
        neomycin: 'warning',
        'polymyxin B': 'warning',
      },
      neomycin: {
        neomycin: 'error',
        'triple antibiotic ointment': 'error',
        'antibiotic ointment': 'warning',
        bacitracin: 'warning',
        'double antibiotic ointment': 'warning',
      },
      polymyxin: {
        'polymyxin B': 'error',
        'triple antibiotic ointment': 'error',
        'double antibiotic ointment': 'error',
        'antibiotic ointment': 'warning',
        bacitracin: 'warning',
      },
      tape: {
        'paper tape': 'warning',
        'adhesive bandage': 'warning',
        hydrocolloid: 'warning',
        'adhesive strips': 'warning',
        'transparent film': 'warning',
      },
      latex: { 'elastic wrap': 'warning' },
      lanolin: { 'lanolin ointment': 'error', 'healing ointment': 'warning' },
      petrolatum: { petrolatum: 'error', 'healing ointment': 'warning' },
      benzoin: { benzoin: 'error', 'liquid adhesive': 'warning' },
      colophony: { benzoin: 'warning', hydrocolloid: 'warning' },
      'balsam of Peru': { benzoin: 'warning' },
      sulfa: { 'silver sulfadiazine': 'error' },
      mupirocin: { mupirocin: 'error' },
      sulfite: {},
      formaldehyde: {},
      penicillin: {},
    },
  },
  {
    code: 'allergy/closure',
    line: (product) => `closure: {material: ${product}}`,
    products: [
      'nylon',
      'polypropylene',
      'silk',
      'polyglactin',
      'polyglycolic acid',
      'plain gut',
      'chromic gut',
      'poliglecaprone',
    ],
    conflicts: {
      nylon: { nylon: 'error' },
      silk: { silk: 'error' },
      catgut: { 'plain gut': 'error', 'chromic gut': 'error' },
      chromium: { 'chromic gut': 'error' },
      polypropylene: { polypropylene: 'error' },
      // Both are polymers of glycolic acid; that who reacts to one reacts to the other is in no source read.
      polyglactin: { polyglactin: 'error', 'polyglycolic acid': 'information' },
      'polyglycolic acid': { polyglactin: 'information', 'polyglycolic acid': 'error' },
      'dissolvable stitches': {
        polyglactin: 'warning',
        'polyglycolic acid': 'warning',
        'plain gut': 'warning',
        'chromic gut': 'warning',
        poliglecaprone: 'warning',
      },
      latex: {},
    },
  },
  {
    code: 'allergy/closure',
    line: (product) => `closure: ${product}`,
    products: ['none', 'second intention', 'tissue glue', 'adhesive strips', 'staples', 'suture'],
    conflicts: {
      cyanoacrylate: { 'tissue glue': 'error' },
      'skin glue': { 'tissue glue': 'error' },
      superglue: { 'tissue glue': 'error' },
      // Dermatitis, patch tests with cyanoacrylates: 13 of 35 patients reacted to acrylates or methacrylates too.
      acrylates: { 'tissue glue': 'warning', 'adhesive strips': 'warning' },
      methacrylate: { 'tissue glue': 'warning' },
      // Medscape drug reference, 2-octyl cyanoacrylate: not with hypersensitivity to formaldehyde.
      formaldehyde: { 'tissue glue': 'warning' },
      'adhesive tape': { 'adhesive strips': 'warning' },
      nickel: { staples: 'warning' },
      latex: {},
    },
  },
];

for (const { code, line, products, conflicts } of families)
  describe(`${code}, ${line('…')}`, () => {
    for (const [allergy, conflicting] of Object.entries(conflicts))
      it(`${allergy}: every product`, () => {
        const verdicts = products.map((product) => {
          const [finding, ...more] = judgeBy(code, note(allergy, line(product)));
          assert.deepEqual(more, [], product);
          return [product, finding?.severity ?? '-'];
        });
        assert.deepEqual(
          Object.fromEntries(verdicts),
          Object.fromEntries(products.map((product) => [product, conflicting[product] ?? '-'])),
        );
      });
  });

describe('products and allergies', () => {
  it('points at the word that conflicts, and at the entry', () => {
    const [finding] = flags(
      'allergy/dressing',
      note('bacitracin', 'dressing: [petrolatum, ⟦bacitracin zinc⟧, gauze]'),
    );
    assert.equal(finding?.related.length, 1);
  });

  it('is a warning where what happened was no allergy', () => {
    flags('allergy/dressing', note('{to: mupirocin, reaction: nausea}', 'dressing: [⟦mupirocin⟧]'), {
      severity: 'warning',
    });
  });

  it('is silent on a product of another name that was tolerated since', () => {
    const code = 'allergy/dressing';
    silent(code, note('{to: tape, reaction: rash, tolerates: paper tape}', 'dressing: [gauze, paper tape]'));
    flags(code, note('{to: tape, reaction: rash, tolerates: paper tape}', 'dressing: [⟦cloth tape⟧]'));
    flags(code, note('{to: paper tape, tolerates: paper tape}', 'dressing: [⟦paper tape⟧]'));
    flags(
      code,
      note('{to: neomycin, tolerates: triple antibiotic ointment}', 'dressing: [⟦triple antibiotic⟧]'),
      { severity: 'error' },
    );
  });

  it('is silent on what is denied, not known, or not there', () => {
    silent('allergy/dressing', note('not allergic to bacitracin', 'dressing: [bacitracin]'));
    silent('allergy/dressing', note('bacitracin', 'dressing: [??]'));
    silent('allergy/dressing', note('bacitracin', 'dressing: [gauze without bacitracin]'));
  });
});

describe('what events tell of', () => {
  const event = (allergy: string, action: string): string =>
    `${note(allergy, 'dressing: gauze')}events:\n  - {on: 2026-03-05, kind: wound check, action: "${action}", outcome: well}\n`;

  it('is compared with the allergies', () => {
    flags('allergy/dressing', event('bacitracin', 'cleaned, ⟦bacitracin⟧ applied'), { severity: 'error' });
    flags('allergy/hemostatic', event('silver', 'granulation touched with ⟦silver nitrate⟧'));
    flags('allergy/preparation', event('chlorhexidine', 'cleaned with ⟦chlorhexidine⟧'));
    flags('allergy/closure', event('silk', 'resutured with ⟦silk⟧'));
  });

  it('is found in remarks, and where it took the place of another', () => {
    flags('allergy/dressing', event('bacitracin', 'switched from petrolatum to ⟦bacitracin⟧'));
    const remark = note('bacitracin', 'dressing: gauze\n    remarks: ⟦bacitracin⟧ under the bandage');
    flags('allergy/dressing', remark, { severity: 'error' });
  });

  it('is silent where it was stopped, or did the harm', () => {
    for (const action of [
      'bacitracin stopped, petrolatum instead',
      'stopped bacitracin',
      'rash from bacitracin, petrolatum given',
      'no bacitracin',
      'switched from bacitracin to petrolatum',
      'petrolatum',
    ])
      silent('allergy/dressing', event('bacitracin', action));
  });
});
