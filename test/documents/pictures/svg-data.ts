import { widthOf } from '../../../src/documents/svg.ts';

/** The attributes of each element of a name, and a class where one is given, in the order of the picture. */
export function attributesOf(
  svg: string,
  name: string,
  className?: string,
): readonly Readonly<Record<string, string>>[] {
  return [...svg.matchAll(new RegExp(`<${name}((?: [^>]*)?)/?>`, 'g'))]
    .map(([, text = '']) =>
      Object.fromEntries(
        [...text.matchAll(/ ([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
      ),
    )
    .filter((attributes) => className === undefined || attributes['class'] === className);
}

export interface Box {
  readonly name: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What the texts of a picture take at most. */
export const textBoxes = (svg: string): readonly Box[] =>
  [...svg.matchAll(/<text x="([^"]*)" y="([^"]*)"([^>]*)>([^<]*)<\/text>/g)].map(
    ([, x, y, more = '', text = '']) => {
      const name = text.replace(/&[^;]*;/g, '.');
      const width = widthOf(name, more.includes('bold'));
      const anchor = /text-anchor="(\w+)"/.exec(more)?.[1] ?? 'start';
      const left = Number(x) - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0);
      return { name, left, right: left + width, top: Number(y) - 9, bottom: Number(y) + 2 };
    },
  );

/** The names of each two boxes that are over each other. */
export const overlaps = (boxes: readonly Box[]): readonly string[] =>
  boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter(
        (other) =>
          one.left < other.right - 0.1 &&
          other.left < one.right - 0.1 &&
          one.top < other.bottom - 0.1 &&
          other.top < one.bottom - 0.1,
      )
      .map((other) => `${one.name} / ${other.name}`),
  );
