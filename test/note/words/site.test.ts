import assert from 'node:assert/strict';
import fc from 'fast-check';
import { nearestSite } from '../../../src/note/words/site-nearest.ts';
import { readSite, type SiteReading } from '../../../src/note/words/site.ts';
import { WordTable } from '../../../src/note/words/word-table.ts';
import { sites } from '../../../src/reference/sites.ts';

const table = new WordTable(sites);
const read = (text: string): SiteReading | undefined => readSite(text, table);

/** Text, base site, side, surface. */
const phrases: readonly (readonly [string, string, string?, string?])[] = [
  ['left upper back', 'upper back', 'left'],
  ['upper back, left', 'upper back', 'left'],
  ['upper left back', 'upper back', 'left'],
  ['Left Upper-Back', 'upper back', 'left'],
  ['LEFT UPPER BACK', 'upper back', 'left'],
  ['back, left upper', 'upper back', 'left'],
  ['upper back (left)', 'upper back', 'left'],
  ['left-sided upper back', 'upper back', 'left'],
  ['the left aspect of the upper back', 'upper back', 'left'],
  ['upper back, midline', 'upper back', 'midline'],
  ['central upper back', 'upper back', 'midline', 'mid'],
  ['4 cm from midline, left lower back', 'lower back', 'left'],
  ['left lower back 4.5 cm from the midline', 'lower back', 'left'],
  ['upper back, left of midline', 'upper back', 'left'],
  ['R nasal ala', 'nasal ala', 'right'],
  ['nose, left ala', 'nasal ala', 'left'],
  ['ala of the nose, rt', 'nasal ala', 'right'],
  ['left side of the nose', 'nasal sidewall', 'left'],
  ['tip of nose', 'nasal tip'],
  ['bridge of the nose', 'nasal dorsum'],
  ['dorsum of right 3rd finger', 'middle finger', 'right', 'dorsal'],
  ['right ring finger, dorsal', 'ring finger', 'right', 'dorsal'],
  ['right hand, second digit', 'index finger', 'right'],
  ['2nd digit of the left hand, volar', 'index finger', 'left', 'volar'],
  ['left 5th finger', 'little finger', 'left'],
  ['tip of left thumb', 'thumb', 'left'],
  ['nail bed of the right great toe', 'great toenail', 'right'],
  ['left thumb nail', 'thumbnail', 'left'],
  ['right hallux, medial', 'great toe', 'right', 'medial'],
  ['left 4th toe', 'fourth toe', 'left'],
  ['L. cheek', 'cheek', 'left'],
  ['lt cheek', 'cheek', 'left'],
  ['(L) post-auricular', 'postauricular skin', 'left'],
  ['behind the left ear', 'postauricular skin', 'left'],
  ['below the right eye', 'infraorbital cheek', 'right'],
  ['left cheek, 2 cm below the right eye', 'cheek', 'left'],
  ['right cheek lateral to the nose', 'cheek', 'right'],
  ['both cheeks', 'cheek', 'both'],
  ['bilateral forearms', 'forearm', 'both'],
  ['left and right cheeks', 'cheek', 'both'],
  ['back of left hand', 'dorsal hand', 'left'],
  ['left hand, dorsal', 'dorsal hand', 'left'],
  ['back of the neck', 'posterior neck'],
  ['nape', 'posterior neck'],
  ['scalp, vertex', 'vertex of the scalp'],
  ['right superior helix', 'helix', 'right', 'upper'],
  ['left earlobe', 'earlobe', 'left'],
  ['right inner thigh', 'medial thigh', 'right'],
  ['left calves', 'calf', 'left'],
  ['soles of both feet', 'sole', 'both'],
  ['right distal volar forearm', 'volar forearm', 'right', 'distal'],
  ['left lower leg, anterior', 'shin', 'left'],
  ['between the shoulder blades', 'interscapular back'],
  ['left of the glabella', 'glabella', 'left'],
  ['upper back \u2013 left', 'upper back', 'left'],
  ['left\u00a0upper\u00a0back', 'upper back', 'left'],
  ['left lower eyelid', 'lower eyelid', 'left'],
  ['left inner canthus', 'medial canthus', 'left'],
  ['upper outer quadrant of right breast', 'breast', 'right', 'upper lateral'],
  ['left upper quadrant of abdomen', 'upper abdomen', 'left'],
];

