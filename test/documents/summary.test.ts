import assert from 'node:assert/strict';
import fc from 'fast-check';
import { check } from '../../src/checks/index.ts';
import {
  summaryFormats,
  summaryOf,
  type NoSummary,
  type SummaryModel,
} from '../../src/documents/summary/index.ts';
import { paragraph } from '../../src/documents/summary/model.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { times } from '../share.ts';
import { tablesIn } from '../practice/tables-of.ts';

function summed(text: string, practice?: string): SummaryModel | NoSummary {
  const source = readNote(text);
  const tables = practice === undefined ? referenceTables : tablesIn(practice);
  const judgement = check(source, { tables, today: '2026-03-20' });
  return summaryOf(source, judgement, {
    tables,
    practice: practice && 'practice.wheal.yaml',
    today: '2026-03-20',
  });
}

function modelOf(text: string, practice?: string): SummaryModel {
  const model = summed(text, practice);
  assert.ok(model.readable);
  return model;
}

const whole = `wheal: 1
visit: 2026-03-02 10:05
clinician: K.O.
patient:
  id: C-20417
  born: 1961-08-09
  weight: 62 kg
  allergies: [bacitracin, {to: latex, reaction: rash}]
  implants: [{kind: pacemaker, where: left chest}]
consent: written
time-out: 10:12
procedures:
  - site: left upper back
    landmarks: 4 cm from midline, 9 cm below the hairline
    photo: yes
    lesion: brown-black macule 7 mm, irregular border
    question: rule out melanoma
    method: deep shave
    size: 9 x 8 mm
    margin: 1 mm
    depth: deep dermis
    preparation: isopropyl alcohol
    dry: yes
    anesthetic:
      - agent: lidocaine
        concentration: 1%
        epinephrine: 1:100,000
        volume: 1.5 mL
        time: 10:13
    hemostasis: [aluminum chloride, pressure]
    closure: none
    specimen: {label: A, medium: formalin, tests: [routine histology], sent: 2026-03-02}
    dressing: [petrolatum, gauze, paper tape]
    complications: none
aftercare: {given: [spoken, email], language: en}
`;

/** The topics of a paragraph in the order in which the trade tells a procedure. */
const order = [
  'site',
  'lesion',
  'question',
  'consent',
  'time-out',
  'preparation',
  'anesthesia',
  'method',
  'hemostasis',
  'closure',
  'specimen',
  'dressing',
  'complications',
  'aftercare',
];

