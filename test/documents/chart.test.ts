import assert from 'node:assert/strict';
import { catalogue, check, messageOf } from '../../src/checks/index.ts';
import { summaryFormats, summaryOf, type SummaryModel } from '../../src/documents/summary/index.ts';
import { questionOf } from '../../src/documents/summary/questions.ts';
import { paragraph, sectionsOf } from '../../src/documents/summary/model.ts';
import { doseJson } from '../../src/dose/json.ts';
import { requisitionOf } from '../../src/documents/requisition/requisition.ts';
import { readNote } from '../../src/note/read.ts';
import { tablesIn } from '../practice/tables-of.ts';

interface Given {
  readonly practice?: string;
  readonly today?: string;
  readonly path?: string;
}

function modelOf(text: string, { practice = '', today = '2026-03-20', path }: Given = {}): SummaryModel {
  const source = readNote(text);
  const tables = tablesIn(practice);
  const model = summaryOf(source, check(source, { tables, today }), { tables, practice: path, today });
  assert.ok(model.readable);
  return model;
}

const forms = Object.values(summaryFormats).map(({ write }) => write);
/** The summary in each of its forms, without what a form needs to keep words from being markup. */
const everyForm = (text: string, given?: Given): readonly string[] =>
  forms.map((write) =>
    write(modelOf(text, given)).replace(/\\(.)/g, '$1').replaceAll('&#39;', "'").replaceAll('&quot;', '"'),
  );

const note = (procedure: string, { patient = 'weight: 62 kg, age: 40 years', rest = '' } = {}): string =>
  `wheal: 1\nvisit: 2026-03-02 10:05\nclinician: K.O.\nconsent: written\ntime-out: 10:12\npatient: {id: C-1, ${patient}, allergies: none, implants: none}\nprocedures:\n  - site: left upper back\n${procedure
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n')}\n${rest}`;

const given = (anesthetic: string): string => note(`anesthetic: {${anesthetic}}`);

describe('the limit in a chart', () => {
  it('is the practice’s own where its stricter limit binds, never that of a label', () => {
    const practice = 'limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: 3}]';
    const text = given('agent: lidocaine, concentration: 1%, volume: 5 mL');
    const [row = ''] = modelOf(text, { practice }).dose;
    // 3 mg/kg of the practice at 62 kg make 186 mg.
    assert.match(row, /limit of 186 mg \(3 mg\/kg at 62 kg; the practice’s own limit, any age\)/);
    assert.match(row, /Source: the practice/);
    for (const form of everyForm(text, { practice })) assert.doesNotMatch(form, /US prescribing information/);
  });

  it('names the lowest published value as that where the authority has none', () => {
    // No US label has a maximum of levobupivacaine; of the published ones the lowest counts.
    const [row = ''] = modelOf(given('agent: levobupivacaine, concentration: 0.5%, volume: 1 mL')).dose;
    assert.match(row, /, the lowest published value, /);
    assert.doesNotMatch(row, /US prescribing information/);
  });

  it('is that of the label by name and source where the label binds', () => {
    const [row = ''] = modelOf(given('agent: lidocaine, concentration: 1%, volume: 5 mL')).dose;
    assert.match(row, /4\.5 mg\/kg at 62 kg; US prescribing information/);
    assert.match(row, /Source: US prescribing information, lidocaine/);
  });

  it('is loosened with the label’s limit beside it', () => {
    const practice =
      'limits: [{agent: lidocaine, epinephrine: yes, max-mg-per-kg: 8, max-mg: 550, approved: {by: A.B., on: 2026-01-05, reason: Trial.}}]';
    const rows = modelOf(given('agent: lidocaine, concentration: 1%, volume: 5 mL'), { practice }).practice;
    assert.deepEqual(rows, [
      'Loosened limit of lidocaine with epinephrine: 8 mg/kg, at most 550 mg (US prescribing information: 7 mg/kg, at most 500 mg); approved by A.B. on 2026-01-05: Trial.',
    ]);
  });
});

