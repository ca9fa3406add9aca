import { once } from '../../../note/text/once.ts';
import { pathOf, pointsOf, withOtherHalf, type Point } from './spline.ts';

export type ViewName =
  | 'front'
  | 'back'
  | 'face'
  | 'head-back'
  | 'head-top'
  | 'profile'
  | 'ear'
  | 'mouth'
  | 'hand-back'
  | 'palm'
  | 'foot-top'
  | 'sole'
  | 'intimate';

/**
 * One view of the body: our own drawing. Lines are smooth through their points (`x y x y …`); a point written twice is
 * a corner. A view of both sides has its midline at x = 0 and is written for the half right of it, the other half is its
 * mirror image. A view of one side is written for the patient's left, and mirrored for the right.
 */
export interface View {
  readonly width: number;
  readonly height: number;
  /** Of the drawing, in units of the picture. */
  readonly scale: number;
  /** On which half the patient's left is: 1 right of the midline, -1 left of it; undefined for a view of one side. */
  readonly left?: 1 | -1;
  /** Closed lines; what is within one of them is body. A later one covers those before it. */
  readonly outline: readonly string[];
  /** Lines that help to find one's way. */
  readonly lines: readonly string[];
  /** Words of a site that say that this view is meant, where it can be on several. */
  readonly surfaces: readonly string[];
  /** Whether it is the mirror image of how it is written: the other surface of a hand or a foot. */
  readonly flipped?: true;
}

const trunk =
  '0 44 9 44 9 58 10 64 16 70 30 76 44 80 53 90 57 108 59 126 62 147 68 170 73 194 75 210 80 219 84 230 82 233 79 228 80 242 77 256 72 259 68 252 66 240 65 226 65 210 59 190 52 168 48 148 45 125 42 104 42 104 40 114 37 136 34 158 35 174 41 196 44 216 43 248 38 280 34 298 36 322 32 350 26 372 27 384 31 391 27 397 17 397 13 391 14 372 12 345 11 322 12 300 8 260 3 228 0 218';
const head = '0 4 10 6 17 15 18 26 18 26 20 25 21 30 19 37 17 37 17 37 14 48 8 55 0 58';

const hand =
  '29 175 29 148 28 122 19 98 14 76 8 52 6 38 10 31 15 35 20 52 25 66 25 66 24 42 24 19 29 12 34 19 35 42 38 62 38 62 40 38 42 11 47 4 52 11 52 38 53 62 53 62 56 42 60 19 65 12 70 19 69 44 66 70 68 88 68 88 80 74 89 62 96 60 98 68 90 88 78 110 67 126 64 148 64 175';
const creases =
  '19 50 14 52;26 32 33 32;26 22 32 22;44 28 51 28;44 16 50 16;61 32 69 33;62 22 69 23;84 76 91 80';
const foot =
  '36 146 22 141 16 124 14 100 8 70 5 48 4 36 8 27 13 31 14 38 14 38 14 22 19 14 24 21 24 34 24 34 24 16 29 9 34 16 34 31 34 31 34 12 39 6 44 12 44 29 44 29 45 10 53 2 62 10 63 30 63 48 58 72 55 98 57 124 50 141';
const fingernails =
  '8 36 9 33 12 34 13 38 10 39 8 36;26 19 27 15 31 15 32 19 29 21 26 19;44 11 45 7 49 7 50 11 47 13 44 11;62 19 63 15 67 15 68 19 65 21 62 19;90 67 92 63 96 64 96 68 93 71 90 67';
const toenails =
  '7 31 8 28 11 30 11 33 8 33 7 31;17 18 19 15 22 18 21 21 18 21 17 18;27 13 29 10 32 13 31 16 28 16 27 13;36 10 39 7 42 10 41 13 37 13 36 10;49 8 53 4 58 8 57 13 50 13 49 8';

const parts = (text: string): readonly string[] => text.split(';');

