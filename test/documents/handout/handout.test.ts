import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { handoutFormats } from '../../../src/documents/handout/index.ts';
import { placeNames, placeWords } from '../../../src/documents/handout/places.ts';
import { argumentsIn, catalogue } from '../../../src/documents/handout/sentences/index.ts';
import { dateWords, listed } from '../../../src/documents/handout/language.ts';
import { languageOf } from '../../../src/note/words/language.ts';
import { addDays } from '../../../src/note/values/days.ts';
import { citation } from '../../../src/reference/sources/index.ts';
import { sites } from '../../../src/reference/sites.ts';
import { hostile, hostileText } from '../hostile.ts';
import { handout, items, made, note, words } from './make.ts';
import {
  englishSyllables,
  fernandezHuerta,
  fleschKincaidGrade,
  spanishSyllables,
  szigrisztPazos,
} from './readability.ts';
import { times } from '../../share.ts';

const folder = join(import.meta.dirname, '../../../samples');
const read = (name: string): string => readFileSync(join(folder, name), 'utf8');
const samples = readdirSync(folder).filter(
  (name) => name.endsWith('.wheal.yaml') && name !== 'practice.wheal.yaml',
);
const practice = read('practice.wheal.yaml');
const now = new Date('2026-03-02T10:05:00Z');

const heading = (id: string): string => catalogue.get(id)!.en;
const section = (id: string, text: string, more?: string): readonly string[] | undefined =>
  handout(text, more).sections.find((one) => one.heading === heading(id))?.items;

/** Sites of which a patient is told the region alone, as `nose` for the nasal tip. */
const regionIsEnough: ReadonlySet<string> = new Set(
  `
    scalp, frontal scalp, vertex of the scalp, parietal scalp, temporal scalp, occipital scalp, postauricular scalp, nuchal scalp
    face, glabella, suprabrow, nasolabial fold, labiomental crease
    eyelid margin, medial canthus, lateral canthus, periorbital skin
    nose, nasal tip, nasal supratip, nasal dorsum, nasal root, nasal ala, alar crease, alar rim, nasal sidewall, nasofacial sulcus, columella, soft triangle, nasal vestibule
    ear, helix, helical root, antihelix, scaphoid fossa, triangular fossa, concha, tragus, antitragus
    vermilion lip, philtrum, oral commissure, perioral skin
    neck, posterior triangle of the neck, supraclavicular neck, submandibular neck, submental neck, suprasternal notch
    chest, lateral chest, pectoral chest, infraclavicular chest, decolletage, xiphoid, trunk
    breast, areola
    axilla, anterior axillary fold, posterior axillary fold
    abdomen, lateral abdomen, epigastrium, periumbilical skin, suprapubic skin
    groin, mons pubis
    penile shaft, glans penis, coronal sulcus, foreskin, labium majus, labium minus, interlabial sulcus, clitoris, vaginal vestibule, fourchette, vagina, urethral meatus, perineum
    buttock, upper buttock, gluteal fold, natal cleft, coccyx
    back, lateral back, infrascapular back, interscapular back, paraspinal back, spine, sacrum
    shoulder, anterior shoulder, posterior shoulder, top of the shoulder, deltoid
    arm, anterior upper arm, posterior upper arm, medial elbow, radial forearm, ulnar forearm
    hand, thenar eminence, hypothenar eminence, finger web, knuckle, digit, web space
    leg, fibular head
    foot, medial foot, lateral foot, arch of the foot, ball of the foot, toe web
    nail
  `
    .trim()
    .split(/,\s*|\n\s*/),
);

describe('sentences of the handout', () => {
  for (const { id, en, es, source } of catalogue.values())
    it(`${id} fills in the same in both languages and has a source`, () => {
      assert.deepEqual([...argumentsIn(en)].sort(), [...argumentsIn(es)].sort());
      assert.notEqual(en, '');
      if (!en.startsWith('{') && !['medicine-title'].includes(id)) assert.notEqual(en, es);
      assert.ok(citation(source));
    });

  it('have places for sites that there are', () => {
    const names = new Set(sites.map(({ name }) => name));
    assert.deepEqual(
      placeNames.sites.filter((name) => !names.has(name)),
      [],
    );
    const regions = new Set(sites.map(({ region }) => region));
    assert.deepEqual(
      [...regions].filter((region) => !placeNames.regions.includes(region)),
      [],
    );
  });
});

