import assert from 'node:assert/strict';
import fc from 'fast-check';
import { rulesOf } from '../../src/dose/rules.ts';
import type { Problem } from '../../src/note/tree/finding.ts';
import { readPractice } from '../../src/note/read.ts';
import { ceilingOf } from '../../src/limits/ceilings.ts';
import {
  layOver,
  referenceTables,
  tablesOf,
  type Laid,
  type Tables,
  type Trust,
} from '../../src/practice/tables.ts';
import { judge } from '../checks/tester.ts';

const lay = (text: string, trust?: Trust): Laid => layOver(readPractice(text).value, trust);
const tables = (text: string, trust?: Trust): Tables => lay(text, trust).tables;
const codes = (problems: readonly Problem[]): readonly string[] => problems.map(({ code }) => code);

const approved = 'approved: {by: K.O., on: 2026-01-05, reason: invented for this test}';

describe('the tables of a practice', () => {
  it('are the reference tables where there is no file, or nothing in it', () => {
    assert.equal(tablesOf(null), referenceTables);
    assert.deepEqual(tables('wheal: 1\n'), referenceTables);
    assert.deepEqual(lay('wheal: 1\n').problems, []);
  });

  it('carry what handouts need', () => {
    const { practice } = tables(
      'name: Example Skin\ntelephone: 555-0100\nafter-hours: 555-0101\nspelling: british\nlanguage: es\nwound-care: {ointment: petrolatum, first-change: next morning, open: no, press-minutes: 15, press-times: 2}\nhandout: {large-print: yes, sentences: {en: {call-title: Call}, es: {call-title: Llame}}}\n',
    );
    assert.deepEqual(practice, {
      name: 'Example Skin',
      telephone: '555-0100',
      afterHours: '555-0101',
      spelling: 'british',
      language: 'es',
      woundCare: {
        ointment: 'petrolatum',
        firstChange: 'next morning',
        open: false,
        pressMinutes: 15,
        pressTimes: 2,
      },
      handout: {
        largePrint: true,
        diagnosis: false,
        sentences: { en: new Map([['call-title', 'Call']]), es: new Map([['call-title', 'Llame']]) },
      },
    });
  });

  it('counts no term out of all proportion', () => {
    const { tables: laid } = lay('overdue: {result: 99999999999, fungal-culture: 43}\n');
    assert.deepEqual(laid.overdue, { ...referenceTables.overdue, fungalCulture: 43 });
  });

  it('keep the defaults of what can not be read', () => {
    const { tables: laid, problems } = lay('spelling: english\nlanguage: ??\noverdue: {result: 15}\n');
    assert.equal(laid.practice.spelling, 'american');
    assert.deepEqual(codes(problems), ['practice/unknown-choice']);
    assert.deepEqual(laid.overdue, { ...referenceTables.overdue, result: 15 });
  });
});

describe('closed days', () => {
  const closed = (text: string): [readonly number[], readonly string[]] => {
    const { weekdays, dates } = tables(`closed: ${text}\n`).closedDays;
    return [[...weekdays].sort(), [...dates]];
  };

  it('are the weekend, and dates add to it', () => {
    assert.deepEqual([...referenceTables.closedDays.weekdays].sort(), [0, 6]);
    assert.deepEqual(closed('[2026-12-25]'), [[0, 6], ['2026-12-25']]);
  });

  it('are the weekdays that are named, once one is named', () => {
    assert.deepEqual(closed('[Sunday, Wednesday, 2026-12-25]'), [[0, 3], ['2026-12-25']]);
    assert.deepEqual(closed('[Sundays, wed]'), [[0, 3], []]);
    assert.deepEqual(closed('none'), [[], []]);
  });

  it('say which word is no day', () => {
    const { problems } = lay('closed: [Sundae, 2026-02-30]\n');
    assert.deepEqual(codes(problems), ['practice/unknown-day', 'practice/unknown-day']);
    assert.equal(problems[0]?.args?.['nearest'], 'Sunday');
  });
});

