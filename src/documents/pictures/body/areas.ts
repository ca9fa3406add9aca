import type { Point } from './spline.ts';
import type { ViewName } from './views.ts';

/**
 * An area of a view, as an ellipse: where the site is, never an exact place. In a view of both sides it is on the half
 * right of the midline; in a view of one side it is that of the patient's left.
 */
export interface Area {
  readonly view: ViewName;
  readonly x: number;
  readonly y: number;
  readonly rx: number;
  readonly ry: number;
  /** Degrees, clockwise. */
  readonly angle: number;
}

/**
 * The areas of each site: `site | view x y rx ry angle`. One that the words leave open (`thigh`: in front or after?)
 * has an area in each view; one that is several places (`toe`) has `=` and the sites it may be.
 */
const table = `
scalp|head-top 21 62 18 36
frontal scalp|head-top 15 31 14 9
vertex of the scalp|head-top 12 66 11 16
parietal scalp|profile 84 24 18 12
temporal scalp|profile 70 46 14 8
occipital scalp|head-back 18 58 17 20
postauricular scalp|profile 102 80 6 12
nuchal scalp|head-back 15 98 14 8
face|face 22 80 19 46
forehead|face 20 38 18 9
glabella|face 0 55 5 6
temple|profile 46 60 9 9
eyebrow|face 23 52.5 14 3.5
suprabrow|face 23 45 14 3.5
cheek|face 31 92 11 13
malar cheek|face 37 80 8 6
infraorbital cheek|face 24 77 9 4
medial cheek|face 21 88 4 7
lateral cheek|face 41 92 4 11
lower cheek|face 31 112 8 8
preauricular cheek|profile 71 80 4 13
parotid cheek|profile 70 98 7 8
nasolabial fold|face 20.5 106 2.5 9 -25
jawline|profile 63 119 20 3.5 -32
chin|face 8 137 7 5
labiomental crease|face 7 131 7 2.5
eyelid|face 23 65.5 13 8
upper eyelid|face 23 61 12 3.8
lower eyelid|face 23 71 12 3.8
upper eyelid margin|face 23 63 12 2
lower eyelid margin|face 23 68.5 12 2
eyelid margin|face 23 65.5 13 5
medial canthus|face 11 66 3.5 3.5
lateral canthus|face 36 65.5 3.5 3.5
periorbital skin|face 23 65 18 15
nose|face 6 83 6 22
nasal tip|face 4 98 4 5
nasal supratip|face 4 91 4 4
nasal dorsum|face 3 78 3 10
nasal root|face 3 62 3 5
nasal ala|face 12 98 4 5
alar crease|face 16 97 2 6
alar rim|face 11 102 4.5 2
nasal sidewall|face 8 82 3.5 9
nasofacial sulcus|face 12 82 2 10
columella|face 0 104 2.5 3
soft triangle|face 6 101.5 2.5 2.5
nasal vestibule|face 7 104 3 2
ear|ear 35 52 17 40 8
helix|ear 57 36 3.5 18
helical root|ear 22 45 5 3.5
antihelix|ear 46.5 50 3 12 8
scaphoid fossa|ear 51.5 34 2.2 11
triangular fossa|ear 39 31 4 6
concha|ear 31 60 7 11
tragus|ear 17 64 3.5 6
antitragus|ear 30 80 4.5 3.5
earlobe|ear 26 95 9 7
posterior ear|head-back 51.5 72 2.8 12
postauricular skin|profile 96 80 3.5 13
ear canal|ear 23.5 64 3 4
lip|face 9 119 9 8
upper lip|face 10 111 10 4
lower lip|face 10 127 9 3.5
upper vermilion lip|face 9 116.5 8.5 2.5
lower vermilion lip|face 9 122.5 8.5 3.5
vermilion lip|face 9 119.5 9 6
philtrum|face 2.5 109.5 2.5 4.5
oral commissure|face 18.5 119 3 3
perioral skin|face 13 118 13 15
labial mucosa|mouth 14 10 9 4 18;mouth 14 93 9 4 -18
buccal mucosa|mouth 47 50 5.5 14
gingiva|mouth 14 22 12 5 12;mouth 14 84 12 4 -12
tongue|mouth 10 71 10 13
hard palate|mouth 11 42 10 9
neck|face 20 155 12 6;head-back 18 132 12 11
anterior neck|face 13 157 13 8
lateral neck|profile 80 124 8 16
posterior neck|head-back 14 130 13 14
posterior triangle of the neck|profile 95 134 6 14
supraclavicular neck|profile 84 164 15 6
submandibular neck|profile 60 128 8 4 -28
submental neck|face 8 149 8 2.5
suprasternal notch|front 0 74 4 3
chest|front 20 104 18 21
upper chest|front 20 93 17 6
lower chest|front 19 126 14 6
lateral chest|front 34.5 120 3 11
pectoral chest|front 23 102 14 9
sternum|front 3 102 3 17
clavicle|front 22 79.5 13 2.4 10
infraclavicular chest|front 22 86 13 3.2 8
decolletage|front 8 84 8 9
xiphoid|front 0 124 4 5
trunk|front 18 140 16 60;back 18 140 16 60
breast|front 21 113 13 11
areola|front 22 113 5 5
nipple|front 22 113 2.5 2.5
inframammary fold|front 20 124 12 2.5
axilla|front 41 98.5 3.5 4
anterior axillary fold|front 37.5 97 2.5 6
posterior axillary fold|back 37.5 97 2.5 6
abdomen|front 17 164 15 30
upper abdomen|front 16 141 14 9
lower abdomen|front 17 182 14 10
lateral abdomen|front 30 162 3 14
epigastrium|front 7 133 7 6
periumbilical skin|front 7 159 7 8
umbilicus|front 0 159 3.5 3.5
suprapubic skin|front 8 196 8 5
flank|front 30 150 3 12;back 30 150 3 12
waist|front 22 162 10 4;back 22 162 10 4
hip|front 36.5 197 3.6 8;back 36.5 197 3.6 8
groin|front 18 203 15 3 -28
mons pubis|front 4.5 205 4.5 5
penis|intimate 6 40 6 20
penile shaft|intimate 5 36 5 13
glans penis|intimate 5 56 5 6
coronal sulcus|intimate 6 50 6 2.5
foreskin|intimate 6 54 6 5
scrotum|intimate 9 66 9 12
vulva|intimate 9 52 9 28
labium majus|intimate 13 50 4 22
labium minus|intimate 6 54 2.5 16
interlabial sulcus|intimate 9 52 1.8 18
clitoris|intimate 3 34 3 4
vaginal vestibule|intimate 3 58 3 8
fourchette|intimate 4 76 4 3
vagina|intimate 4 62 4 7
urethral meatus|intimate 2.5 48 2.5 3
perineum|intimate 7 89 7 6
perianal skin|intimate 9 109 9 12
buttock|back 19 212 16 13
upper buttock|back 20 199 15 5
gluteal fold|back 18 225 12 3
natal cleft|back 0 205 3 10
coccyx|back 0 190 4 4
back|back 18 130 16 55
upper back|back 20 92 18 13
mid back|back 17 126 15 11
lower back|back 17 162 14 16
lateral back|back 33 126 3 14
scapula|back 22 104 10 14
infrascapular back|back 22 126 11 5
interscapular back|back 5 102 5 14
paraspinal back|back 7 130 4 38
spine|back 3 130 3 56
sacrum|back 7 180 7 7
shoulder|front 44 91 6.5 7.5;back 44 91 6.5 7.5
anterior shoulder|front 42 91 6 7.5
posterior shoulder|back 42 91 6 7.5
top of the shoulder|back 31 80 10 2.6 15
deltoid|front 51 99 3.4 11 -10
arm|front 57 148 5 56 -8;back 57 148 5 56 -8
upper arm|front 51.5 118 5 20 -4;back 51.5 118 5 20 -4
medial upper arm|front 47.5 124 2 14 -4
lateral upper arm|front 56 118 2 14 -6
anterior upper arm|front 51.5 118 4 17 -4
posterior upper arm|back 51.5 118 4 17 -4
elbow|back 55 149 5 6
medial elbow|back 51 150 2 4
antecubital fossa|front 55 149 5 5
forearm|front 62 180 5 22 -16;back 62 180 5 22 -16
dorsal forearm|back 62 180 4 18 -16
volar forearm|front 62 180 4 18 -16
radial forearm|front 66 176 2 16 -14
ulnar forearm|front 58.5 180 1.9 14 -17
wrist|front 70 209 4.5 4;back 70 209 4.5 4
dorsal wrist|back 70 209 4.5 4
volar wrist|front 70 209 4.5 4
hand|hand-back 43 100 20 27;palm 43 100 20 27
dorsal hand|hand-back 42 98 20 24
palm|palm 42 98 20 24
thenar eminence|palm 68 108 8 15 28
hypothenar eminence|palm 28.5 106 5 16 -14
finger web|hand-back 25 69 3 4;hand-back 38 66 3 4;hand-back 53 66 3 4;hand-back 67 92 3 4
knuckle|hand-back 20 73 4 4;hand-back 32 69 4 4;hand-back 46 67 4 4;hand-back 60 72 4 4
fingertip|palm 10.5 37 3 5 -14;palm 29 19 3.5 5;palm 47 11 3.5 5;palm 65 19 3.5 5;palm 93 67 3.5 5 32
finger|=thumb,index finger,middle finger,ring finger,little finger
digit|=finger,toe
web space|=finger web,toe web
thumb|hand-back 85 80 4.5 18 34;palm 85 80 4.5 18 34
index finger|hand-back 63 42 3.8 25 5;palm 63 42 3.8 25 5
middle finger|hand-back 47 34 3.8 26;palm 47 34 3.8 26
ring finger|hand-back 30 40 3.8 23 -6;palm 30 40 3.8 23 -6
little finger|hand-back 14 50 3.2 17 -14;palm 14 50 3.2 17 -14
leg|front 22 298 8 82 2;back 22 298 8 82 2
thigh|front 24 250 13 32;back 24 250 13 32
anterior thigh|front 24 250 10 30
posterior thigh|back 24 250 10 30
medial thigh|front 12 248 3 22 -6
lateral thigh|front 38 246 3 26 6
knee|front 23 299 9 8
popliteal fossa|back 23 299 9 7
lower leg|front 22 338 8 28;back 22 338 8 28
shin|front 21 340 4 26
calf|back 23 332 9 20
medial lower leg|front 15 336 2.4 20 -3
lateral lower leg|front 31 334 2.5 18 6
fibular head|front 31.5 312 2.5 4.5
ankle|front 20 373 5 4;back 20 373 5 4
medial malleolus|front 16.5 374 2 3.5
lateral malleolus|front 23.5 374 2 3.5
anterior ankle|front 20 377 3 4
achilles|back 19.5 370 2.5 8
foot|foot-top 34 86 20 50;sole 34 86 20 50
dorsal foot|foot-top 34 82 18 32
medial foot|foot-top 52 92 3 25 5
lateral foot|foot-top 16 92 3 30 -8
sole|sole 34 86 20 50
heel|sole 36 128 14 14
arch of the foot|sole 46 88 7 20 8
ball of the foot|sole 34 54 24 10
toe web|foot-top 14 41 2.5 3.5;foot-top 24 38 2.5 3.5;foot-top 34 35 2.5 3.5;foot-top 44.5 33 2.5 3.5
toe|=great toe,second toe,third toe,fourth toe,fifth toe
great toe|foot-top 53.5 17 7 12;sole 53.5 17 7 12
second toe|foot-top 39 19 3.6 11;sole 39 19 3.6 11
third toe|foot-top 29 21 3.6 10;sole 29 21 3.6 10
fourth toe|foot-top 19 25 3.6 9;sole 19 25 3.6 9
fifth toe|foot-top 9 36 3.2 7;sole 9 36 3.2 7
nail|=fingernail,toenail
fingernail|=thumbnail,index fingernail,middle fingernail,ring fingernail,little fingernail
toenail|=great toenail,second toenail,third toenail,fourth toenail,fifth toenail
thumbnail|hand-back 93 67 3.2 4 32
index fingernail|hand-back 65 18 3 4
middle fingernail|hand-back 47.5 10 3 4
ring fingernail|hand-back 29.5 18 3 4
little fingernail|hand-back 10.5 36.5 2.6 3.5 -14
great toenail|foot-top 53.5 9 5 5
second toenail|foot-top 39 10 3 3
third toenail|foot-top 29.5 13.5 3 3
fourth toenail|foot-top 19.5 18.5 2.8 3
fifth toenail|foot-top 9 31 2.6 2.8
`;