describe('the words of a body site for patients', () => {
  it('are its own, unless those of its region are enough', () => {
    assert.deepEqual(
      sites
        .filter(({ name }) => !placeNames.sites.includes(name) && !regionIsEnough.has(name))
        .map(
          ({ name, region }) =>
            `${name}: write a line \`${name} | English | Spanish\` in src/documents/handout/places.ts ` +
            `(\`=\` where its own name is plain English), or name it in this test if a patient understands "${region}".`,
        ),
      [],
    );
  });

  it('are there in both languages', () => {
    for (const base of sites)
      for (const language of ['en', 'es'] as const)
        assert.ok(
          placeWords({ base, side: undefined }, language),
          `${base.name} has no words in "${language}": write both in its line in src/documents/handout/places.ts`,
        );
  });

  it('are not both its own and of its region', () => {
    const names = new Set(sites.map(({ name }) => name));
    assert.deepEqual(
      [...regionIsEnough].filter((name) => !names.has(name) || placeNames.sites.includes(name)),
      [],
    );
  });
});

describe('reading age of the handout', () => {
  it('is counted as the formulas want it', () => {
    const english = {
      skin: 1,
      procedure: 3,
      healed: 1,
      needed: 2,
      table: 2,
      the: 1,
      bleeding: 2,
      swollen: 2,
    };
    for (const [word, count] of Object.entries(english)) assert.equal(englishSyllables(word), count, word);
    const spanish = {
      herida: 3,
      quien: 1,
      cuidado: 3,
      después: 2,
      día: 2,
      agua: 2,
      guía: 2,
      enrojecimiento: 6,
      muy: 1,
      ciudad: 2,
    };
    for (const [word, count] of Object.entries(spanish)) assert.equal(spanishSyllables(word), count, word);
  });

  // Grade 6 is the school year in which pupils turn twelve.
  for (const name of samples)
    it(`${name} is easy at twelve in both languages`, () => {
      const english = items(handout(read(name), practice, 'en'));
      assert.ok(fleschKincaidGrade(english) <= 6, String(fleschKincaidGrade(english)));
      const spanish = items(handout(read(name), practice, 'es'));
      assert.ok(szigrisztPazos(spanish) >= 65, String(szigrisztPazos(spanish)));
      assert.ok(fernandezHuerta(spanish) >= 70, String(fernandezHuerta(spanish)));
    });

  it('would be noticed if it rose', () => {
    const hard = [
      'Postoperative hemorrhage necessitates immediate uninterrupted compression of the affected anatomical area.',
    ];
    assert.ok(fleschKincaidGrade(hard) > 12);
    assert.ok(
      szigrisztPazos([
        'La hemorragia postoperatoria requiere compresión ininterrumpida inmediata del área anatómica.',
      ]) < 40,
    );
  });
});

describe('what was done', () => {
  const done = (more: string): string => section('done-title', note(more))!.join(' ');

  it('says where, by which method, and how it was closed', () => {
    assert.match(
      done('method: punch\nclosure: {material: nylon, count: 2}'),
      /^Left cheek: .*\(punch\).*2 stitches\.$/,
    );
    assert.match(done('method: shave\nclosure: none'), /no stitches/);
    assert.match(done('method: excisional\nclosure: {material: polyglactin, count: 3}'), /dissolve/);
    assert.match(done('method: excisional\nclosure: tissue glue'), /skin glue/);
    assert.match(done('method: excisional\nclosure: staples'), /staples/);
    assert.match(
      done(
        'method: excisional\nclosure: [{layer: deep, material: polyglactin}, {layer: skin, material: nylon, count: 5}]',
      ),
      /5 stitches.*under the skin/,
    );
  });

  it('says nothing of what is not known', () => {
    const text = note('method: ??\nclosure: ??\nsutures-due: ??\ndressing: ??').replace('left cheek', '??');
    assert.equal(section('done-title', text)!.join(), 'A small procedure was done.');
    assert.equal(section('stitches-title', text), undefined);
    for (const { write } of Object.values(handoutFormats))
      assert.doesNotMatch(write(handout(text), now).replace(/=\r\n/g, ''), /\?\?|undefined|NaN/);
  });

  it('says the site in plain words of the language, with those of the note beside', () => {
    const text = note('method: shave').replace('left cheek', 'dorsum of right hand');
    assert.match(words(handout(text)), /back of the right hand \(in the note: dorsum of right hand\)/i);
    assert.match(words(handout(text, undefined, 'es')), /dorso de la mano derecha: /i);
  });

  it('tells of no wound where there is none', () => {
    const one = handout(note('method: injection'));
    for (const id of ['care-title', 'bleed-title', 'scar-title'])
      assert.ok(!one.sections.some((part) => part.heading === heading(id)), id);
    assert.ok(one.sections.some((part) => part.heading === heading('call-title')));
  });
});

