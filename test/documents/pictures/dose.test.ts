import assert from 'node:assert/strict';
import { judgeDose } from '../../../src/dose/judge.ts';
import { dosePicture } from '../../../src/documents/pictures/dose.ts';
import { figureHtml, type Picture } from '../../../src/documents/pictures/picture.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { attributesOf, overlaps, textBoxes } from './svg-data.ts';

const note = (volume: string, more = '', patient = 'weight: 62 kg, age: 60'): string => `wheal: 1
visit: 2026-03-02
patient: {id: C-1, ${patient}}
procedures:
  - site: left upper back
    anesthetic:
      - {agent: lidocaine, concentration: 1%, volume: ${volume}}
${more}`;

const bupivacaine = '      - {agent: bupivacaine, concentration: 0.25%, volume: 20 mL}\n';

function pictureOf(text: string): Picture {
  const { value } = readNote(text);
  assert.ok(value !== null);
  const picture = dosePicture(judgeDose(value, referenceTables), referenceTables);
  assert.ok(picture !== undefined);
  return picture;
}

const bars = (picture: Picture): readonly number[] =>
  attributesOf(picture.svg, 'rect', 'wheal-bar').map(({ width }) => Number(width));

describe('the picture of a dose', () => {
  it('is as long as the share of the ceiling', () => {
    const [ten] = bars(pictureOf(note('10 mL')));
    const [twenty] = bars(pictureOf(note('20 mL')));
    assert.ok(ten !== undefined && twenty !== undefined);
    assert.ok(Math.abs(twenty / ten - 2) < 0.02, `${ten} ${twenty}`);
  });

  it('goes past the ceiling in another shape, and says so', () => {
    const below = pictureOf(note('20 mL'));
    const above = pictureOf(note('35 mL'));
    assert.equal(attributesOf(below.svg, 'rect', 'wheal-over').length, 0);
    assert.equal(attributesOf(above.svg, 'rect', 'wheal-over').length, 1);
    assert.match(above.alternative, /over it/);
    assert.doesNotMatch(below.alternative, /over it/);
  });

  it('says what is near the ceiling from 80% on', () => {
    assert.match(pictureOf(note('25 mL')).alternative, /near it/);
    assert.doesNotMatch(pictureOf(note('20 mL')).alternative, /near it/);
  });

  it('adds the shares of several agents up to one bar', () => {
    const drawn = bars(pictureOf(note('10 mL', bupivacaine)));
    assert.equal(drawn.length, 3);
    assert.ok(Math.abs(drawn[0]! + drawn[1]! - drawn[2]!) < 1, String(drawn));
  });

  it('tells what is left in mL, in the picture and in words', () => {
    const picture = pictureOf(note('10 mL'));
    assert.match(picture.svg, /Left: \d+(?:\.\d)? mL of lidocaine 1%/);
    assert.match(picture.alternative, /Left: \d+(?:\.\d)? mL of lidocaine 1%/);
  });

  it('says why it is not judged, and draws no bar without a ceiling', () => {
    const picture = pictureOf(note('10 mL', '', 'age: 60'));
    assert.match(picture.alternative, /Not judged: no weight/);
  });

  it('has the same numbers in its table', () => {
    const { table, alternative } = pictureOf(note('10 mL', bupivacaine));
    assert.equal(table.rows.length, 3);
    for (const row of table.rows) {
      assert.equal(row.length, table.head.length);
      assert.ok(alternative.includes(row[4]!), row[4]);
    }
  });

  it('breaks a bar off that is far over, and keeps within its width', () => {
    for (const volume of ['100 mL', '900 mL']) {
      const { svg } = pictureOf(note(volume));
      for (const { x, width } of attributesOf(svg, 'rect')) assert.ok(Number(x) + Number(width) <= 480.5);
      assert.match(svg, /»/);
    }
  });

  it('has no two texts over each other', () => {
    for (const volume of ['1 mL', '10 mL', '25 mL', '35 mL', '200 mL'])
      assert.deepEqual(overlaps(textBoxes(pictureOf(note(volume, bupivacaine)).svg)), []);
  });

  it('shows a limit below the ceiling with a letter and whether it is passed', () => {
    const infant = pictureOf(note('1 mL', '', 'weight: 5 kg, age: 3 months'));
    assert.match(infant.svg, />a: [\d.]+ mg, .+: (?:passed|not reached)</);
  });

  it('is a figure with its title and its table', () => {
    const html = figureHtml(pictureOf(note('10 mL')));
    assert.match(html, /^<figure>\n<figcaption>Dose of local anesthetic<\/figcaption>\n<svg /);
    assert.match(html, /<th scope="col">Anesthetic<\/th>/);
  });

  it('is not there where nothing was given', () => {
    const { value } = readNote('wheal: 1\nprocedures:\n  - site: left arm\n');
    assert.ok(value !== null);
    assert.equal(dosePicture(judgeDose(value, referenceTables), referenceTables), undefined);
  });
});
