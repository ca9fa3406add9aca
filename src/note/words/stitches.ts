import { layers } from '../../reference/layers.ts';
import { materials } from '../../reference/materials.ts';
import { withTradeNames } from '../../reference/trade-names.ts';
import type { WordRow } from '../../reference/types.ts';
import type { DictatedField } from './dictated.ts';
import { WordTable } from './word-table.ts';

const knownMaterials = new WordTable<WordRow>(withTradeNames(materials));
const knownLayers = new WordTable<WordRow>(layers);

const longestLine = 200;
const hasSize = /\b\d{1,2}[-/]0\b/;
const stitchWord = /\b(?:stitch(?:es)?|sutures?|sutured|interrupted|running|mattress|subcuticular)\b/i;
const joint = /,\s*(?:and|plus|then)\s|,|;|\+|\s&\s|\s(?:and|plus|then)\s/gi;
const size = /^\d{1,2}[-/]0$/;
const count = /^x?(\d{1,2})$/i;
const piece = /\d{1,2}[-/]0\b|x ?\d{1,2}\b|[\p{L}\d%]+(?:[-'’][\p{L}\d]+)*/giu;

const numbers: ReadonlyMap<string, string> = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, index): [string, string] => [word, String(index + 1)]),
);
const techniques = new Set(
  (
    'simple interrupted running continuous subcuticular horizontal vertical mattress half-buried locking locked ' +
    'cruciate figure-of-eight figure-of-8 purse-string purse string intracuticular intradermal si figure eight'
  ).split(' '),
);
const fillers = new Set(
  (
    'stitch stitches suture sutures sutured closed repaired closure with of in the a an using placed was were is wound ' +
    'edges layer layers size number absorbable nonabsorbable non-absorbable dissolving dissolvable each to by for'
  ).split(' '),
);
const denials = /\b(?:no|not|without|w\/o|never|none)\b/i;

/**
 * Reads sutures that are written in one line, each as the fields of a closure: `2 simple interrupted sutures of 4-0
 * nylon`, `3 deep 4-0 polyglactin and 5 skin 5-0 nylon`. Undefined where the line has neither a size nor a known material
 * of stitches, says a thing twice of one suture, denies something, or has words in two places that are none of it.
 */
export function readStitches(text: string): readonly (readonly DictatedField[])[] | undefined {
  if (text.length > longestLine || denials.test(text)) return undefined;
  if (!hasSize.test(text) && !stitchWord.test(text)) return undefined;
  const sutures: Piece[][] = [];
  for (const part of piecesOf(text)) {
    const last = sutures.at(-1);
    if (last === undefined || (part.some(isSize) && last.some(isSize))) sutures.push([...part]);
    else last.push(...part);
  }
  const read = sutures.map((pieces) => new Suture(text, pieces).fields());
  return read.every((fields) => fields !== undefined) ? read : undefined;
}

interface Piece {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const isSize = ({ text }: Piece): boolean => size.test(text);

/** The words of a text by the parts of its list. */
function piecesOf(text: string): readonly (readonly Piece[])[] {
  const ends = [...Array.from(text.matchAll(joint), ({ index }) => index), text.length];
  const pieces = Array.from(text.matchAll(piece), ({ 0: word, index }) => ({
    text: word,
    from: index,
    to: index + word.length,
  }));
  return ends
    .map((end, at) => pieces.filter(({ from, to }) => to <= end && from >= (ends[at - 1] ?? 0)))
    .map((part) => part.filter(({ text: word }) => !/^(?:and|plus|then)$/i.test(word)));
}

/** The work on one suture: each of its words is placed, passed over, or makes the line one that is not read. */
class Suture {
  private readonly placed = new Map<string, DictatedField>();
  private twice = false;

  constructor(
    private readonly line: string,
    private readonly pieces: readonly Piece[],
  ) {}

  fields(): readonly DictatedField[] | undefined {
    const rest = this.pieces.filter((one, at) => !this.place(one, at));
    if (rest.length > 0 && !this.placeMaterial(rest)) return undefined;
    const { from = 0, to = 0 } = this.placed.get('material') ?? {};
    const known = knownMaterials.find(this.line.slice(from, to)) !== undefined;
    if (!known && !this.placed.has('size')) return undefined;
    return this.twice ? undefined : [...this.placed.values()];
  }

  /** Whether a word is placed, or says nothing. */
  private place(one: Piece, at: number): boolean {
    const word = one.text.toLowerCase();
    const number = count.exec(one.text.replace(' ', ''))?.[1] ?? numbers.get(word);
    const layer = knownLayers.find(word)?.name;
    if (isSize(one)) this.put({ key: 'size', from: one.from, to: one.to });
    else if (number !== undefined && this.isCount(at))
      this.put({
        key: 'count',
        from: one.from,
        to: one.to,
        ...(number === one.text ? {} : { says: number }),
      });
    else if (techniques.has(word)) return this.placeTechnique(one);
    else if (layer !== undefined && !this.isMaterial(at)) this.putLayer(one, layer);
    else return fillers.has(word);
    return true;
  }

  /** "Polyglactin 910" and "poliglecaprone 25" are names. */
  private isCount(at: number): boolean {
    const before = this.pieces[at - 1]?.text;
    return before === undefined || knownMaterials.find(`${before} ${this.pieces[at]!.text}`) === undefined;
  }

  private isMaterial(at: number): boolean {
    return knownMaterials.find(this.pieces[at]!.text) !== undefined;
  }

  private putLayer({ from, to, text }: Piece, layer: string): void {
    const before = this.placed.get('layer');
    if (before !== undefined && (before.says ?? this.line.slice(before.from, before.to)) === layer) return;
    this.put({ key: 'layer', from, to, ...(text === layer ? {} : { says: layer }) });
  }

  /** The words of a technique may be apart only by spaces. */
  private placeTechnique({ from, to }: Piece): boolean {
    const before = this.placed.get('technique');
    if (before === undefined) this.put({ key: 'technique', from, to });
    else if (/^(?:[\s-]|of)*$/.test(this.line.slice(before.to, from)))
      this.placed.set('technique', { ...before, to });
    else this.twice = true;
    return true;
  }

  /** What is left is the material, where it is together. */
  private placeMaterial(rest: readonly Piece[]): boolean {
    const [first, last] = [rest[0]!, rest.at(-1)!];
    const words = this.line.slice(first.from, last.to);
    const together = rest.every(
      ({ from }, at) => at === 0 || /^[\s-]*$/.test(this.line.slice(rest[at - 1]!.to, from)),
    );
    if (!together || rest.length > 3) return false;
    this.put({ key: 'material', from: first.from, to: first.from + words.length });
    return true;
  }

  private put(field: DictatedField): void {
    if (this.placed.has(field.key)) this.twice = true;
    else this.placed.set(field.key, field);
  }
}