describe('stock', () => {
  it('is found by its name in plain form', () => {
    const { stock } = tables(
      'stock: [{product: Lido 1% Epi, agent: lignocaine, concentration: 1%, epinephrine: "1:100,000", preservative-free: no, sulfite: yes, preservatives: [methylparaben], buffered: 9:1}]\n',
    );
    const product = stock.get('lido 1% epi');
    assert.equal(product?.agent.name, 'lidocaine');
    assert.equal(product.mgPerMl, 10);
    assert.equal(product.epinephrineMicrogramsPerMl, 10);
    assert.equal(product.preservativeFree, false);
    assert.equal(product.sulfite, true);
    assert.deepEqual(product.preservatives, ['methylparaben']);
    assert.deepEqual(product.buffered?.parts, { anesthetic: 9, bicarbonate: 1 });
  });

  it('leaves out what can not be read for sure, so that no note is judged by a guess', () => {
    const { stock } = tables(
      'stock: [{product: a, agent: lidocaine, concentration: strong}, {product: b, agent: lidocaine, epinephrine: some}, {product: c, agent: ??}]\n',
    );
    assert.equal(stock.size, 0);
  });

  it('keeps the first of two products of one name, and says so', () => {
    const { tables: laid, problems } = lay(
      'stock: [{product: lido, agent: lidocaine, concentration: 1%}, {product: LIDO, agent: lidocaine, concentration: 2%}]\n',
    );
    assert.equal(laid.stock.get('lido')?.mgPerMl, 10);
    assert.deepEqual(codes(problems), ['practice/repeated-product']);
  });

  it('says which agent it does not know', () => {
    const { problems } = lay('stock: [{product: lido, agent: lidocain}]\n');
    assert.deepEqual(codes(problems), ['practice/unknown-agent']);
    assert.equal(problems[0]?.args?.['nearest'], 'lidocaine');
  });
});

describe('authority', () => {
  it('is the one that the practice chooses', () => {
    assert.equal(tables('authority: UK\n').authority, 'UK and Irish product characteristics');
  });

  it('stays the default where the word can set no ceiling', () => {
    for (const word of ['WikEM', 'constructor', 'AAD guideline 2016']) {
      const { tables: laid, problems } = lay(`authority: ${word}\n`);
      assert.equal(laid.authority, referenceTables.authority);
      assert.deepEqual(codes(problems), ['practice/unknown-authority']);
    }
  });

  it('adds its limits to the default ones in restricted mode, and takes none away', () => {
    const { tables: laid, problems } = lay('authority: UK\n', { trusted: false });
    assert.equal(laid.authority, referenceTables.authority);
    assert.ok(referenceTables.limits.every((row) => laid.limits.includes(row)));
    assert.ok(laid.limits.some(({ practice, capMg }) => practice === 'stricter' && capMg === 200));
    assert.deepEqual(codes(problems), ['practice/loosening-ignored']);
  });
});