describe('what was treated without a cut', () => {
  const told = (more: string): string => words(handout(note(more)));

  it('is washed, and blister and scab are left alone; nothing is said of a first dressing', () => {
    for (const method of ['cryotherapy', 'electrodesiccation', 'laser', 'topical destruction']) {
      const text = told(`method: ${method}`);
      assert.ok(text.includes('Wash it gently each day'), method);
      assert.ok(text.includes('Do not pick at it.'), method);
      assert.ok(text.includes('lighter or darker'), method);
      assert.doesNotMatch(text, /first dressing|Caring for the wound|bleed|Your result/, method);
    }
  });

  it('may blister where it was frozen or painted, and only there', () => {
    for (const method of ['cryotherapy', 'cantharidin'])
      assert.match(told(`method: ${method}`), /A blister can form/);
    for (const method of ['laser', 'electrodesiccation', 'injection', 'shave'])
      assert.doesNotMatch(told(`method: ${method}`), /blister/, method);
    assert.match(words(handout(note('method: cryotherapy'), undefined, 'es')), /Puede salir una ampolla/);
  });

  it('is washed off where a substance was put on it', () => {
    assert.match(told('method: topical destruction'), /Wash off what was put on it/);
    assert.doesNotMatch(told('method: cryotherapy'), /Wash off what was put on it/);
  });

  it('needs no bandage unless the note has one', () => {
    assert.match(told('method: cryotherapy'), /No bandage is needed unless it rubs/);
    const dressed = told('method: cryotherapy\ndressing: [petrolatum, adhesive bandage]');
    assert.match(dressed, /take the bandage off the next day/);
    assert.match(dressed, /where the dressing was/);
    assert.doesNotMatch(told('method: cryotherapy'), /where the dressing was/);
  });

  it('is told apart from a wound of the same visit', () => {
    const one = handout(read('same-visit-treatments.wheal.yaml'));
    const headings = one.sections.map((part) => part.heading);
    assert.ok(headings.includes('Caring for the wound') && headings.includes('Caring for the treated spot'));
  });

  it('may get thin where a corticosteroid was injected, and only there', () => {
    const injected = (drug: string): string => told(`method: injection\ninjected: {drug: ${drug}}`);
    assert.match(injected('triamcinolone 10 mg/mL'), /thin, pale or sunken/);
    assert.doesNotMatch(injected('bleomycin'), /thin, pale or sunken/);
    assert.doesNotMatch(injected('??'), /thin, pale or sunken/);
  });
});

