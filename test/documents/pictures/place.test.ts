import assert from 'node:assert/strict';
import { placePicture, type PlaceOptions } from '../../../src/documents/pictures/place.ts';
import type { Picture } from '../../../src/documents/pictures/picture.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { sites } from '../../../src/reference/sites.ts';
import { attributesOf, overlaps, textBoxes, type Box } from './svg-data.ts';

function maybe(places: readonly string[], options?: PlaceOptions): Picture | undefined {
  const lines = places.map((site) => `  - site: ${site}\n`);
  const { value } = readNote(`wheal: 1\nprocedures:\n${lines.join('')}`);
  assert.ok(value !== null);
  return placePicture(value, referenceTables, options);
}

function drawn(places: readonly string[], options?: PlaceOptions): Picture {
  const picture = maybe(places, options);
  assert.ok(picture !== undefined);
  return picture;
}

const where = (site: string): string => drawn([site]).table.rows[0]?.[2] ?? '';

/** Centers of the areas, and of the text that names the drawing they are on; for a picture of one drawing. */
function offMiddle(site: string): readonly number[] {
  const { svg } = drawn([site]);
  const title = attributesOf(svg, 'text').find((text) => text['y'] === '11');
  return attributesOf(svg, 'ellipse').map(({ cx }) => Number(cx) - Number(title?.['x']));
}

const badges = (svg: string): readonly Box[] =>
  attributesOf(svg, 'circle').map(({ cx, cy, r }, at) => ({
    name: `number ${at + 1}`,
    left: Number(cx) - Number(r),
    right: Number(cx) + Number(r),
    top: Number(cy) - Number(r),
    bottom: Number(cy) + Number(r),
  }));

/** The numbers themselves are within their circles, so only the other texts count beside these. */
const around = (svg: string): readonly Box[] => [
  ...badges(svg),
  ...textBoxes(svg).filter(({ name }) => !/^\d+$/.test(name)),
];

const tens: readonly (readonly string[])[] = [
  [
    'upper back',
    'mid back',
    'lower back',
    'scapula',
    'flank',
    'buttock',
    'calf',
    'elbow',
    'paraspinal back',
    'lateral back',
  ],
  [
    'cheek',
    'nose',
    'eyebrow',
    'chin',
    'upper lip',
    'malar cheek',
    'lower eyelid',
    'nasal ala',
    'medial canthus',
    'lower cheek',
  ],
  [
    'thumb',
    'index finger',
    'middle finger',
    'ring finger',
    'little finger',
    'thumbnail',
    'dorsal hand',
    'knuckle',
    'finger web',
    'hand',
  ],
  [
    'great toe',
    'second toe',
    'third toe',
    'fourth toe',
    'fifth toe',
    'great toenail',
    'dorsal foot',
    'medial foot',
    'lateral foot',
    'toe web',
  ],
  [
    'helix',
    'antihelix',
    'concha',
    'tragus',
    'antitragus',
    'earlobe',
    'ear canal',
    'scaphoid fossa',
    'triangular fossa',
    'helical root',
  ],
  Array.from({ length: 10 }, () => 'upper back'),
];

