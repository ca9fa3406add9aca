import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Language } from '../../../src/note/words/language.ts';
import { ointmentWords, inOintments } from '../../../src/documents/handout/ointment.ts';
import { placeWords, wordsOf, type Gender } from '../../../src/documents/handout/places.ts';
import { argumentsIn, catalogue } from '../../../src/documents/handout/sentences/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { sites } from '../../../src/reference/sites.ts';
import { handout, items, note, words } from './make.ts';
import { fleschKincaidGrade, szigrisztPazos } from './readability.ts';

const languages: readonly Language[] = ['en', 'es'];
const all = (more: string, site = 'left cheek', language: Language = 'en', practice?: string): string =>
  words(handout(note(more).replace('left cheek', site), practice, language));

describe('stitches in a handout', () => {
  it('are only those of the closure: a suture for the bleeding beside glue or strips makes none', () => {
    for (const closure of ['tissue glue', 'adhesive strips', '[adhesive strips, tissue glue]']) {
      const text = all(`method: excisional\nhemostasis: [pressure, suture]\nclosure: ${closure}`);
      assert.doesNotMatch(text, /stitch/i, closure);
    }
    const unsaid = all('method: excisional\nhemostasis: [pressure, suture]');
    assert.doesNotMatch(unsaid, /stitch/i);
  });

  it('are no "1 stitch" where one thread runs', () => {
    for (const technique of ['running', 'running subcuticular', 'continuous']) {
      const more = `method: excisional\nclosure: {material: nylon, technique: ${technique}, count: 1}`;
      assert.match(all(more), /closed with one long thread/);
      assert.doesNotMatch(all(more), /1 stitch/);
      assert.match(all(more, 'left cheek', 'es'), /un solo hilo/);
    }
    assert.match(all('method: punch\nclosure: {material: nylon, count: 1}'), /closed with 1 stitch\./);
  });
});

describe('advice by place', () => {
  const method = 'method: shave';
  for (const [site, english, spanish] of [
    ['left buccal mucosa', /soft, cool food/, /blandas y frescas/],
    ['tongue', /warm salt water/, /agua tibia con sal/],
    ['lower lip', /soft, cool food/, /blandas y frescas/],
    ['penile shaft', /loose cotton underwear/, /ropa interior de algodón/],
    ['left labium majus', /pass urine/, /orinar/],
    ['perianal skin', /stools stay soft/, /no estreñirse/],
    ['left thumbnail', /No nail polish/, /No use esmalte/],
    ['right great toenail', /Keep the hand or foot up/, /en alto durante uno o dos días/],
    ['left upper eyelid', /see less well/, /ve peor/],
    ['vertex of the scalp', /mild shampoo/, /champú suave/],
  ] as const)
    it(`is given for ${site}, in both languages`, () => {
      assert.match(all(method, site), english);
      assert.match(all(method, site, 'es'), spanish);
      for (const told of [english, spanish])
        for (const language of languages) assert.doesNotMatch(all(method, 'left cheek', language), told);
    });

  it('is common practice and says so', () => {
    for (const id of ['mouth-food', 'genital-wash', 'anal-stool', 'nail-raise', 'place-lid', 'scalp-wash'])
      assert.equal(catalogue.get(id)?.mark, 'common', id);
  });
});

describe('a digit', () => {
  for (const [site, english, spanish] of [
    ['right index finger', 'Right index finger', 'Dedo índice de la mano derecha'],
    ['left great toe', 'Left big toe', 'Dedo gordo del pie izquierdo'],
    ['left thumbnail', 'Nail of the left thumb', 'Uña del pulgar izquierdo'],
    ['right 3rd toenail', 'Nail of the right third toe', 'Uña del tercer dedo del pie derecho'],
    ['left ring finger nail bed', 'Nail of the left ring finger', 'Uña del dedo anular de la mano izquierda'],
    ['left index fingertip', 'Left index finger', 'Dedo índice de la mano izquierda'],
    ['fingertip of left thumb', 'Tip of the left thumb', 'Punta del pulgar izquierdo'],
    ['left 2nd fingertip', 'Tip of the left index finger', 'Punta del dedo índice de la mano izquierda'],
  ] as const)
    it(`is named: ${site}`, () => {
      assert.ok(all('method: shave', site).includes(english), all('method: shave', site).slice(0, 300));
      assert.ok(
        all('method: shave', site, 'es').includes(spanish),
        all('method: shave', site, 'es').slice(0, 300),
      );
    });
});

/** Nouns of the body with their gender, as a dictionary has them. */
const genders: Readonly<Record<string, Gender>> = Object.fromEntries([
  ...'oreja ingle mano pierna axila sien ceja mejilla parte clavícula cadera muñeca rodilla espinilla pantorrilla uña'
    .split(' ')
    .map((noun) => [noun, 'f'] as const),
  ...'ojo seno glúteo hombro brazo pie párpado oído costado pezón omóplato codo antebrazo pulgar muslo tobillo talón dedo'
    .split(' ')
    .map((noun) => [noun, 'm'] as const),
]);