describe('care of the wound', () => {
  const care = (more: string, own?: string, patient?: string): string =>
    section('care-title', note(more, patient === undefined ? {} : { patient }), own)!.join('\n');
  const routine = (text: string): string => `wound-care: {${text}}`;

  it('follows the routine of the practice', () => {
    assert.match(care('method: shave'), /dressing on and dry for 24 hours/);
    assert.match(care('method: shave', routine('first-change: 48 hours')), /for 48 hours/);
    assert.match(care('method: shave', routine('first-change: 2 days')), /for 2 days/);
    assert.match(care('method: shave', routine('first-change: next morning')), /until the next morning/);
    assert.match(
      care('method: shave', routine('first-change: after your shower')),
      /First dressing: after your shower/,
    );
    assert.match(care('method: shave', routine('open: yes')), /open to the air/);
    assert.match(care('method: shave', routine('open: no')), /clean dressing each day/);
    assert.match(care('method: shave', routine('ointment: none')), /Do not put ointment/);
    assert.match(care('method: shave', routine('ointment: mupirocin')), /layer of mupirocin/);
  });

  it('tells nobody to keep a dressing on that is not there', () => {
    assert.match(care('method: shave\ndressing: [petrolatum]'), /Keep the wound dry for 24 hours/);
  });

  const allergic: readonly (readonly [allergies: string, ointment: string, instead: string | undefined])[] = [
    ['bacitracin', 'bacitracin', 'petroleum jelly'],
    ['neomycin', 'triple antibiotic ointment', 'petroleum jelly'],
    ['neomycin', 'bacitracin', 'petroleum jelly'],
    ['neomycin', 'antibiotic ointment', 'petroleum jelly'],
    ['topical antibiotics', 'polymyxin B', 'petroleum jelly'],
    ['{to: bacitracin, reaction: itching}', 'bacitracin ointment', 'petroleum jelly'],
    ['petrolatum', 'petrolatum', undefined],
    ['"petroleum jelly"', 'petrolatum', undefined],
    ['lanolin', 'healing ointment', 'petroleum jelly'],
    ['calendula', 'calendula salve', 'petroleum jelly'],
    ['bacitracine', 'bacitracin', 'petroleum jelly'],
  ];
  for (const [to, ointment, instead] of allergic)
    it(`never tells a patient allergic to ${to} to use ${ointment}`, () => {
      const text = note('method: shave').replace('allergies: none', `allergies: [${to}]`);
      const told = section('care-title', text, routine(`ointment: ${ointment}`))!.join('\n');
      const put = told.split('\n').filter((row) => row.startsWith('Put a thin layer'));
      assert.deepEqual(put, instead === undefined ? [] : [`Put a thin layer of ${instead} on it.`]);
      if (instead === undefined) assert.match(told, /Do not put ointment/);
      assert.ok(
        handout(text, routine(`ointment: ${ointment}`)).remarks.some((one) => one.includes(ointment)),
      );
    });

  it('holds back an antibiotic where nobody knows the allergies, and says so', () => {
    for (const answer of ['unknown', '??', '[]']) {
      const text = note('method: shave').replace('allergies: none', `allergies: ${answer}`);
      const one = handout(text, routine('ointment: bacitracin'));
      assert.match(words(one), /layer of petroleum jelly/, answer);
      assert.ok(
        one.remarks.some((remark) => remark.includes('allergies')),
        answer,
      );
    }
    assert.match(care('method: shave', routine('ointment: bacitracin')), /layer of bacitracin/);
  });

  it('names what an allergic patient must not use', () => {
    const text = note('method: shave').replace('allergies: none', 'allergies: [bacitracin, penicillin]');
    assert.match(section('care-title', text)!.join('\n'), /bacitracin, neomycin and polymyxin/);
    assert.match(items(handout(text, undefined, 'es')).join('\n'), /bacitracina, neomicina y polimixina/);
    assert.doesNotMatch(care('method: shave'), /allergy/);
    assert.match(
      care('method: shave').concat(
        section('care-title', note('method: shave').replace('allergies: none', 'allergies: [tape]'))!.join(),
      ),
      /Tape/,
    );
  });

  const places: readonly (readonly [site: string, told: RegExp, not?: RegExp])[] = [
    ['left parietal scalp', /does not hold in hair/, /clean dressing each day/],
    ['right axilla', /Skin rubs on skin/],
    ['left lower abdomen', /waistband/],
    ['left shoulder', /straps/],
    ['left lateral neck', /collar/],
    ['right heel', /shoe/],
    ['left buttock', /sit on it/],
    ['left shin', /heal slowly/],
    ['left upper eyelid', /out of the eye/],
    ['left buccal mucosa', /moist/, /Put a thin layer|clean dressing each day|soap and water/],
    ['left cheek', /clean dressing each day/, /waistband|collar|shoe|hair|moist/],
  ];
  for (const [site, told, not] of places)
    it(`fits the ${site}`, () => {
      const text = section('care-title', note('method: shave').replace('left cheek', site))!.join('\n');
      assert.match(text, told);
      if (not !== undefined) assert.doesNotMatch(text, not);
    });

  it('asks who looks after a wound out of reach where nobody helps, and only there', () => {
    const told = (site: string, helper: string): string =>
      section(
        'care-title',
        note('method: shave', { visit: `aftercare: {given: spoken, ${helper}}` }).replace('left cheek', site),
      )!.join('\n');
    assert.match(told('left upper back', 'helper: none'), /may not reach this wound/);
    assert.doesNotMatch(told('left upper back', 'helper: wife'), /reach/);
    assert.doesNotMatch(told('left upper back', 'language: en'), /reach/);
    assert.doesNotMatch(told('left cheek', 'helper: none'), /reach/);
  });

  it('keeps ointment off glue, and acetaminophen from a sick liver', () => {
    assert.match(care('method: excisional\nclosure: tissue glue'), /off skin glue/);
    assert.doesNotMatch(care('method: excisional\nclosure: tissue glue'), /Put a thin layer/);
    assert.match(care('method: shave'), /acetaminophen/);
    assert.doesNotMatch(care('method: shave', undefined, 'conditions: [liver cirrhosis]'), /acetaminophen/);
  });
});