export const views: Readonly<Record<ViewName, View>> = {
  front: {
    ...{ width: 176, height: 402, scale: 0.64, left: 1, outline: [trunk, head] },
    lines: parts(
      '4 77 18 77 37 83;5 121 18 126 31 119;0 157 2 159 0 161;4 209 20 201 36 186;15 296 22 304 30 296;48 147 54 150 61 146;65 211 70 213 75 210;16 375 20 377 25 374',
    ),
    surfaces: ['anterior', 'ventral', 'volar', 'palmar', 'flexor'],
  },
  back: {
    ...{ width: 176, height: 402, scale: 0.64, left: -1, outline: [trunk, head] },
    lines: parts(
      '0 66 0 110 0 150 0 182;12 92 30 90 31 100 22 120 14 104 12 92;0 192 0 218;4 223 16 228 31 221;14 299 22 302 31 298;50 147 55 152 60 146;65 211 70 213 75 210;18 362 18 378;21 362 21 378',
    ),
    surfaces: ['posterior', 'dorsal', 'extensor'],
  },
  face: {
    ...{ width: 124, height: 178, scale: 0.92, left: 1 },
    outline: [
      '0 120 33 120 33 146 40 157 62 167 90 174 90 200 0 200',
      '0 4 22 7 40 21 48 44 49 60 49 60 53 58 56 66 54 82 49 90 49 90 45 106 38 122 26 136 12 144 0 145',
    ],
    lines: parts(
      '12 66 22 60 35 65;12 66 22 70 35 65;20 61 18 65 21 68 26 68 27 64 25 61;9 55 22 50 37 55;6 60 5 76 9 90;14 92 17 98 13 103 8 102;0 105 5 105 8 102;4 108 4 113;0 115 5 113 18 119;0 119 8 119 18 119;0 127 9 126 18 119;6 133 0 132;17 99 22 106 25 114;0 22 22 25 38 38 44 52;52 64 52 76 50 84',
    ),
    surfaces: ['anterior', 'ventral'],
  },
  'head-back': {
    ...{ width: 124, height: 178, scale: 0.92, left: -1 },
    outline: [
      '0 4 24 8 42 23 48 46 48 58 48 58 53 57 56 66 54 82 47 88 47 88 42 104 34 118 34 142 42 156 62 167 90 174 90 200 0 200',
    ],
    lines: parts('0 112 14 110 30 104 40 92;50 62 51 72 50 82;0 124 0 150'),
    surfaces: ['posterior', 'dorsal'],
  },
  'head-top': {
    ...{ width: 112, height: 118, scale: 1.1, left: -1 },
    outline: ['0 3 0 3 5 14 5 14 22 17 38 32 46 56 46 56 52 58 51 70 45 72 45 72 40 90 24 108 0 114'],
    lines: parts('0 26 18 28 34 40;47 60 48 65 47 70'),
    surfaces: [],
  },
  profile: {
    ...{ width: 132, height: 180, scale: 0.9 },
    outline: [
      '70 4 98 11 117 34 121 60 115 84 105 104 104 128 111 146 130 163 160 176 160 215 14 215 40 178 48 158 53 144 50 136 38 134 25 133 17 127 17 119 14 114 16 110 12 105 15 99 15 99 4 95 4 91 11 80 19 63 17 54 19 38 32 15 50 6',
    ],
    lines: parts(
      '22 68 28 63 34 66;22 68 28 70 34 66;19 56 28 53 37 57;14 90 19 92 18 98;15 110 26 112;80 92 76 110 54 130;21 34 36 29 48 38 53 52 62 56 66 66 73 62;76 68 82 61 90 64 92 74 86 86 80 95 76 90 78 80 76 68;80 70 86 68 86 78 81 84;94 84 98 96 104 106',
    ),
    surfaces: ['lateral'],
  },
  ear: {
    ...{ width: 72, height: 112, scale: 1.4 },
    outline: ['12 34 20 12 38 4 56 13 62 35 56 60 45 78 41 94 30 106 18 102 13 88 14 74 10 62 10 50'],
    lines: parts(
      '14 46 24 46 28 50;14 40 20 24 38 12 53 20 54 38 48 58;38 26 46 34 45 50 38 66 33 76;34 40 40 36 46 34;13 57 21 60 21 68 14 71;21 68 25 78 33 76;28 50 38 48 38 60 30 70 24 68',
    ),
    surfaces: [],
  },
  mouth: {
    ...{ width: 120, height: 104, scale: 1.2, left: 1 },
    outline: ['0 6 12 3 30 11 48 30 55 50 47 74 28 95 0 101'],
    lines: parts(
      '0 18 16 16 32 28 44 50;0 88 16 88 32 74 44 50;0 28 14 28 27 36 35 48;0 18 0 28;12 17 11 28;23 21 20 31;33 30 27 36;0 58 14 60 22 70 18 80 0 83;0 60 0 76',
    ),
    surfaces: [],
  },
  'hand-back': {
    ...{ width: 102, height: 150, scale: 1, outline: [hand] },
    lines: parts(`${creases};${fingernails}`),
    surfaces: ['dorsal', 'extensor'],
  },
  palm: {
    ...{ width: 102, height: 150, scale: 1, outline: [hand], flipped: true },
    lines: parts(`${creases};24 80 36 86 52 78 64 70;26 94 44 94 60 88 66 80;56 122 52 108 60 94 68 86`),
    surfaces: ['volar', 'palmar', 'flexor'],
  },
  'foot-top': {
    ...{ width: 68, height: 150, scale: 1, outline: [foot] },
    lines: parts(`${toenails};18 122 24 112 44 110 54 118`),
    surfaces: ['dorsal'],
  },
  sole: {
    ...{ width: 68, height: 150, scale: 1, outline: [foot], flipped: true },
    lines: parts('10 46 24 44 44 40 60 42;22 112 36 106 52 112;48 64 42 84 46 104'),
    surfaces: ['plantar', 'volar'],
  },
  intimate: {
    ...{ width: 96, height: 136, scale: 1.15, left: 1 },
    outline: ['0 6 22 6 40 14 42 40 34 80 32 110 18 128 0 131'],
    lines: parts('0 20 12 26 17 48 10 74 0 82;0 96 8 99 11 110 7 120 0 123;0 82 0 96'),
    surfaces: [],
  },
};

/** The closed lines of a view, both halves of it. */
export const outlinesOf = ({ outline, left }: View): readonly (readonly Point[])[] =>
  outline.map((line) => (left === undefined ? pointsOf(line) : withOtherHalf(pointsOf(line))));

/** A view as data of paths: its closed lines, and those within. */
export const drawnView = once(
  (view: View): { readonly outline: readonly string[]; readonly lines: string } => ({
    outline: outlinesOf(view).map((line) => pathOf(line, true)),
    lines: view.lines
      .flatMap((line) => {
        const points = pointsOf(line);
        return view.left === undefined ? [points] : [points, points.map(([x, y]): Point => [-x, y])];
      })
      .map((points) => pathOf(points, false))
      .join(''),
  }),
);