describe('a side in Spanish', () => {
  it('agrees with the noun that it follows, by the gender of the table', () => {
    for (const base of sites) {
      const place = wordsOf({ base, side: undefined });
      assert.ok(place, base.name);
      for (const [side, stem] of [
        ['left', 'izquierd'],
        ['right', 'derech'],
      ] as const) {
        const text = placeWords({ base, side }, 'es') ?? '';
        const found = new RegExp(
          `(\\p{L}+)(?: superior| inferior| alta| baja| media)? ${stem}([oa])\\b`,
          'u',
        ).exec(text);
        assert.ok(found, `${base.name}: ${text}`);
        const [, noun = '', ending] = found;
        if (noun === 'lado') assert.equal(ending, 'o', text);
        else {
          assert.equal(ending, place.gender === 'f' ? 'a' : 'o', text);
          assert.equal(genders[noun], place.gender, `${noun} in ${text}`);
        }
        assert.doesNotMatch(text, /\*|\bde el\b|, lado/);
      }
    }
  });

  it('is that of a place of which there is one with its article', () => {
    const of = (site: string): string => all('method: shave', site, 'es');
    assert.match(of('left nasal tip'), /Lado izquierdo de la nariz/);
    assert.match(of('right lateral neck'), /Costado derecho del cuello/);
    assert.match(of('left knee'), /Rodilla izquierda/);
    assert.match(of('right upper back'), /Parte alta derecha de la espalda/);
  });
});

describe('a Spanish handout', () => {
  it('says what a native would say', () => {
    const text = [...catalogue.values()].map(({ es }) => es).join('\n');
    for (const said of [
      'se extirpó la lesión',
      'todo esté bien',
      'traspasando',
      'Cómo comunicarse con nosotros',
      'sarpullido con comezón',
    ])
      assert.ok(text.includes(said), said);
    assert.equal(ointmentWords('petrolatum', 'es'), 'vaselina (petrolato)');
    assert.doesNotMatch(text, /jalea de petróleo|erupción con picor|todo está bien/);
  });

  it('has no English left in it', () => {
    const more =
      'method: punch\nclosure: {material: nylon, count: 2}\nspecimen: {label: A, results: [{received: 2026-03-09, diagnosis: dermal nevus, told: 2026-03-10}]}';
    const practice =
      'wound-care: {ointment: calendula salve, first-change: after your shower}\nhandout: {diagnosis: yes}';
    for (const site of ['dorsum of right hand', 'somewhere odd', 'left cheek']) {
      const one = handout(note(more).replace('left cheek', site), practice, 'es');
      assert.doesNotMatch(
        words(one),
        /\b(?:dorsum|right|hand|left|cheek|somewhere|odd|calendula|salve|after|your|shower|dermal|nevus|in the note)\b/i,
      );
    }
    const odd = handout(note(more).replace('left cheek', 'somewhere odd'), practice, 'es');
    assert.ok(odd.remarks.some((remark) => remark.includes('no Spanish words')));
  });

  it('has Spanish words for every ointment and for all that ointments hold', () => {
    for (const { name, ointment } of referenceTables.dressings.rows)
      if (ointment === true) assert.ok(ointmentWords(name, 'es'), name);
    const allergens = new Set(referenceTables.allergens.rows.map(({ name }) => name));
    for (const name of inOintments(
      { allergens, dressings: new Set(), words: [], uncertain: false },
      referenceTables,
    ))
      assert.ok(ointmentWords(name, 'es'), name);
    for (const { name, spanish } of referenceTables.bloodThinners.rows) assert.notEqual(spanish, '', name);
  });

  it('still says that it is a draft', () => {
    assert.match(all('method: shave', 'left cheek', 'es'), /Texto en borrador/);
    assert.match(all('method: shave'), /Draft wording/);
    for (const { review } of catalogue.values()) assert.equal(review, 'draft');
  });
});

describe('a name that ends in a point', () => {
  it('has one point at the end of a sentence', () => {
    const more = 'method: punch\nclosure: {material: nylon}';
    const text = all(more, 'left cheek', 'en', 'name: Example Skin Inc.');
    assert.match(text, /at Example Skin Inc\. Do not take/);
    for (const language of languages)
      assert.doesNotMatch(all(more, 'left cheek', language, 'name: Example Skin Inc.'), /\.\./);
  });
});

describe('numbers in a handout', () => {
  it('have the noun that they need: one, two', () => {
    for (const [language, one, two] of [
      ['en', /for 1 hour\./, /for 2 hours\./],
      ['es', /durante 1 hora\./, /durante 2 horas\./],
    ] as const) {
      assert.match(all('method: shave', 'left cheek', language, 'wound-care: {first-change: 1 hour}'), one);
      assert.match(all('method: shave', 'left cheek', language, 'wound-care: {first-change: 2 hours}'), two);
    }
    assert.match(all('method: shave', 'left cheek', 'en', 'wound-care: {press-minutes: 1}'), /for 1 minute /);
  });
});

const folder = join(import.meta.dirname, '../../../samples');

describe('readability', () => {
  const practice = readFileSync(join(folder, 'practice.wheal.yaml'), 'utf8');
  const samples = readdirSync(folder).filter((name) => name !== 'practice.wheal.yaml');

  // Flesch-Kincaid grade level (Kincaid et al. 1975); INFLESZ scale of the Szigriszt-Pazos index (Barrio-Cantalejo 2008).
  for (const name of samples)
    it(`of ${name}: Flesch-Kincaid at most 6, INFLESZ at least 70`, () => {
      const text = readFileSync(join(folder, name), 'utf8');
      const english = fleschKincaidGrade(items(handout(text, practice, 'en')));
      assert.ok(english <= 6, String(english));
      const spanish = szigrisztPazos(items(handout(text, practice, 'es')));
      assert.ok(spanish >= 70, String(spanish));
    });

  it('holds for all sentences together', () => {
    const texts = (language: Language): readonly string[] =>
      [...catalogue.values()]
        .filter((sentence) => argumentsIn(sentence[language]).size === 0 && /[.?!]$/.test(sentence[language]))
        .map((sentence) => sentence[language]);
    assert.ok(fleschKincaidGrade(texts('en')) <= 6, String(fleschKincaidGrade(texts('en'))));
    assert.ok(szigrisztPazos(texts('es')) >= 70, String(szigrisztPazos(texts('es'))));
  });
});