describe('bleeding', () => {
  const bleeding = (own?: string): string => section('bleed-title', note('method: shave'), own)!.join(' ');

  it('is pressed as long as published, or as the practice says', () => {
    // One leaflet of seven: 20 minutes without looking, twice, then call.
    assert.match(bleeding(), /for 20 minutes.*2 times in all.*call us/);
    assert.match(
      bleeding('wound-care: {press-minutes: 15, press-times: 3}'),
      /for 15 minutes.*3 times in all/,
    );
    assert.doesNotMatch(bleeding('wound-care: {press-times: 1}'), /press again/);
    assert.match(bleeding('wound-care: {press-minutes: 0}'), /for 20 minutes/);
  });
});

describe('medicines', () => {
  const taken = (list: string): string | undefined =>
    section('medicine-title', note('method: shave', { patient: `medications: ${list}` }))?.join(' ');

  it('are spoken of where the note lists a blood thinner, and nowhere else', () => {
    assert.match(taken('[apixaban 5 mg, metformin]')!, /Keep taking apixaban/);
    assert.match(taken('[warfarin, aspirin 81 mg]')!, /warfarin and aspirin/);
    for (const none of ['none', '[metformin]', '[no aspirin]', '??'])
      assert.equal(taken(none), undefined, none);
    assert.match(
      words(handout(note('method: shave', { patient: 'medications: [apixaban]' }), undefined, 'es')),
      /apixabán/,
    );
  });

  it('are not told to go on where they were changed', () => {
    for (const list of [
      '[apixaban stopped 2026-02-28]',
      '["warfarin, held since Monday"]',
      '[previously clopidogrel]',
    ]) {
      assert.doesNotMatch(taken(list)!, /Keep taking/, list);
      assert.match(taken(list)!, /Ask your clinician/, list);
    }
  });
});

describe('stitches', () => {
  const out = (more: string, own?: string): string | undefined =>
    section('stitches-title', note(`method: punch\n${more}`), own)?.join(' ');

  it('come out on the day that is planned, or in the window', () => {
    assert.match(out('closure: {material: nylon}\nsutures-due: 2026-03-09')!, /on Monday, March 9, 2026/);
    assert.match(
      out('closure: {material: nylon}', 'suture-windows: [{site: face, from: 4, to: 7}]')!,
      /between Friday, March 6, 2026 and Monday, March 9, 2026/,
    );
    // Day 5 is Saturday 7 March: the practice is closed until Monday.
    const weekend = 'suture-windows: [{site: face, from: 5, to: 8}]';
    assert.match(
      out('closure: {material: nylon}', weekend)!,
      /between Monday, March 9, 2026 and Tuesday, March 10, 2026/,
    );
    assert.match(out('closure: {material: nylon}', weekend.replace('8', '6'))!, /on Monday, March 9, 2026/);
    assert.match(out('closure: {material: nylon}', 'name: Example Skin')!, /at Example Skin/);
  });

  it('are not mentioned where none have to come out, or they are out', () => {
    for (const more of [
      'closure: none',
      'closure: {material: polyglactin}',
      'closure: ??',
      'closure: {material: nylon}\nsutures-out: 2026-03-07',
    ])
      assert.equal(out(more), undefined, more);
    assert.doesNotMatch(
      words(handout(note('method: punch\nclosure: {material: nylon}\nsutures-out: 2026-03-07'))),
      /until the stitches are out/,
    );
  });

  it('are asked for where nobody knows a day', () => {
    const text = note('method: punch\nclosure: {material: nylon}').replace('left cheek', 'somewhere odd');
    assert.match(section('stitches-title', text)!.join(' '), /have to come out.*call us/);
    assert.ok(handout(text).remarks.some((one) => one.includes('stitches')));
  });

  it('say the place where days differ', () => {
    const text = `${note('method: punch\nclosure: {material: nylon}\nsutures-due: 2026-03-09')}  - {site: left shin, method: punch, closure: {material: nylon}, sutures-due: 2026-03-16}\n`;
    const rows = section('stitches-title', text)!;
    assert.match(rows[0]!, /^Left cheek: they come out on Monday, March 9/);
    assert.match(rows[1]!, /^Left shin: they come out on Monday, March 16/);
    assert.equal(section('stitches-title', text.replace('03-16', '03-09'))!.length, 2);
  });
});