describe('readSite', () => {
  for (const [text, base, side, surface] of phrases) {
    it(`reads "${text}"`, () => {
      const reading = read(text);
      assert.deepEqual(
        { base: reading?.base.name, side: reading?.side, surface: reading?.surface },
        { base, side, surface },
      );
      assert.equal(reading?.contradiction, undefined);
    });
  }

  it('finds each site that needs a side with each way to write one, in front and behind', () => {
    const words = { left: 'left', right: 'right', L: 'left', R: 'right', 'lt.': 'left', 'rt.': 'right' };
    for (const { name, side } of sites) {
      if (side !== 'needed') continue;
      for (const [word, meant] of Object.entries(words)) {
        for (const text of [`${word} ${name}`, `${name}, ${word}`, `${name} (${word})`]) {
          const reading = read(text);
          assert.deepEqual([text, reading?.base.name, reading?.side], [text, name, meant]);
        }
      }
    }
  });

  it('finds each site by its name and by each synonym', () => {
    for (const { name, synonyms } of sites)
      for (const word of [name, ...synonyms]) assert.equal(read(word)?.base.name, name, word);
  });

  it('says where the side words stand', () => {
    const text = 'dorsum of R hand';
    const [side] = read(text)?.sides ?? [];
    assert.equal(text.slice(side?.from, side?.to), 'R');
    assert.equal(side?.abbreviated, true);
    assert.equal(read('right hand')?.sides[0]?.abbreviated, false);
  });

  for (const text of [
    'left cheek, right',
    'right left cheek',
    'left upper back, 4 cm right of midline',
    'left upper back, midline',
    'bilateral left forearm',
    'L/R cheek',
  ]) {
    it(`finds two sides in "${text}"`, () => {
      const reading = read(text);
      assert.notEqual(reading?.contradiction, undefined);
      assert.equal(reading?.side, undefined);
    });
  }

  it('does not take the side of a landmark for that of the site', () => {
    assert.equal(read('cheek, 2 cm below left eye')?.side, undefined);
    assert.equal(read('left cheek near right nasal ala')?.side, 'left');
    assert.equal(read('left side of the right cheek')?.side, 'right');
  });

  it('takes the side of a landmark of the same limb, where none else is said', () => {
    assert.equal(read('web space between right first and second toes')?.side, 'right');
    assert.equal(read('web space between right first and second toes')?.base.name, 'toe web');
    assert.equal(read('left web space between thumb and index finger')?.base.name, 'finger web');
    assert.equal(read('left web space')?.base.name, 'web space');
    assert.equal(read('left web space near a constructor')?.base.name, 'web space');
    assert.equal(read('volar forearm, 4 cm from left wrist')?.side, 'left');
    assert.equal(read('left shin, 4 cm below right knee')?.side, 'left');
    assert.equal(read('back, 2 cm below left scapula')?.side, undefined);
    assert.equal(read('shin, 2 cm from left scar and from right scar')?.side, undefined);
  });

  it('does not take a landmark for the site', () => {
    assert.equal(read('2 cm below the left ear'), undefined);
    assert.equal(read('left cheek, 1 cm from lateral canthus')?.base.name, 'cheek');
  });

  it('knows what is too vague, unless more is said', () => {
    for (const text of [
      'back',
      'left arm',
      'face',
      'leg, right',
      'finger',
      'left side of face',
      'back lesion',
      '5th digit',
    ])
      assert.equal(read(text)?.vague, true, text);
    for (const text of [
      'left lateral back',
      'left distal arm',
      'left arm, 3 cm above elbow',
      'upper back',
      'glabella',
    ])
      assert.equal(read(text)?.vague, false, text);
  });

  it('keeps the words that are left over', () => {
    assert.deepEqual(read('left cheek mole distal')?.qualifiers, ['mole', 'distal']);
    assert.deepEqual(read('left cheek 2 cm from the ear')?.qualifiers, []);
  });

  it('gives fingers and toes their number', () => {
    assert.deepEqual(
      ['thumb', 'left index', 'ring finger', 'pinky', 'big toe', '3rd toe'].map((text) => read(text)?.digit),
      [1, 2, 4, 5, 1, 3],
    );
    assert.equal(read('right toe 2.5 cm from the heel')?.digit, undefined, 'a distance');
    assert.equal(read('first finger')?.digit, undefined, 'thumb to some, index finger to others');
  });

  it('knows what a practice adds, which takes no words from a site that was there', () => {
    const model = sites[0]!;
    const own = new WordTable([
      ...sites,
      { ...model, name: 'vaccination scar', synonyms: [] },
      { ...model, name: 'back upper', synonyms: [] },
    ]);
    assert.equal(readSite('left vaccination scar', own)?.base.name, 'vaccination scar');
    assert.equal(readSite('left back, upper', own)?.base.name, 'upper back');
  });

  it('answers nothing for words that name no site', () => {
    for (const text of ['', 'left', 'constructor', '__proto__', 'somewhere', '??', '🙂', ',,,('])
      assert.equal(read(text), undefined, text);
  });

  it('says where a side stands behind letters that grow when they are made small', () => {
    const text = '\u0130\u0130 cheek R';
    const [side] = read(text)?.sides ?? [];
    assert.equal(text.slice(side?.from, side?.to), 'R');
  });

  it('says whether the words also tell what lies near', () => {
    assert.equal(read('left cheek, 2 cm below the eye')?.landmarks, true);
    assert.equal(read('behind the left ear')?.landmarks, false);
    assert.equal(read('left cheek, distal')?.landmarks, false);
  });

  it('takes no text of half a megabyte for a site', () => {
    assert.equal(read('upper back '.repeat(50_000)), undefined);
  });

  it('reads any text without failing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        for (const { from, to } of read(text)?.sides ?? [])
          assert.ok(from >= 0 && from < to && to <= text.length);
      }),
    );
  });

  it('does not care in which order base words and side stand', () => {
    const words = fc.constantFrom<readonly string[]>(
      ['left', 'upper', 'back'],
      ['right', 'nasal', 'ala'],
      ['left', 'ring', 'finger'],
    );
    fc.assert(
      fc.property(
        words.chain((parts) =>
          fc.tuple(fc.constant(parts), fc.shuffledSubarray([...parts], { minLength: 3 })),
        ),
        ([parts, shuffled]) => {
          const [one, two] = [read(parts.join(' ')), read(shuffled.join(', '))];
          assert.deepEqual([two?.base.name, two?.side], [one?.base.name, one?.side]);
        },
      ),
    );
  });
});

describe('nearestSite', () => {
  it('puts misspelt words right', () => {
    for (const [typed, meant] of [
      ['left upper bakc', 'left upper back'],
      ['lfet cheek', 'left cheek'],
      ['right sholder', 'right shoulder'],
      ['antecubtal fossa, L', 'antecubital fossa, L'],
    ] as const)
      assert.equal(nearestSite(typed, table)?.text, meant);
  });

  it('answers nothing where nothing is misspelt or nothing is near', () => {
    assert.equal(nearestSite('left upper back', table), undefined);
    assert.equal(nearestSite('qwxyz', table), undefined);
  });
});
