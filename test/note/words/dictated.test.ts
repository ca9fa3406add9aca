import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readInjectionLine } from '../../../src/note/words/dictated.ts';
import type { Injection } from '../../../src/note/generated/types.ts';
import { readNote } from '../../../src/note/read.ts';
import { problemsOf } from '../spelled.ts';

/** What a line states, key by key: the words typed, and what they are read as where that differs. */
function stated(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readInjectionLine(text).fields.map(({ key, from, to, says }) => [
      key,
      says === undefined ? text.slice(from, to) : `${text.slice(from, to)} = ${says}`,
    ]),
  );
}
const said = (text: string): readonly string[] =>
  problemsOf(text, { value: undefined, problems: readInjectionLine(text).problems });

const standard = { agent: 'lidocaine', concentration: '1%', volume: '1.5 mL' };

describe('a dictated injection', () => {
  it('may name its parts in any order', () => {
    const parts = ['1.5 mL', 'lidocaine', '1%', 'epinephrine 1:100,000', 'buffered 9:1'];
    fc.assert(
      fc.property(
        fc.shuffledSubarray(parts, { minLength: 5 }),
        fc.constantFrom(' ', ', ', '; ', ' with ', ' + '),
        (order, glue) => {
          const line = order.join(glue);
          assert.deepEqual(stated(line), { ...standard, epinephrine: '1:100,000', buffered: '9:1' }, line);
          assert.deepEqual(said(line), [], line);
        },
      ),
    );
  });

  it('is understood as people dictate it', () => {
    const lines: readonly [string, Readonly<Record<string, string>>][] = [
      ['lidocaine 1% 1.5 mL', standard],
      ['1½ mL lidocaine 1%', { ...standard, volume: '1½ mL' }],
      ['1.5 mL of 1% lidocaine', standard],
      ['1.5mL 1%lidocaine', { ...standard, volume: '1.5mL' }],
      ['1.5 mL of 1% lidocaine w/ epi 1:100,000', { ...standard, epinephrine: '1:100,000' }],
      ['1.5 mL 1% lidocaine w/epi 1:100 000', { ...standard, epinephrine: '1:100 000' }],
      ['1% lidocaine with 1:100,000 epinephrine, 1.5 mL', { ...standard, epinephrine: '1:100,000' }],
      ['lidocaine 1%/epi 1:200,000 1.5 mL', { ...standard, epinephrine: '1:200,000' }],
      ['lidocaine 1% with adrenaline 1 in 80,000, 1.5 mL', { ...standard, epinephrine: '1 in 80,000' }],
      ['lidocaine 1% with epinephrine 10 µg/mL, 1.5 mL', { ...standard, epinephrine: '10 µg/mL' }],
      ['lidocaine 1% plain 1.5 mL', { ...standard, epinephrine: 'plain = none' }],
      ['1.5 mL lidocaine 1% without epinephrine', { ...standard, epinephrine: 'without epinephrine = none' }],
      ['1.5 mL lidocaine 1% no epi', { ...standard, epinephrine: 'no epi = none' }],
      ['1.5 mL lidocaine 1% buffered', { ...standard, buffered: 'buffered = yes' }],
      ['1.5 mL lidocaine 1% buffered with sodium bicarbonate 10:1', { ...standard, buffered: '10:1' }],
      ['1.5 mL lidocaine 1% buffered 9:1 with 8.4% bicarb', { ...standard, buffered: '9:1' }],
      ['1.5 mL lidocaine 1% (8.4% sodium bicarbonate 9:1)', { ...standard, buffered: '9:1' }],
      ['1.5 mL lidocaine 1% buffered with 8.4% bicarbonate', { ...standard, buffered: 'buffered = yes' }],
      [
        '1.5 mL lidocaine 1% with epinephrine 1:100,000 (10 mcg/mL)',
        { ...standard, epinephrine: '1:100,000 (10 mcg/mL)' },
      ],
      [
        'lidocaine 1% 1.5 mL, epi 10 mcg/mL = 1:100,000, buffered 9:1',
        { ...standard, epinephrine: '10 mcg/mL = 1:100,000', buffered: '9:1' },
      ],
      ['1.5 mL lidocaine 1% not buffered', { ...standard, buffered: 'not buffered = no' }],
      ['1.5 mL lidocaine 1% at 10:13', { ...standard, time: '10:13' }],
      [
        '1.5 mL lidocaine 1% preservative-free',
        { ...standard, 'preservative-free': 'preservative-free = yes' },
      ],
      ['1.5 mL lidocaine 1% lot AB-123', { ...standard, lot: 'AB-123' }],
      ['1.5 mL lidocaine 1% digital block', { ...standard, route: 'digital block' }],
      ['2 g lidocaine-prilocaine cream', { amount: '2 g', agent: 'lidocaine-prilocaine cream' }],
      [
        'lidocaine 4% cream 2 g over 20 cm2 on 9:10 off 10:10',
        {
          agent: 'lidocaine = lidocaine cream',
          concentration: '4%',
          amount: '2 g',
          area: '20 cm2',
          on: '9:10',
          off: '10:10',
        },
      ],
      ['vapocoolant spray', { agent: 'vapocoolant spray' }],
    ];
    for (const [line, parts] of lines) {
      assert.deepEqual(stated(line), parts, line);
      assert.deepEqual(said(line), [], line);
    }
  });

  it('asks what a bare "epi" is', () => {
    assert.deepEqual(stated('1.5 mL lido 1% epi'), {
      volume: '1.5 mL',
      agent: 'lido',
      concentration: '1%',
      epinephrine: 'epi',
    });
  });

  it('is a product where it holds no volume, and no known agent with a strength', () => {
    for (const line of ['house mix', 'lido epi', 'lidocaine with epi', 'mix 1%'])
      assert.deepEqual(stated(line), { product: line });
    assert.deepEqual(stated('1.5 mL house mix'), { volume: '1.5 mL', product: 'house mix' });
    assert.deepEqual(stated('lidocaine'), { agent: 'lidocaine' });
    assert.deepEqual(stated('lidocaine 1%'), { agent: 'lidocaine', concentration: '1%' });
  });

  it('keeps a misspelt agent an agent', () => {
    assert.deepEqual(stated('1.5 mL lidocane'), { volume: '1.5 mL', agent: 'lidocane' });
    assert.deepEqual(stated('1.5 mL mixocaine 1%'), {
      volume: '1.5 mL',
      agent: 'mixocaine',
      concentration: '1%',
    });
  });

  it('says nothing was given', () => {
    for (const line of ['none', 'None', 'no anesthetic', 'no local anaesthesia used'])
      assert.deepEqual(readInjectionLine(line), { fields: [], problems: [] });
  });

  it('lets no word vanish', () => {
    const line = ['1.5 mL', 'lidocaine', '1%', 'with', 'epinephrine', '1:100,000', 'buffered', '9:1'];
    for (let at = 0; at <= line.length; at++) {
      const text = [...line.slice(0, at), 'zq', ...line.slice(at)].join(' ');
      assert.deepEqual(said(text), ['quantity/not-understood/word [zq]'], text);
    }
  });

  it('takes no amount out of digits that follow letters', () => {
    for (const line of ['x1.5 mL lidocaine 1%', 'x0.4 mL lidocaine 1%', 'vial2,5 mL lidocaine 1%']) {
      const { fields, problems } = readInjectionLine(line);
      assert.ok(!fields.some(({ key }) => key === 'volume'), line);
      assert.ok(problems.length > 0, line);
    }
  });

  it('is loud about words that can multiply the dose', () => {
    const after = (words: string): readonly string[] => said(`lidocaine 1% 1.5 mL${words}`);
    assert.deepEqual(after(' x 2'), ['quantity/not-understood/amount [x 2]']);
    assert.deepEqual(after(' x2'), ['quantity/not-understood/amount [x2]']);
    assert.deepEqual(after(' each side'), ['quantity/not-understood/amount [each side]']);
    assert.deepEqual(after('/site'), ['quantity/not-understood/amount [/site]']);
    assert.deepEqual(after(' twice'), ['quantity/not-understood/amount [twice]']);
    assert.deepEqual(after(' and 1 mL bupivacaine 0.25%'), [
      'quantity/not-understood/twice [1 mL bupivacaine 0.25%]',
    ]);
  });
});