describe('the picture of places', () => {
  it('has every site on the drawing of its side', () => {
    for (const { name, side } of sites) {
      if (side === 'never') assert.equal(drawn([name]).notDrawn.length, 0, name);
      else
        for (const one of ['left', 'right'])
          assert.deepEqual(drawn([`${one} ${name}`]).notDrawn, [], `${one} ${name}`);
    }
  });

  it('mirrors every site of a view of both sides', () => {
    for (const { name, side } of sites) {
      const left = where(`left ${name}`);
      if (side === 'never' || left.includes(';') || /left/i.test(left)) continue;
      const [one, other] = [offMiddle(`left ${name}`), offMiddle(`right ${name}`)];
      assert.equal(one.length, other.length, name);
      for (const [at, place] of one.entries()) {
        assert.ok(Math.abs(place + other[at]!) < 0.2, `${name}: ${place} and ${other[at]!}`);
        const fromFront =
          left === 'From behind' || left.endsWith('from behind') || left.endsWith('from above') ? -1 : 1;
        assert.ok(place * fromFront > 0, `${name} of the left is on the side of the patient's left`);
      }
    }
  });

  it('has the hand of the side that is named, the thumb on the right place', () => {
    assert.equal(where('left dorsal hand'), 'Left hand, back');
    assert.ok(offMiddle('left thumbnail')[0]! > 20);
    assert.ok(offMiddle('right thumbnail')[0]! < -20);
  });

  it('shows what the words leave open wherever it may be', () => {
    assert.equal(where('left thigh'), 'From the front; From behind');
    assert.equal(where('left thumb'), 'Left hand, back; Left hand, palm');
    assert.equal(where('left finger, dorsal'), 'Left hand, back');
    assert.equal(where('left anterior thigh'), 'From the front');
  });

  it('marks both sides where both are named, and the middle where that is', () => {
    assert.equal(attributesOf(drawn(['bilateral knees']).svg, 'ellipse').length, 2);
    const [middle] = offMiddle('midline forehead');
    assert.equal(middle, 0);
  });

  it('never guesses a side', () => {
    assert.match(drawn(['arm']).notDrawn.join(' '), /no side is named/);
    assert.match(drawn(['left right arm']).notDrawn.join(' '), /two sides are named/);
    assert.match(drawn(['by the window']).notDrawn.join(' '), /no site that is known/);
    assert.match(drawn(['??']).notDrawn.join(' '), /^1\. not yet known: not on the figure/);
    assert.equal(attributesOf(drawn(['arm']).svg, 'ellipse').length, 0);
  });

  it('has no number over another, nor over a label, for ten procedures on one view', () => {
    for (const ten of tens)
      for (const side of ['left', 'right', 'bilateral']) {
        const { svg } = drawn(ten.map((site) => `${side} ${site}`));
        assert.deepEqual(overlaps(around(svg)), [], `${side} ${ten[0]!}`);
      }
  });

  it('has its labels apart and within its width in both languages', () => {
    const all = sites.map(({ name, side }) => (side === 'never' ? name : `left ${name}`));
    for (const language of ['en', 'es'] as const) {
      const { svg } = drawn(
        all.filter((_, at) => at % 9 === 0),
        { language },
      );
      assert.deepEqual(overlaps(textBoxes(svg)), []);
      for (const { left, right, name } of textBoxes(svg)) assert.ok(left >= -0.1 && right <= 480.1, name);
    }
  });

  it('has the numbers of the text', () => {
    const { svg, table } = drawn(['left arm', 'glabella', 'right calf'], { only: [1, 2] });
    assert.deepEqual(
      table.rows.map(([number, site]) => `${number!} ${site!}`),
      ['2 glabella', '3 right calf'],
    );
    const numbers = textBoxes(svg).map(({ name }) => name);
    assert.ok(numbers.includes('2') && numbers.includes('3') && !numbers.includes('1'));
  });

  it('leaves the genital area out where that is asked', () => {
    assert.equal(where('perianal skin'), 'Genital and anal area');
    assert.equal(maybe(['perianal skin'], { intimate: false }), undefined);
    const { table } = drawn(['perianal skin', 'left arm'], { intimate: false });
    assert.deepEqual(
      table.rows.map((row) => row[0]),
      ['2'],
    );
  });

  it('says the same in words', () => {
    const { alternative } = drawn(['left upper back', 'right palm']);
    assert.match(alternative, /1\. left upper back: From behind\. 2\. right palm: Right hand, palm\./);
    assert.match(alternative, /^Left and right are those of the patient\./);
  });

  it('is not there where the note has no procedure', () => {
    const { value } = readNote('wheal: 1\n');
    assert.ok(value !== null);
    assert.equal(placePicture(value, referenceTables), undefined);
  });
});
