import { sentences } from './sentence.ts';

/** What was done, and how the wound was closed: facts of the note. */
export const doneSentences = [
  ...sentences('format', 'format', [
    [
      'title',
      'Care at home after your skin procedure',
      'Cuidados en casa después de su procedimiento de piel',
    ],
    ['subject', 'Your instructions for care at home', 'Sus instrucciones para cuidarse en casa'],
    ['subject-from', 'Your instructions from {practice}', 'Sus instrucciones de {practice}'],
    ['visit', 'Visit: {date}', 'Visita: {date}'],
    ['chart', 'Chart number: {chart}', 'Número de expediente: {chart}'],
    [
      'for-child',
      'This sheet is for whoever cares for the child. “You” also means the child.',
      'Esta hoja es para quien cuida al niño o a la niña. «Usted» también es el niño o la niña.',
    ],
    ['done-title', 'What was done', 'Qué se hizo'],
    ['place-noted', '{place} (in the note: {typed})', '{place} (en la nota: {typed})'],
    ['at-place', '{place}: {what}', '{place}: {what}'],
    [
      'done-shave',
      'a thin piece of skin was shaved off (shave).',
      'se cortó una capa fina de piel (biopsia por afeitado).',
    ],
    [
      'done-deep-shave',
      'a piece of skin was cut off with a blade (deep shave).',
      'se cortó un trozo de piel con una cuchilla (afeitado profundo).',
    ],
    [
      'done-scissor',
      'a small piece of skin was snipped off with scissors.',
      'se cortó un trozo pequeño de piel con tijeras.',
    ],
    ['done-curettage', 'the spot was scraped off (curettage).', 'se raspó la lesión (legrado).'],
    [
      'done-curettage-sealed',
      'the spot was scraped off, and heat or current was used on the base.',
      'se raspó la lesión y se usó calor o corriente en la base.',
    ],
    [
      'done-punch',
      'a small round piece of skin was taken (punch).',
      'se sacó un trozo pequeño y redondo de piel (biopsia con sacabocados).',
    ],
    ['done-incisional', 'part of the spot was cut out.', 'se extirpó una parte de la lesión.'],
    ['done-excisional', 'the spot was cut out (excision).', 'se extirpó la lesión (escisión).'],
    ['done-nail', 'a small piece was taken from the nail.', 'se sacó un trozo pequeño de la uña.'],
    [
      'done-wire',
      'a piece of skin was cut off with an electric wire.',
      'se cortó un trozo de piel con un asa eléctrica.',
    ],
    ['done-heat', 'the spot was treated with heat or current.', 'se trató la lesión con calor o corriente.'],
    [
      'done-current',
      'the spot was treated with electric current.',
      'se trató la lesión con corriente eléctrica.',
    ],
    ['done-frozen', 'the spot was frozen.', 'se congeló la lesión.'],
    [
      'done-drained',
      'a small cut was made so that fluid could drain.',
      'se hizo un corte pequeño para dejar salir el líquido.',
    ],
    ['done-injected', 'medicine was put into the skin with a needle.', 'se inyectó una medicina en la piel.'],
    ['done-laser', 'the spot was treated with a laser.', 'se trató la lesión con láser.'],
    [
      'done-chemical',
      'the spot was painted with a substance that removes it.',
      'se aplicó en la lesión una sustancia que la elimina.',
    ],
    ['done-other', 'a small procedure was done.', 'se hizo un procedimiento pequeño.'],
    ['closed-one-stitch', 'It was closed with 1 stitch.', 'Se cerró con 1 punto.'],
    ['closed-count', 'It was closed with {count} stitches.', 'Se cerró con {count} puntos.'],
    [
      'closed-running',
      'It was closed with one long thread that runs through the skin.',
      'Se cerró con un solo hilo que pasa varias veces por la piel.',
    ],
    ['closed-stitches', 'It was closed with stitches.', 'Se cerró con puntos.'],
    [
      'closed-absorbable',
      'It was closed with stitches that dissolve. They do not have to come out.',
      'Se cerró con puntos que se disuelven. No hay que quitarlos.',
    ],
    [
      'closed-deep',
      'There are also stitches under the skin. Those dissolve.',
      'También hay puntos debajo de la piel. Esos se disuelven.',
    ],
    ['closed-staples', 'It was closed with staples.', 'Se cerró con grapas.'],
    ['closed-glue', 'It was closed with skin glue.', 'Se cerró con pegamento para la piel.'],
    ['closed-strips', 'It was closed with strips of tape.', 'Se cerró con tiras adhesivas.'],
    [
      'closed-open',
      'There are no stitches. The wound heals on its own.',
      'No hay puntos. La herida sanará sola.',
    ],
  ]),
];