describe('chart summary', () => {
  it('tells a procedure in the order of the trade, in one paragraph', () => {
    const [procedure] = modelOf(whole).procedures;
    assert.deepEqual(
      procedure?.facts.map(({ topic }) => topic),
      order,
    );
    assert.equal(
      paragraph(procedure.facts),
      'Site: left upper back, 4 cm from midline, 9 cm below the hairline, photograph taken. ' +
        'Lesion: brown-black macule 7 mm, irregular border. Clinical question: rule out melanoma. ' +
        'Consent: written. Time-out: 10:12. Preparation: isopropyl alcohol, dry. ' +
        'Anesthesia: lidocaine 1% with epinephrine 1:100,000, 1.5 mL (15 mg, 3.5% of its limit), at 10:13. ' +
        'Method: deep shave, 9 x 8 mm, margin 1 mm, to deep dermis. ' +
        'Hemostasis: aluminum chloride and pressure. Closure: none. ' +
        'Specimen: A, in formalin, routine histology, sent 2026-03-02. ' +
        'Dressing: petrolatum, gauze and paper tape. Complications: none. ' +
        'Aftercare: spoken and email, in English.',
    );
  });

  it('says who helps at home where the note does', () => {
    const text = whole.replace('language: en}', 'language: en, helper: none}');
    const [procedure] = modelOf(text).procedures;
    assert.match(paragraph(procedure!.facts), /Aftercare: .*, in English, helper at home none\.$/);
  });

  it('begins with who, when, and what matters for safety', () => {
    assert.deepEqual(
      modelOf(whole).header.map(({ text }) => text),
      [
        'Chart number: C-20417',
        'Visit: 2026-03-02 10:05',
        'As of: 2026-03-20',
        'Age: 64 years, born 1961-08-09',
        'Weight: 62 kg',
        'Allergies: bacitracin; latex (rash)',
        'Implants: pacemaker, left chest',
        'Clinician: K.O.',
      ],
    );
  });

  it('gives the age of a small child in months', () => {
    const { header } = modelOf(whole.replace('1961-08-09', '2025-07-31'));
    assert.ok(header.some(({ text }) => text === 'Age: 7 months, born 2025-07-31'));
  });

  it('gives the dose of the visit with limit, binding and authority', () => {
    const dose = modelOf(whole).dose.join('\n');
    // 7 mg/kg with epinephrine, US prescribing information: 62 kg make 434 mg; 1.5 mL of 1% are 15 mg, 3.46%.
    assert.match(dose, /lidocaine with epinephrine: 15 mg .*434 mg.*7 mg\/kg.*US prescribing information/);
    assert.match(dose, /3\.5% of the limit/);
  });

  for (const key of [
    'lesion',
    'question',
    'consent',
    'time-out',
    'complications',
    'hemostasis',
    'closure',
    'dressing',
    'specimen',
    'aftercare',
    'preparation',
  ]) {
    it(`says nothing about ${key} where the note says nothing`, () => {
      const without = whole.replace(new RegExp(`^ *${key}:.*\n`, 'm'), '').replace(/^ *dry:.*\n/m, '');
      const [procedure] = modelOf(without).procedures;
      assert.deepEqual(
        procedure?.facts.map(({ topic }) => topic),
        order.filter((topic) => topic !== key),
      );
    });
  }

  it('shows what is not yet known as not yet known', () => {
    const { procedures, header } = modelOf(
      whole
        .replace('complications: none', 'complications: ??')
        .replace('62 kg', '??')
        .replace('photo: yes', 'photo: ??'),
    );
    const text = procedures
      .flatMap(({ facts }) => facts)
      .map((fact) => fact.text)
      .join('. ');
    assert.match(text, /Complications: not yet known/);
    assert.match(text, /photograph taken: not yet known/);
    assert.ok(header.some((fact) => fact.text === 'Weight: not yet known'));
  });

  it('says that allergies are not recorded rather than leaving them out', () => {
    const { header } = modelOf(whole.replace(/^ *allergies:.*\n/m, ''));
    assert.ok(header.some(({ text }) => text === 'Allergies: not recorded'));
  });

  it('puts errors at the top and lists what is open', () => {
    const note = whole.replace('1.5 mL', '60 mL');
    const row = note.split('\n').findIndex((line) => line.includes('60 mL')) + 1;
    const model = modelOf(note);
    assert.match(model.alerts.join(), /over the limit of 434 mg.*\?$/);
    assert.ok(model.open.some((one) => one.code === 'dose/over-limit' && one.row === row));
    const text = summaryFormats.text.write(model);
    assert.ok(text.indexOf(model.alerts[0] ?? '?') < text.indexOf('Left upper back'));
    assert.deepEqual(modelOf(whole).alerts, []);
  });

  it('says what is outstanding, told and next', () => {
    assert.match(modelOf(whole).next.join('\n'), /specimen A: result outstanding, sent 2026-03-02/);
    const result =
      '{received: 2026-03-09, diagnosis: nevus, told: {on: 2026-03-10, by: K.O., how: telephone}, next: none needed}';
    const told = modelOf(
      whole.replace('sent: 2026-03-02}', `sent: 2026-03-02, results: [${result}]}`),
    ).next.join('\n');
    assert.match(
      told,
      /received 2026-03-09; nevus; patient told 2026-03-10 by K\.O\. by telephone; next: none needed/,
    );
    const untold = modelOf(
      whole.replace(
        'sent: 2026-03-02}',
        'sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: nevus}]}',
      ),
    );
    assert.match(untold.next.join('\n'), /nevus; patient not told yet/);
  });

  const sutured = whole.replace('closure: none', 'closure: {material: nylon, size: 4-0, count: 2}');

  it('says when stitches are to come out, and when they came out', () => {
    // Leaflet on punch biopsies: 10 to 14 days on the back.
    assert.match(
      modelOf(sutured).next.join('\n'),
      /left upper back: sutures to come out: usual from 2026-03-12 to 2026-03-16 \(.+\)\./,
    );
    const planned = sutured.replace('    specimen:', '    sutures-due: 2026-03-13\n    specimen:');
    assert.match(modelOf(planned).next.join('\n'), /planned for 2026-03-13; usual from 2026-03-12/);
    const out = sutured.replace(
      '    specimen:',
      '    sutures-out: {on: 2026-03-13, by: N.B., count: 2}\n    specimen:',
    );
    assert.match(modelOf(out).next.join('\n'), /sutures out 2026-03-13, by N\.B\., 2 stitches\./);
    assert.doesNotMatch(modelOf(out).next.join('\n'), /to come out|usual/);
    const early = modelOf(out.replace('on: 2026-03-13', 'on: 2026-03-07')).next.join('\n');
    assert.match(early, /sutures out 2026-03-07, .*usual from 2026-03-12 to 2026-03-16/);
    assert.doesNotMatch(modelOf(whole).next.join('\n'), /sutures/);
  });

  it('tells both layers of a closure', () => {
    const layers = whole.replace(
      'closure: none',
      'closure: [{layer: deep, material: polyglactin, size: 4-0}, {layer: skin, material: nylon, size: 5-0, count: 3}]',
    );
    assert.match(
      paragraph(modelOf(layers).procedures[0]?.facts ?? []),
      /Closure: deep layer: 4-0 polyglactin; skin layer: 5-0 nylon, 3 stitches\./,
    );
  });

  it('names the practice file and each limit that it loosens, with who stands for it', () => {
    const { practice } = modelOf(
      whole,
      `wheal: 1
limits:
  - agent: lidocaine
    epinephrine: yes
    max-mg-per-kg: 8
    max-mg: 550
    source: protocol of the practice
    approved: {by: A.B., on: 2026-01-05, reason: trial under supervision}
`,
    );
    assert.equal(practice[0], 'Practice file: practice.wheal.yaml.');
    assert.match(
      practice[1] ?? '',
      /lidocaine with epinephrine.*8 mg\/kg.*550 mg.*A\.B\..*2026-01-05.*trial under supervision.*protocol of the practice/,
    );
  });

  it('says what a product of the practice is', () => {
    const product = whole.replace(/agent: lidocaine\n.*\n.*\n/, 'product: lido epi\n');
    const stock =
      'wheal: 1\nstock: [{product: lido epi, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}]\n';
    assert.match(
      paragraph(modelOf(product, stock).procedures[0]?.facts ?? []),
      /Anesthesia: lido epi \(lidocaine 1% with epinephrine 1:100,000\), 1\.5 mL \(15 mg/,
    );
    const line = product.replace(/anesthetic:\n(?: {6}.*\n)+/, 'anesthetic: 1.5 mL blue vial 1%\n');
    assert.match(
      paragraph(modelOf(line, stock.replace('lido epi', 'blue vial 1%')).procedures[0]?.facts ?? []),
      /Anesthesia: blue vial 1% \(lidocaine 1% with epinephrine 1:100,000\), 1\.5 mL \(15 mg/,
    );
  });

  it('keeps the dose of a later day apart', () => {
    const later = `${whole}events:
  - on: 2026-03-05
    kind: bleeding
    action: sutured
    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL}
    outcome: stopped
`;
    const { dose, afterwards } = modelOf(later);
    // 4.5 mg/kg plain, US prescribing information: 62 kg make 279 mg.
    assert.ok(
      dose.some((row) => /^On 2026-03-05: lidocaine: 10 mg .*279 mg/.test(row)),
      dose.join('\n'),
    );
    assert.match(afterwards[0] ?? '', /anesthetic: lidocaine 1%, 1 mL \(10 mg, 3\.6% of its limit\)/);
  });

  it('says why a dose can not be judged, and what is over the limit all the same', () => {
    const unweighed = modelOf(whole.replace(/^ *weight:.*\n/m, ''));
    assert.match(unweighed.dose.join('\n'), /can't be judged: no weight/);
    // 60 mL of 1% are 600 mg: past the cap of 500 mg with epinephrine at any weight.
    const over = modelOf(whole.replace(/^ *weight:.*\n/m, '').replace('1.5 mL', '60 mL'));
    assert.match(over.dose.join('\n'), /over the limit all the same: 120%/);
  });

  it('lists what was accepted with the reason, apart from what is open', () => {
    const near = whole
      .replace('1.5 mL', '36 mL')
      .concat('accepted: [{check: dose/near-limit, reason: large area in one visit, by: K.O.}]\n');
    const { accepted, open } = modelOf(near);
    assert.deepEqual(
      accepted.map(({ code, accepted: by }) => [code, by]),
      [['dose/near-limit', { reason: 'large area in one visit', by: 'K.O.' }]],
    );
    assert.ok(!open.some(({ code }) => code === 'dose/near-limit'));
    assert.match(summaryFormats.text.write(modelOf(near)), /Accepted by K\.O\.: large area in one visit/);
  });

  it('says why nothing was sent, and expects no result', () => {
    const model = modelOf(whole.replace(/specimen: .*/, 'specimen: not sent, typical skin tag'));
    assert.match(paragraph(model.procedures[0]?.facts ?? []), /Specimen: not sent, typical skin tag\./);
    assert.deepEqual(model.next, []);
  });

  it('tells what happened afterwards', () => {
    const { afterwards } = modelOf(
      `${whole}events:\n  - {on: 2026-03-03, kind: bleeding, action: pressed, outcome: stopped}\n`,
    );
    assert.deepEqual(afterwards, ['2026-03-03 bleeding; action: pressed; outcome: stopped.']);
  });

  it('says that no anesthetic is recorded', () => {
    const without = whole.replace(/ {4}anesthetic:[\s\S]*?(?= {4}hemostasis)/, '');
    assert.deepEqual(modelOf(without).dose, ['No local anesthetic is recorded.']);
  });

  for (const text of ['', '# nothing\n', '- a\n- list\n', 'just words']) {
    it(`has no summary of ${JSON.stringify(text)}, and says why`, () => {
      const model = summed(text);
      assert.equal(model.readable, false);
      assert.ok(model.why.length > 5);
    });
  }
});

const hostile = `<script>alert(1)</script> <img src=x onerror=alert(1)> "' & [x](http://a.example) ![y](http://b.example) \`c\` **d** @e`;

describe('forms of the summary', () => {
  const model = modelOf(
    whole.replace('brown-black macule 7 mm, irregular border', `'${hostile.replaceAll("'", "''")}'`),
  );

  it('all hold every fact, section and the caution', () => {
    const plainModel = modelOf(whole);
    const strip = (text: string): string => text.replace(/\\(.)/g, '$1').replaceAll('&#39;', "'");
    for (const form of ['text', 'markdown', 'html', 'json'] as const) {
      const text = strip(summaryFormats[form].write(plainModel));
      for (const fact of [...plainModel.header, ...(plainModel.procedures[0]?.facts ?? [])])
        assert.ok(text.includes(fact.text), `${form}: ${fact.text}`);
      for (const row of [...plainModel.dose, ...plainModel.next, plainModel.caution])
        assert.ok(text.includes(row), `${form}: ${row}`);
    }
  });

  it('lets nothing of the note become markup in HTML, and loads or runs nothing', () => {
    const html = summaryFormats.html.write(model);
    const tags = new Set([...html.matchAll(/<\/?([a-z0-9]+)/gi)].map(([, name = '']) => name.toLowerCase()));
    const page = [
      'html',
      'head',
      'meta',
      'title',
      'style',
      'body',
      'main',
      'h1',
      'h2',
      'p',
      'ul',
      'li',
      'footer',
    ];
    const figure = ['figure', 'figcaption', 'table', 'thead', 'tbody', 'tr', 'th', 'td', 'span'];
    const drawing = ['svg', 'desc', 'defs', 'pattern', 'g', 'path', 'rect', 'text', 'ellipse', 'circle'];
    const known = [...page, ...figure, ...drawing];
    assert.deepEqual(
      [...tags].filter((tag) => !known.includes(tag)),
      [],
    );
    assert.doesNotMatch(html, /<[^>]*\s(src|href|on\w+)=/i);
    assert.ok(html.includes('&lt;script&gt;alert(1)&lt;/script&gt;'));
  });

  it('lets nothing of the note become markup in Markdown', () => {
    const markdown = summaryFormats.markdown.write(model);
    assert.doesNotMatch(markdown, /(?<!\\)[<[\]`@]/);
    assert.doesNotMatch(markdown, /http:\/\//);
  });

  it('gives JSON that is the model', () => {
    assert.deepEqual(JSON.parse(summaryFormats.json.write(model)), JSON.parse(JSON.stringify(model)));
  });

  it('throws for no text, and lets no control character through', () => {
    const lines = whole.split('\n');
    fc.assert(
      fc.property(fc.nat(lines.length - 1), fc.string({ unit: 'binary', maxLength: 40 }), (at, noise) => {
        const text = lines.map((line, index) => (index === at ? `${line}${noise}` : line)).join('\n');
        const any = summed(text);
        if (!any.readable) return;
        for (const form of ['text', 'markdown', 'html', 'json'] as const)
          // eslint-disable-next-line no-control-regex -- that is the question
          assert.doesNotMatch(summaryFormats[form].write(any), /[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
      }),
      { numRuns: times(50) },
    );
  });
});