describe('limits', () => {
  const own = (text: string, trust?: Trust): Tables['limits'] =>
    tables(text, trust).limits.filter(({ practice }) => practice !== undefined);

  it('take a stricter one at once, for both kinds where none is named', () => {
    const rows = own('limits: [{agent: lidocaine, max-mg-per-kg: 3}]\n');
    assert.deepEqual(
      rows.map(({ epinephrine, mgPerKg, practice }) => ({ epinephrine, mgPerKg, practice })),
      [
        { epinephrine: false, mgPerKg: 3, practice: 'stricter' },
        { epinephrine: true, mgPerKg: 3, practice: 'stricter' },
      ],
    );
  });

  it('take exactly the ceiling without a word', () => {
    // US label: 4.5 mg/kg, at most 300 mg.
    const { problems } = lay(
      'limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: 4.5, max-mg: 300}]\n',
    );
    assert.deepEqual(problems, []);
  });

  it('are compared with the very ceiling by which a dose is judged', () => {
    // Several authorities have no row of their own for these, so another rule gives the ceiling.
    for (const [authority, agent, kind] of [
      ['US prescribing information', 'mepivacaine', 'yes'],
      ['UK and Irish product characteristics', 'lidocaine', 'yes'],
      ['Therapeutic Guidelines (Australia)', 'prilocaine', 'yes'],
      ['US prescribing information', 'bupivacaine', 'no'],
    ] as const) {
      const base = tables(`authority: ${authority}\n`);
      const adult = { kg: 1, months: 480 };
      const mgPerKg = ceilingOf(rulesOf(base), agent, kind === 'yes', adult)?.limit.mgPerKg;
      assert.ok(mgPerKg);
      const limit = (value: number): readonly string[] =>
        codes(
          lay(
            `authority: ${authority}\nlimits: [{agent: ${agent}, epinephrine: ${kind}, max-mg-per-kg: ${value}}]\n`,
          ).problems,
        );
      assert.deepEqual(limit(mgPerKg), [], `${authority}: ${agent}`);
      assert.deepEqual(limit(mgPerKg + 0.1), ['practice/looser-limit'], `${authority}: ${agent}`);
    }
  });

  for (const approval of [
    '',
    ', approved: {by: K.O., on: 2026-01-05}',
    ', approved: {by: K.O., reason: habit}',
    ', approved: {on: 2026-01-05, reason: habit}',
    ', approved: {by: ??, on: 2026-01-05, reason: habit}',
  ])
    it(`use no looser one with "${approval}"`, () => {
      const text = `limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: 4.6${approval}}]\n`;
      assert.deepEqual(codes(lay(text).problems), ['practice/looser-limit']);
      assert.ok(own(text).every(({ practice }) => practice === 'stricter'));
      assert.deepEqual(tables(text).loosened, []);
    });

  it('use a looser one with a whole approval, for adults only, and keep the other figure', () => {
    const text = `limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: 6, source: a meeting, ${approved}}]\n`;
    const { tables: laid, problems } = lay(text);
    assert.deepEqual(problems, []);
    const [row] = own(text);
    assert.equal(row?.practice, 'approved');
    assert.equal(row.mgPerKg, 6);
    assert.equal(row.capMg, 300);
    assert.equal(row.population.fromMonths, 18 * 12);
    assert.deepEqual(laid.loosened, [
      {
        agent: 'lidocaine',
        epinephrine: false,
        mgPerKg: 6,
        capMg: 300,
        published: { authority: 'US prescribing information', mgPerKg: 4.5, capMg: 300 },
        source: 'a meeting',
        approval: { by: 'K.O.', on: '2026-01-05', reason: 'invented for this test' },
      },
    ]);
  });

  it('ignore loosenings in restricted mode, and keep what tightens', () => {
    const text = `limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: 6, ${approved}}, {agent: mepivacaine, max-mg: 100}]\n`;
    const { tables: laid, problems } = lay(text, { trusted: false });
    assert.deepEqual(codes(problems), ['practice/loosening-ignored']);
    assert.deepEqual(laid.loosened, []);
    assert.ok(own(text, { trusted: false }).every(({ practice }) => practice === 'stricter'));
    assert.ok(
      laid.limits.some(
        ({ agent, capMg, practice }) => agent === 'mepivacaine' && capMg === 100 && practice === 'stricter',
      ),
    );
  });

  it('say what is missing or not known', () => {
    assert.deepEqual(codes(lay('limits: [{agent: lidocaine}]\n').problems), [
      'practice/limit-without-number',
    ]);
    assert.deepEqual(codes(lay('limits: [{agent: lidocain, max-mg: 100}]\n').problems), [
      'practice/unknown-agent',
    ]);
    assert.deepEqual(lay('limits: [{agent: ??, max-mg: ??}]\n').problems, []);
  });

  it('never take a published row away', () => {
    const figure = fc.option(fc.double({ min: 0.1, max: 1000, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(figure, figure, fc.boolean(), fc.boolean(), (mgPerKg, mg, withApproval, trusted) => {
        const keys = [
          'agent: lidocaine',
          ...(mgPerKg === undefined ? [] : [`max-mg-per-kg: ${mgPerKg.toFixed(2)}`]),
          ...(mg === undefined ? [] : [`max-mg: ${mg.toFixed(2)}`]),
          ...(withApproval ? [approved] : []),
        ];
        const laid = tables(`limits: [{${keys.join(', ')}}]\n`, { trusted });
        assert.ok(referenceTables.limits.every((row) => laid.limits.includes(row)));
        const loosened = laid.limits.some(({ practice }) => practice === 'approved');
        assert.equal(loosened, laid.loosened.length > 0);
        if (!withApproval || !trusted) assert.ok(!loosened);
      }),
      { numRuns: 60 },
    );
  });
});

describe('suture windows', () => {
  it('are for a site, a region or a group that is known', () => {
    const { practiceWindows } = tables(
      'suture-windows: [{site: back, from: 12, to: 16}, {site: Left upper back, from: 10, to: 14}, {site: upper back, from: 11, to: 15}]\n',
    );
    assert.deepEqual(
      practiceWindows.map(({ site }) => site),
      ['back', 'upper back'],
    );
  });

  it('say which site is not known, and which window ends before it begins', () => {
    const { problems } = lay(
      'suture-windows: [{site: foreheed, from: 5, to: 7}, {site: scalp, from: 14, to: 10}, {site: scalp, from: ??, to: 10}]\n',
    );
    assert.deepEqual(codes(problems), ['practice/unknown-site', 'practice/window-backwards']);
  });
});

describe('words of the practice', () => {
  it('extend the tables', () => {
    const laid = tables(
      'words: {dressings: [silk patch], media: [lab mix], materials: [silk cord], preparations: [green soap], hemostasis: [clay], tests: [special stain X], events: [itching spell]}\n',
    );
    assert.equal(laid.dressings.find('Silk Patch')?.name, 'silk patch');
    assert.equal(laid.media.find('lab mix')?.name, 'lab mix');
    assert.equal(laid.materials.find('silk cord')?.absorbable, false);
    assert.ok(laid.preparations.find('green soap'));
    assert.ok(laid.hemostasis.find('clay'));
    assert.ok(laid.tests.find('special stain X'));
    assert.ok(laid.events.find('itching spell'));
    assert.equal(referenceTables.dressings.find('silk patch'), undefined);
  });

  it('never shadow a known word, by name or synonym, nor one another', () => {
    const { tables: laid, problems } = lay(
      'words: {dressings: [petrolatum, silk patch, Silk-Patch], hemostasis: [haemostasis none, electrosurgery]}\n',
    );
    assert.deepEqual(codes(problems).filter((code) => code === 'practice/shadowed-word').length, 3);
    assert.equal(laid.hemostasis.find('electrosurgery'), referenceTables.hemostasis.find('electrosurgery'));
  });

  it('take over what is known of the site that a site is like', () => {
    const thumb = referenceTables.sites.find('thumb');
    const { tables: laid, problems } = lay(
      'words: {sites: [{name: hitchhiker digit, like: thumb, side: no}, {name: odd place, like: nowhere at all}]}\n',
    );
    const own = laid.sites.find('hitchhiker digit');
    assert.equal(own?.endArtery, thumb?.endArtery);
    assert.equal(own?.region, thumb?.region);
    assert.equal(own?.side, 'optional');
    assert.ok(laid.sites.find('odd place'));
    assert.deepEqual(codes(problems), ['practice/unknown-site']);
  });

  it('count as what the practice says of their kind', () => {
    const { tables: laid, problems } = lay(
      'words: {hemostasis: [{name: spark pen, current: yes}, {name: warm wand, current: no}, cold wand], ' +
        'dressings: [{name: blue film, adhesive: yes}, {name: grey sheet, adhesive: no}], ' +
        'preparations: [{name: pink prep, flammable: yes}, {name: clear prep, flammable: no}]}\n',
    );
    assert.equal(laid.hemostasis.find('spark pen')?.stops, 'current');
    assert.equal(laid.hemostasis.find('warm wand')?.stops, 'other');
    assert.deepEqual(laid.dressings.find('blue film')?.contains, ['adhesive']);
    assert.equal(laid.dressings.find('grey sheet')?.adhesive, false);
    assert.equal(laid.preparations.find('pink prep')?.flammable, true);
    assert.equal(laid.preparations.find('clear prep')?.flammable, false);
    assert.deepEqual(
      problems.map(({ code, args }) => [code, args?.['word']]),
      [['practice/word-unjudged', 'cold wand']],
    );
    const note = (rest: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, implants: [ICD], allergies: [adhesive]}\nprocedures:\n  - site: left cheek\n    method: shave\n${rest}`;
    const found = (rest: string): readonly string[] =>
      judge(note(rest), { tables: laid }).findings.map(({ code }) => code);
    assert.ok(found('    hemostasis: spark pen\n').includes('device/electrosurgery'));
    assert.ok(!found('    hemostasis: warm wand\n').includes('device/electrosurgery'));
    assert.ok(found('    dressing: blue film\n').includes('allergy/dressing'));
    assert.ok(!found('    dressing: grey sheet\n').includes('allergy/dressing'));
    const spark = (prep: string): string =>
      `    preparation: ${prep}\n    dry: no\n    hemostasis: spark pen\n`;
    assert.ok(found(spark('pink prep')).includes('hemostasis/fire'));
    assert.ok(!found(spark('clear prep')).includes('hemostasis/fire'));
  });

  it('say of which words only the name is known', () => {
    const { problems } = lay(
      'words: {sites: [old donor area], media: [lab mix], tests: [special stain X]}\n',
    );
    assert.deepEqual(
      problems.map(({ code, form }) => [code, form]),
      [
        ['practice/word-unjudged', 'sites'],
        ['practice/word-unjudged', 'media'],
      ],
    );
  });

  const agent = `name: examplecaine, class: ester, max-mg-per-kg: 2, max-mg: 100, source: invented, ${approved}`;

  it('take an agent with class, limit, source and approval', () => {
    const { tables: laid, problems } = lay(
      `words: {agents: [{${agent}}]}\nstock: [{product: ex, agent: examplecaine}]\n`,
    );
    assert.deepEqual(problems, []);
    assert.equal(laid.agents.find('Examplecaine')?.class, 'ester');
    assert.deepEqual(
      laid.limits
        .filter((row) => row.agent === 'examplecaine')
        .map(({ epinephrine, mgPerKg, capMg, practice }) => [epinephrine, mgPerKg, capMg, practice]),
      [
        [false, 2, 100, 'approved'],
        [true, 2, 100, 'approved'],
      ],
    );
    assert.equal(laid.loosened.length, 2);
    assert.ok(laid.stock.get('ex'));
  });

  for (const part of [
    'class: ester, ',
    'max-mg-per-kg: 2, max-mg: 100, ',
    'source: invented, ',
    `, ${approved}`,
  ])
    it(`leave an agent out without "${part}"`, () => {
      const { tables: laid, problems } = lay(`words: {agents: [{${agent.replace(part, '')}}]}\n`);
      assert.deepEqual(codes(problems), ['practice/incomplete-agent']);
      assert.equal(laid.agents.find('examplecaine'), undefined);
    });

  it('know an agent in restricted mode without its limit', () => {
    const { tables: laid, problems } = lay(`words: {agents: [{${agent}}]}\n`, { trusted: false });
    assert.deepEqual(codes(problems), ['practice/loosening-ignored']);
    assert.ok(laid.agents.find('examplecaine'));
    assert.ok(laid.limits.every((row) => row.agent !== 'examplecaine'));
  });

  it('do not change what a known agent is', () => {
    const { tables: laid, problems } = lay(
      `words: {agents: [{${agent.replace('examplecaine', 'lidocaine')}}]}\n`,
    );
    assert.deepEqual(codes(problems), ['practice/shadowed-word']);
    assert.equal(laid.agents.find('lidocaine')?.class, 'amide');
    assert.deepEqual(laid.limits, referenceTables.limits);
    assert.deepEqual(laid.loosened, []);
  });
});

describe('severities', () => {
  it('are words that exist', () => {
    const { tables: laid, problems } = lay(
      'severities: {record/missing-depth: off, dose/over-limit: loud}\n',
    );
    assert.deepEqual([...laid.severities], [['record/missing-depth', 'off']]);
    assert.deepEqual(codes(problems), ['practice/unknown-severity']);
  });
});

describe('any practice file', () => {
  it('is laid over the tables without a throw', () => {
    const words = fc.constantFrom(
      '??',
      'lidocaine',
      'constructor',
      '__proto__',
      '1',
      '',
      '[]',
      '{}',
      '[{}]',
      'x: y',
      '{agent: lidocaine}',
    );
    const keys = fc.constantFrom(
      'closed',
      'stock',
      'limits',
      'words',
      'suture-windows',
      'severities',
      'authority',
      'overdue',
      'wound-care',
      '__proto__',
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(keys, words), { maxLength: 6 }), (pairs) => {
        lay(pairs.map(([key, word]) => `${key}: ${word}\n`).join(''));
      }),
    );
  });
});

describe('trade names of a practice', () => {
  const text = 'trade-names: {Blue vial: lidocaine, Pink paste: triple antibiotic ointment}\n';
  const own = lay(text);

  it('are read as the generic word in every table that has it', () => {
    assert.deepEqual(own.problems, []);
    assert.equal(own.tables.agents.find('blue vial'), own.tables.agents.find('lidocaine'));
    assert.equal(own.tables.dressings.find('Pink paste')?.name, 'triple antibiotic ointment');
    assert.equal(own.tables.allergens.find('pink paste')?.name, 'topical antibiotics');
    assert.ok(![...own.tables.agents.words].includes('blue vial'));
  });

  it('keep those that are known already', () => {
    const [known] = referenceTables.materials.rows.flatMap(({ tradeNames = [] }) => tradeNames);
    const found = tables('trade-names: {Pale thread: nylon}\n').materials;
    assert.equal(found.find('pale thread')?.name, 'nylon');
    assert.equal(found.find(known ?? '')?.name, referenceTables.materials.find(known ?? '')?.name);
  });

  it('make no known word another', () => {
    for (const entry of ['latex: petrolatum', 'formalin: saline', 'Blue vial: lidocaine, blue-vial: nylon']) {
      const { problems, tables: laid } = lay(`trade-names: {${entry}}\n`);
      assert.deepEqual(codes(problems), ['practice/shadowed-word'], entry);
      assert.equal(laid.allergens.find('latex')?.name, 'latex');
      assert.equal(laid.media.find('formalin')?.name, 'formalin');
    }
  });

  it('say that a generic word is not known, and are never an answer such as none', () => {
    for (const generic of ['lidocain', 'none', 'NKDA', 'constructor', 'nothing at all'])
      assert.deepEqual(codes(lay(`trade-names: {Blue vial: ${generic}}\n`).problems), [
        'practice/unknown-generic',
      ]);
  });
});
