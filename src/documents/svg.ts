import { plain } from './one-line.ts';
import { escapedHtml } from './html.ts';

/** Attributes of an element; what is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element of SVG. Numbers are written with at most one decimal. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => (value === undefined ? '' : ` ${key}="${attribute(value)}"`))
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

const attribute = (value: string | number): string =>
  typeof value === 'number' ? short(value) : escapedHtml(value);

/** A coordinate as short as it may be. */
export const short = (value: number): string => String(Math.round(value * 10) / 10);

/** Size of the type in a picture, in its own units. */
export const typeSize = 11;

/** How wide a character of the picture's type is at most, on average over a text. */
const characterWidth = typeSize * 0.62;

/** The width that a text takes at most, in units of the picture; for a text in a font that nobody knows. */
export const widthOf = (text: string, bold = false): number =>
  text.length * characterWidth * (bold ? 1.12 : 1);

/** A text on one line, cut so that it takes no more than a width. */
export function cutTo(text: string, width: number): string {
  const line = plain(text);
  const most = Math.floor(width / characterWidth);
  const letters = Array.from(line);
  return letters.length <= most
    ? line
    : `${letters
        .slice(0, Math.max(0, most - 1))
        .join('')
        .trimEnd()}…`;
}

/** A text of the picture, of the color of the type around it. */
export const words = (x: number, y: number, text: string, more: Attributes = {}): string =>
  element('text', { x, y, fill: 'currentColor', stroke: 'none', ...more }, escapedHtml(text));

/** The color of the page below a picture; an editor sets the variable. */
export const paper = 'var(--wheal-paper,Canvas)';

/**
 * Moves places along a line apart, so that each two have a gap between them: each stays as near as the others let it.
 * @param wanted places in rising order, all between `min` and `max`, which has to have room for them
 */
export function spread(wanted: readonly number[], gap: number, min: number, max: number): readonly number[] {
  const places: number[] = [];
  for (const place of wanted) places.push(Math.max(place, (places.at(-1) ?? min - gap) + gap));
  let most = max;
  for (let at = places.length - 1; at >= 0; at -= 1) {
    places[at] = Math.min(places[at]!, most);
    most = places[at]! - gap;
  }
  return places;
}

/** A pattern of thin lines for the area of a mark, and how it is named as a fill. */
export const hatching = (id: string): { readonly pattern: string; readonly fill: string } => ({
  pattern: `<defs><pattern id="${id}-hatch" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v4" stroke="currentColor" stroke-width="1.6"/></pattern></defs>`,
  fill: `url(#${id}-hatch)`,
});