describe('result', () => {
  const result = (specimen: string, own?: string): string | undefined =>
    section('result-title', note(`method: shave\nspecimen: ${specimen}`), own)?.join(' ');

  it('is there by a working day, and nobody waits in silence', () => {
    // 10 working days after 2 March 2026, a Monday.
    assert.match(result('{label: A, sent: 2026-03-02}')!, /by Monday, March 16, 2026.*call us/);
    assert.match(
      result('{label: A, sent: 2026-03-02}', 'overdue: {result: 5}\nclosed: [2026-03-04]')!,
      /Tuesday, March 10/,
    );
    assert.match(
      result('{label: A, tests: [routine histology, fungal culture]}')!,
      /March 16.*longer.*April 13/,
    );
  });

  it('is not waited for where nothing was sent, and not spoken of where nothing is said', () => {
    assert.match(result('not sent, typical skin tag')!, /no result to wait for/);
    assert.equal(section('result-title', note('method: shave')), undefined);
  });

  it('never tells a diagnosis first', () => {
    const came = '{label: A, results: [{received: 2026-03-09, diagnosis: melanoma}]}';
    const told = '{label: A, results: [{received: 2026-03-09, diagnosis: dermal nevus, told: 2026-03-10}]}';
    const asked = 'handout: {diagnosis: yes}';
    for (const own of [undefined, asked])
      assert.doesNotMatch(words(handout(note(`method: shave\nspecimen: ${came}`), own)), /melanoma/i);
    assert.match(result(came)!, /Your result is here/);
    assert.equal(result(told), undefined);
    assert.match(result(told, asked)!, /dermal nevus/);
    const voicemail = '{label: A, results: [{received: 2026-03-09, told: {on: 2026-03-10, how: voicemail}}]}';
    assert.match(result(voicemail)!, /Your result is here/);
  });
});

describe('the practice', () => {
  it('gives its number, or a blank to fill in and a remark', () => {
    assert.match(
      words(handout(note('method: shave'), 'telephone: 555-0100\nafter-hours: 555-0101')),
      /555-0100\n.*555-0101/,
    );
    const without = handout(note('method: shave'));
    assert.match(words(without), /write the number here\): _{10}/);
    assert.ok(without.remarks.some((one) => one.includes('telephone')));
  });

  it('replaces any sentence in either language, and is told of one that there is not', () => {
    const own =
      'handout: {sentences: {en: {bleed-press: "Press {minutes} minutes, {name}.", nonsense: x}, es: {bleed-press: "Apriete {minutes} minutos."}}}';
    const english = handout(note('method: shave'), own);
    assert.match(words(english), /Press 20 minutes, \{name\}\./);
    assert.match(english.remarks.join('\n'), /\{name\}[^]*nonsense/);
    assert.match(words(handout(note('method: shave'), own, 'es')), /Apriete 20 minutos\./);
  });

  it('shows that the words are a draft until none of them is', () => {
    assert.match(words(handout(note('method: shave'))), /not yet reviewed/);
    const rows = [...catalogue.values()].map(({ id, en }) => `      ${id}: ${JSON.stringify(en)}`);
    const own = `handout:\n  sentences:\n    en:\n${rows.join('\n')}\n`;
    assert.doesNotMatch(words(handout(note('method: shave'), own)), /not yet reviewed/);
  });
});