function injectionOf(value: string): {
  readonly text: string;
  readonly injection: Injection;
  readonly codes: readonly string[];
} {
  const text = `visit: 2026-03-02\nprocedures:\n  - site: left upper back\n    anesthetic: ${value}\n`;
  const { value: note, problems } = readNote(text);
  const injection = note?.procedures?.[0]?.anesthetic?.[0];
  assert.ok(injection !== undefined);
  return { text, injection, codes: problems.map(({ code }) => code) };
}

const keys = [
  'product',
  'agent',
  'concentration',
  'epinephrine',
  'volume',
  'amount',
  'buffered',
  'time',
] as const;

describe('a dictated injection in a note', () => {
  it('binds to what the map with the same words binds to, each part where it stands', () => {
    const line = injectionOf('1.5 mL lidocaine 1% with epinephrine 1:100,000 buffered 9:1 at 10:13');
    const map = injectionOf(
      '{volume: 1.5 mL, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", buffered: 9:1, time: 10:13}',
    );
    assert.deepEqual([line.codes, map.codes], [[], []]);
    assert.deepEqual([...line.injection.keys.keys()], [...map.injection.keys.keys()]);
    for (const key of keys) {
      const [one, other] = [line.injection[key], map.injection[key]];
      assert.deepEqual(one?.value, other?.value, key);
      assert.equal(one?.text, other?.text, key);
      if (one !== undefined) assert.equal(line.text.slice(one.start, one.end), one.text);
    }
  });

  it('is found at exact places inside of quotes and lists too', () => {
    const { text, injection } = injectionOf('["1.5 mL lidocaine 1% w/ epi 1:100,000"]');
    assert.equal(text.slice(injection.volume!.start, injection.volume!.end), '1.5 mL');
    assert.equal(text.slice(injection.epinephrine!.start, injection.epinephrine!.end), '1:100,000');
  });

  it('reports faults of its parts at those parts', () => {
    const text = 'visit: 2026-03-02\nanesthetic: .5 cc lidocaine 1% epi slowly\n';
    assert.deepEqual(
      readNote(text).problems.map(({ code, at }) => `${code} [${text.slice(at.start, at.end)}]`),
      [
        'quantity/not-understood [slowly]',
        'quantity/leading-zero [.5]',
        'quantity/misread-unit [cc]',
        'quantity/strength-unsaid [epi]',
      ],
    );
  });

  it('is no entry where nothing was given, and pending where it is not yet known', () => {
    assert.deepEqual(readNote('anesthetic: none\n').value?.anesthetic, []);
    assert.equal(readNote('anesthetic: ??\n').value?.anesthetic?.[0]?.product?.pending, true);
  });

  it('reads quantities in words, and no part of a longer number', () => {
    for (const [text, volume, concentration] of [
      ['half a mL of lidocaine 1%', 0.5, 10],
      ['1 mL lidocaine one percent', 1, 10],
      ['one and a half mL lidocaine two percent', 1.5, 20],
      ['one point two five mL lidocaine 1%', 1.25, 10],
      ['point five mL lidocaine 1%', 0.5, 10],
      ['ten mL lidocaine 1%', 10, 10],
      ['twenty five mL lidocaine 1%', undefined, 10],
      ['1 and a half mL lidocaine 1%', undefined, 10],
      ['two hundred five mL lidocaine 1%', undefined, 10],
    ] as const) {
      const { injection } = injectionOf(text);
      assert.equal(injection.volume?.value?.amount, volume, text);
      assert.equal(injection.concentration?.value?.amount, concentration, text);
    }
  });

  it('passes over how it was given, and is no entry where none was needed', () => {
    for (const text of [
      '1 mL lidocaine 1% plain as a digital block',
      '1 mL lidocaine 1% plain, finger block',
    ])
      assert.deepEqual(readNote(`anesthetic: ${text}\n`).problems, [], text);
    assert.notDeepEqual(readNote('anesthetic: 1 mL lidocaine 1% plain, each finger\n').problems, []);
    for (const text of ['none needed', 'not needed', 'none required'])
      assert.deepEqual(readNote(`anesthetic: ${text}\n`).value?.anesthetic, [], text);
  });
});