const rows: ReadonlyMap<string, string> = new Map(
  table
    .trim()
    .split('\n')
    .map((line) => line.split('|') as [string, string]),
);

/** The areas of a site of the tables, by its name; none for one that is not known here. */
export function areasOf(site: string): readonly Area[] {
  const row = rows.get(site) ?? '';
  if (row.startsWith('=')) return row.slice(1).split(',').flatMap(areasOf);
  return row === '' ? [] : row.split(';').map(areaOf);
}

function areaOf(text: string): Area {
  const [view, ...numbers] = text.split(' ');
  const [x = 0, y = 0, rx = 0, ry = 0, angle = 0] = numbers.map(Number);
  return { view: view as ViewName, x, y, rx, ry, angle };
}

/** Places on the edge of an area, all around. */
export const edgeOf = ({ x, y, rx, ry, angle }: Omit<Area, 'view'>, corners = 24): readonly Point[] =>
  Array.from({ length: corners }, (_, at): Point => {
    const around = (at * 2 * Math.PI) / corners;
    const turn = (angle * Math.PI) / 180;
    const [dx, dy] = [rx * Math.cos(around), ry * Math.sin(around)];
    return [x + dx * Math.cos(turn) - dy * Math.sin(turn), y + dx * Math.sin(turn) + dy * Math.cos(turn)];
  });