describe('language of the handout', () => {
  const language = (visit: string, own?: string, asked?: 'en' | 'es') =>
    handout(note('method: shave', { visit }), own, asked).language;

  it('is that asked for, or of the note, or of the practice, or English', () => {
    assert.equal(language('aftercare: {language: es}', 'language: es', 'en'), 'en');
    assert.equal(language('aftercare: {language: en}', 'language: es'), 'en');
    assert.equal(language('aftercare: {language: Spanish}'), 'es');
    assert.equal(language('', 'language: es'), 'es');
    assert.equal(language(''), 'en');
    assert.equal(languageOf('es-MX'), 'es');
  });

  it('says so where there is no handout in the language of the note', () => {
    const one = handout(note('method: shave', { visit: 'aftercare: {language: Polish}' }));
    assert.equal(one.language, 'en');
    assert.ok(one.remarks.some((remark) => remark.includes('Polish')));
  });

  it('names every day as the platform does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60_000 }), (days) => {
        const date = addDays('1960-01-01', days);
        const at = new Date(`${date}T00:00:00Z`);
        const form = {
          timeZone: 'UTC',
          weekday: 'long',
          year: 'numeric',
          month: 'long',
          day: 'numeric',
        } as const;
        assert.equal(dateWords(date, 'en'), at.toLocaleDateString('en-US', form));
        assert.equal(dateWords(date, 'es'), at.toLocaleDateString('es-ES', form).replace(',', ''));
      }),
    );
  });

  it('lists things as people do', () => {
    assert.equal(listed(['a'], 'en'), 'a');
    assert.equal(listed(['a', 'b', 'c'], 'en'), 'a, b and c');
    assert.equal(listed(['a', 'ibuprofeno'], 'es'), 'a e ibuprofeno');
  });
});

describe('a child', () => {
  it('has a line for whoever cares for it', () => {
    const born = (date: string): string => words(handout(note('method: shave').replace('1961-08-09', date)));
    assert.match(born('2019-01-01'), /cares for the child/);
    assert.doesNotMatch(born('1961-08-09'), /cares for the child/);
  });
});

describe('a note that is not good enough', () => {
  it('has no handout, and says why', () => {
    for (const text of ['- a\n', '', 'procedures: 1: 2\n', 'wheal: 1\nvisit: 2026-03-02\n']) {
      const result = made(text);
      assert.ok(!result.readable, text);
      assert.notEqual(result.why, '');
    }
  });

  it('has one with a remark where it has errors', () => {
    const text = note('method: shave\nanesthetic: {agent: lidocaine, concentration: 1%, volume: 90 mL}', {
      patient: 'weight: 62 kg',
    });
    assert.ok(handout(text).remarks.some((one) => one.includes('error')));
  });
});

const page = (text: string): string => text.replace(/<[^>]*>/g, '');