describe('a cream without a known maximum', () => {
  const text = given('agent: lidocaine cream 5%, amount: 2 g');

  it('is not judged for an adult, and the chart and the check say so', () => {
    const source = readNote(text);
    const { findings } = check(source, { tables: tablesIn(''), today: '2026-03-02' });
    assert.ok(findings.some(({ code }) => code === 'dose/cream-not-judged'));
    for (const form of everyForm(text)) assert.match(form, /2 g; not judged, since no maximum is known/);
  });

  it('makes no dose that was judged, where there is nothing else', () => {
    const { dose } = check(readNote(text), {
      tables: tablesIn(''),
      today: '2026-03-02',
    });
    assert.ok(dose);
    assert.deepEqual(doseJson(dose), {
      judged: false,
      fraction: null,
      why: 'no maximum of lidocaine cream 5% is known for such a patient',
      epinephrineMicrograms: 0,
      agents: [],
      creams: [{ agent: 'lidocaine cream 5%', grams: 2, judged: false }],
    });
  });
});

describe('what was told, and what was tried', () => {
  const told = (list: string): string =>
    modelOf(
      note(
        `specimen: {label: A, sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: nevus, told: ${list}}]}`,
      ),
    ).next.join('\n');

  it('is "tried on …" for an attempt', () => {
    const words = told('{on: 2026-03-10, by: K.O., how: voicemail}');
    assert.match(words, /tried on 2026-03-10 by K\.O\., voicemail; patient not told yet/);
    assert.doesNotMatch(words, /patient told/);
  });

  it('is told once the patient heard it', () => {
    assert.match(
      told('[{on: 2026-03-10, how: voicemail}, {on: 2026-03-11, by: K.O., how: telephone}]'),
      /tried on 2026-03-10, voicemail, then patient told 2026-03-11 by K\.O\. by telephone/,
    );
  });
});

describe('times in what leaves the house', () => {
  it('are those that somebody typed: no time of collection from the time of the visit', () => {
    const source = readNote(note('specimen: {label: A, medium: formalin}'));
    assert.ok(source.value);
    const tables = tablesIn('');
    for (const { rows, label } of requisitionOf(source.value, tables).requests)
      for (const part of [rows, label]) {
        assert.equal(part.find(({ name }) => name === 'Collected')?.text, '2026-03-02');
        assert.ok(part.every(({ text = '' }) => !text.includes('10:05')));
      }
    const [request] = requisitionOf(source.value, tables).requests;
    const time = request?.rows.find(({ name }) => name === 'Time of collection');
    assert.ok(time !== undefined && time.text === undefined);
  });
});

describe('a visit that was declined', () => {
  it('has the refusal in its chart', () => {
    const text =
      'wheal: 1\nvisit: 2026-03-02\npatient: {id: C-1}\nconsent: declined, wants to think it over\nprocedures: []\n';
    for (const form of everyForm(text)) assert.match(form, /Consent: declined, wants to think it over/);
  });
});

describe('a note that waits for a result', () => {
  const late = note(
    'method: shave\nsize: 8 mm\nhemostasis: pressure\nclosure: none\ncomplications: none\nspecimen: {label: A, medium: formalin, tests: [routine histology], sent: 2026-03-02}',
  );

  it('is not unfit because the result is late, and asks for it', () => {
    const model = modelOf(late, { today: '2026-06-01' });
    assert.ok(
      model.open.some(({ code, severity }) => code === 'follow-up/result-overdue' && severity === 'error'),
    );
    assert.deepEqual(model.alerts, []);
    assert.ok(model.questions.some((one) => /result of specimen A.*What was done\?$/.test(one)));
  });

  it('says days from its own date only, which it bears', () => {
    for (const today of ['2026-03-20', '2026-06-01']) {
      const model = modelOf(late, { today });
      assert.equal(model.asOf, today);
      for (const form of everyForm(late, { today })) assert.ok(form.includes(`As of: ${today}`));
    }
  });
});