describe('hostile words', () => {
  const whole = (value: string): string => `wheal: 1
visit: 2026-03-02
patient: {id: ${value}, email: ${value}, allergies: [${value}], medications: [${value}], conditions: [${value}]}
procedures:
  - {site: ${value}, method: ${value}, hemostasis: [${value}], closure: {material: ${value}, count: ${value}}, dressing: [${value}], specimen: {label: ${value}, tests: [${value}], results: [{received: 2026-03-03, told: 2026-03-04, diagnosis: ${value}}]}, sutures-due: ${value}}
aftercare: {language: ${value}}
`;
  const own = (value: string): string =>
    `name: ${value}\ntelephone: ${value}\nafter-hours: ${value}\nwound-care: {ointment: ${value}, first-change: ${value}}\nhandout: {diagnosis: yes, sentences: {en: {call-pus: ${value}}}}\n`;

  function assertHarmless(typed: string): void {
    const value = JSON.stringify(typed.replace(/[\ud800-\udfff]/g, ''));
    const result = made(whole(value), own(value));
    if (!result.readable) return;
    const text = handoutFormats.text.write(result, now);
    assert.doesNotMatch(
      text,
      // eslint-disable-next-line no-control-regex -- these are what must not get through
      /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff]/,
    );
    const html = handoutFormats.html.write(result, now);
    assert.doesNotMatch(html, /<(?:script|img|b)\b/i);
    assert.equal(html.match(/<\/style>/g)?.length, 1);
    assert.doesNotMatch(page(html.slice(html.indexOf('<body'))), /[<>"]/);
    const mail = handoutFormats.eml.write(result, now);
    const [head = ''] = mail.split('\r\n\r\n');
    assert.deepEqual(
      head
        .split('\r\n')
        .filter((line) => !line.startsWith(' '))
        .map((line) => line.split(':')[0])
        .filter((name) => name !== 'To'),
      ['MIME-Version', 'X-Unsent', 'Date', 'Subject', 'Content-Type'],
    );
    assert.match(mail, /^[\r\n\t -~]*$/);
    assert.equal(mail.match(/^--=_wheal_alternative/gm)?.length, 3);
    for (const remark of result.remarks) assert.doesNotMatch(remark, /[\r\n]/);
  }

  for (const text of hostile)
    it(`${JSON.stringify(text).slice(0, 60)} comes out harmless`, () => {
      assertHarmless(text);
    });

  it('of any kind come out harmless', () => {
    fc.assert(fc.property(hostileText, assertHarmless), { numRuns: times(60) });
  });

  it('are filled in once: braces in them stay braces', () => {
    const one = handout(note('method: shave'), 'name: x\ntelephone: "{date} {phone} $&"');
    assert.match(words(one), /Telephone: \{date\} \{phone\} \$&/);
  });
});

describe('the words of a handout', () => {
  it('name a side of a place of which there is one as people do', () => {
    const place = (site: string): string => words(handout(note('method: shave').replace('left cheek', site)));
    for (const [site, said] of [
      ['left nasal ala', 'Left side of the nose'],
      ['right mid back', 'Middle of the back, right side'],
      ['left upper back', 'Left upper back'],
      ['left dorsal hand', 'Back of the left hand'],
      ['right lateral neck', 'Right side of the neck'],
      ['left cheek', 'Left cheek'],
    ] as const)
      assert.ok(place(site).includes(said), `${site}: ${place(site)}`);
  });

  it('say that they are for each of several wounds, where those are alike', () => {
    const both = read('hair-loss-pair.wheal.yaml');
    assert.ok(words(handout(both)).includes('This is for each wound.'));
    assert.ok(!words(handout(read('punch-sutured.wheal.yaml'))).includes('each wound'));
  });

  it('call nothing a biopsy that was only taken off', () => {
    assert.ok(!words(handout(read('skin-tag-scissor.wheal.yaml'))).includes('biopsy'));
    assert.ok(words(handout(read('punch-sutured.wheal.yaml'))).includes('Any biopsy leaves a mark'));
  });
});

describe('forms of the handout', () => {
  const one = handout(read('melanocytic-deep-shave.wheal.yaml'), practice, 'es');

  it('say the same', () => {
    const text = handoutFormats.text.write(one, now).replace(/\s+/g, ' ');
    const html = page(handoutFormats.html.write(one, now).replace(/<style>[^]*<\/style>/, '')).replace(
      /\s+/g,
      ' ',
    );
    for (const item of items(one)) {
      assert.ok(text.includes(item), item);
      assert.ok(html.includes(item), item);
    }
    for (const line of handoutFormats.text.write(one, now).split('\n')) assert.ok(line.length <= 78, line);
  });

  // A browser's print on both sides of Letter, the shorter paper, with a wide font at 11 points holds more than this.
  const paper = { sides: 2, rows: 50, characters: 88, figure: 22 };
  for (const name of samples)
    it(`print ${name} on one sheet while everything is still to come`, () => {
      const open = read(name)
        .replace(/^ *sutures-out.*\n/gm, '')
        .replace(/^ *results:\n(?: {8,}.*\n)*/gm, '');
      for (const language of ['en', 'es'] as const) {
        const { sections, header } = handout(open, practice, language);
        const rows = sections.flatMap(({ heading: above, items: below }) => [above, ...below]);
        const height = rows.reduce((sum, row) => sum + Math.ceil((row.length + 2) / paper.characters), 0);
        // More than a line of space after each section; the header and the figure are above.
        const free = paper.sides * paper.rows - paper.figure - header.length - 3;
        assert.ok(height + sections.length * 1.2 <= free, `${height} of ${free}`);
      }
    });

  it('load nothing from elsewhere, and name their language', () => {
    const html = handoutFormats.html.write(one, now);
    assert.match(html, /<html lang="es">/);
    assert.doesNotMatch(html, /<script|src=|href=|url\((?!#)|@import/);
  });

  it('are large where the practice wants it', () => {
    assert.match(
      handoutFormats.html.write(handout(note('method: shave'), 'handout: {large-print: yes}'), now),
      /<body class="large">/,
    );
    assert.match(handoutFormats.html.write(one, now), /<body>/);
  });

  it('have no patient and no procedure in the subject of a mail', () => {
    assert.equal(one.subject, 'Sus instrucciones de Example Dermatology');
  });

  it('go to the address of the note, and to nobody else', () => {
    const to = handout(note('method: shave', { patient: 'email: a@example.org' }));
    assert.match(handoutFormats.eml.write(to, now), /^To: a@example\.org\r$/m);
    assert.doesNotMatch(handoutFormats.eml.write(one, now), /^(?:To|Cc|Bcc|From):/m);
  });
});