describe('what is open in a chart', () => {
  const open = note('anesthetic: {agent: lidocaine, concentration: 1%, volume: 90 mL}\nmethod: shave');

  it('is asked as a question', () => {
    const { questions, alerts } = modelOf(open);
    assert.ok(questions.length > 1);
    for (const one of [...questions]) assert.match(one, /\?$/);
    assert.match(alerts.join(), /How was this settled\?/);
  });

  it('is without talk of the tool: no codes, no keys, no severities, no lines', () => {
    for (const write of [
      summaryFormats.text.write,
      summaryFormats.markdown.write,
      summaryFormats.html.write,
    ]) {
      const text = write(modelOf(open)).replace(/\\(.)/g, '$1');
      assert.doesNotMatch(text, /`|\[\w[\w-]*\/[\w-]+\]|\b(?:error|warning|information), row|Write |finding/);
    }
  });

  it('makes a question without backticks of every message that there is', () => {
    for (const { code, messages } of catalogue)
      for (const form of Object.keys(messages)) {
        if (!/^[“A-Z{`]/.test(messages[form] ?? '')) continue;
        const question = questionOf({ code, form, args: {} });
        assert.match(question, /^[^`]+\?$/, `${code} ${form}`);
        assert.ok(messageOf({ code, form, args: {} }) !== question);
      }
  });
});

describe('grammar of a chart', () => {
  it('ends a sentence with one point, also after a name that ends in one', () => {
    const out = note(
      'method: punch\nsize: 4 mm\nclosure: {material: nylon, size: 4-0, count: 2}\nsutures-out: {on: 2026-03-13, by: N.B.}',
      {
        rest: 'events:\n  - {on: 2026-03-03, kind: bleeding, action: pressed, outcome: stopped, by: K.O.}\nsigned: {by: K.O.}\n',
      },
    );
    const model = modelOf(out);
    assert.ok(
      model.next.some((row) => row.endsWith('by N.B.')),
      model.next.join(),
    );
    assert.ok(model.afterwards.some((row) => row.endsWith('by K.O.')));
    for (const form of everyForm(out)) assert.doesNotMatch(form, /\w\.\.(?!\.)/);
  });

  it('counts one, two and none as people do', () => {
    const layers = (count: number): string =>
      paragraph(
        modelOf(note(`method: punch\nclosure: {material: nylon, size: 4-0, count: ${count}}`)).procedures[0]
          ?.facts ?? [],
      );
    assert.match(layers(1), /4-0 nylon, 1 stitch\./);
    assert.match(layers(2), /4-0 nylon, 2 stitches\./);
    for (const row of sectionsOf(modelOf(note('method: shave'))).flatMap(({ rows }) => rows))
      assert.doesNotMatch(row, /\b1 (?:days|stitches|notes|errors|results)\b|\b0 \w+/);
  });
});

describe('the practice file in a chart', () => {
  it('is named without the path of a machine', () => {
    for (const path of ['/home/somebody/notes/practice.wheal.yaml', 'C:\\notes\\practice.wheal.yaml'])
      for (const form of everyForm(note('method: shave'), { path })) {
        assert.match(form, /Practice file: practice\.wheal\.yaml\./);
        assert.doesNotMatch(form, /home|C:/);
      }
    assert.deepEqual(modelOf(note('method: shave'), { path: 'samples/practice.wheal.yaml' }).practice, [
      'Practice file: samples/practice.wheal.yaml.',
    ]);
  });
});

describe('micrograms', () => {
  it('are mcg, since a µ is misread', () => {
    const text = given('agent: lidocaine, concentration: 1%, epinephrine: 10 µg/mL, volume: 1.5 mL');
    for (const form of everyForm(text)) {
      assert.match(form, /Epinephrine: 15 mcg\./);
      assert.doesNotMatch(form, /[µμ]|\bug\b/);
    }
    for (const { code, messages } of catalogue)
      for (const message of Object.values(messages)) assert.doesNotMatch(message, /[µμ]g/, code);
  });
});
