import assert from 'node:assert/strict';
import fc from 'fast-check';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { readNote } from '../../../src/note/read.ts';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { analyse, fixAll, fixesAt, type OfferedFix } from '../../../src/service/index.ts';
import { sampleTables } from '../notes.ts';
import { times } from '../../share.ts';

const today = '2026-04-30';

const fixesOf = (text: string, day = today): readonly OfferedFix[] =>
  fixesAt(analyse(text, { tables: sampleTables, today: day }), 0, text.length);

const isRecord = ({ kind, does }: OfferedFix): boolean => kind === 'record' && does === 'mend';

/** What corrects the record for one check, without the words that all such titles begin with. */
const corrections = (code: string, text: string, day = today): readonly string[] =>
  fixesOf(text, day)
    .filter((one) => isRecord(one) && one.code === code)
    .map(({ title }) => title.replace(/^correct the record: /, ''));

function corrected(code: string, text: string, title: string, day = today): string {
  const fix = fixesOf(text, day).find(
    (one) => one.code === code && one.title === `correct the record: ${title}`,
  );
  assert.ok(fix !== undefined, `${title} is not offered`);
  return applyEdits(text, fix.edits);
}

const patient = 'patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: none, implants: none}';

/** A note of one procedure with these lines beside site and method. */
const note = (...rows: readonly string[]): string =>
  `visit: 2026-03-02\n${patient}\nprocedures:\n  - site: left upper back\n    method: punch\n${rows
    .map((row) => `    ${row}\n`)
    .join('')}`;

const injected = (...rows: readonly string[]): string =>
  note('anesthetic:', ...rows.map((row, at) => `  ${at === 0 ? '- ' : '  '}${row}`));

const lidocaine = (volume: string): string =>
  injected('agent: lidocaine', 'concentration: 1%', `volume: ${volume} # drawn up`);

describe('correcting the record', () => {
  it('leaves open a volume that is over the limit by itself, or reads it with its point moved', () => {
    const text = lidocaine('35 mL');
    assert.deepEqual(corrections('dose/over-limit', text), ['volume as ??', '3.5 mL']);
    assert.equal(corrected('dose/over-limit', text, '3.5 mL'), text.replace('35 mL', '3.5 mL'));
    assert.equal(corrected('dose/over-limit', text, 'volume as ??'), text.replace('35 mL', '??'));
  });

  it('never has the largest permitted volume ready, nor any other that only fits', () => {
    // 62 kg bear 279 mg: 27.9 mL.
    for (const volume of ['28 mL', '35 mL', '27.95 mL', '60 mL'])
      for (const title of corrections('dose/over-limit', lidocaine(volume)))
        assert.doesNotMatch(title, /27\.9|^27 mL/);
    assert.deepEqual(corrections('dose/over-limit', lidocaine('35.5 mL')), ['volume as ??']);
  });

  it('has only the tenth of a whole number ready, for any volume and any weight', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 0, max: 2 }),
        fc.integer({ min: 3, max: 140 }),
        (digits, decimals, kg) => {
          const typed = String(digits / 10 ** decimals);
          const titles = corrections(
            'dose/over-limit',
            lidocaine(`${typed} mL`).replace('62 kg', `${kg} kg`),
          );
          for (const title of titles.filter((one) => one !== 'volume as ??')) {
            assert.match(typed, /^\d+$/);
            assert.equal(title, `${Number(typed) / 10} mL`);
          }
        },
      ),
      { numRuns: times(60) },
    );
  });

  it('moves no point of a volume that is over the limit only together with others', () => {
    const sum = `${lidocaine('20 mL')}      - {agent: lidocaine, concentration: 1%, volume: 12 mL}\n`;
    assert.deepEqual(corrections('dose/over-limit', sum), ['volume as ??']);
  });

  it('leaves a volume open though the rest is near the limit then', () => {
    const sum = `${lidocaine('25 mL')}      - {agent: lidocaine, concentration: 1%, volume: 12 mL}\n`;
    const after = corrected('dose/over-limit', sum, 'volume as ??');
    assert.match(after, /volume: \?\?\}/);
    const found = analyse(after, { tables: sampleTables, today }).judgement.findings.map(({ code }) => code);
    assert.ok(found.includes('dose/near-limit') && !found.includes('dose/over-limit'));
  });

  it('moves no point where the dose would still be over the limit', () => {
    assert.deepEqual(corrections('dose/over-limit', lidocaine('400 mL')), ['volume as ??']);
  });

  it('reads a dictated line again too, but leaves no gap in it', () => {
    const text = note('anesthetic: 35 mL lidocaine 1%');
    assert.deepEqual(corrections('dose/over-limit', text), ['3.5 mL']);
    assert.match(corrected('dose/over-limit', text, '3.5 mL'), /anesthetic: 3\.5 mL lidocaine 1%/);
  });

  it('moves the point of what is out of all proportion by one place', () => {
    assert.deepEqual(corrections('quantity/implausible', lidocaine('0.005 mL')), ['volume as ??', '0.05 mL']);
    const heavy = lidocaine('1 mL').replace('62 kg', '620 kg');
    assert.deepEqual(corrections('quantity/implausible', heavy), ['weight as ??', '62 kg']);
  });

  it('reads mg as mL where such a volume is usual', () => {
    assert.deepEqual(corrections('quantity/wrong-unit', lidocaine('1.5 mg')), ['volume as ??', '1.5 mL']);
    assert.match(corrected('quantity/wrong-unit', lidocaine('1.5 mg'), '1.5 mL'), /volume: 1\.5 mL #/);
    assert.deepEqual(corrections('quantity/wrong-unit', lidocaine('20 mg')), ['volume as ??']);
  });

  it('adds the zero that is missing from a ratio, in quotes where a comma would split it', () => {
    const block = injected('agent: lidocaine', 'concentration: 1%', 'epinephrine: 1:10,000', 'volume: 1 mL');
    assert.match(
      corrected('dose/epinephrine-too-strong', block, '1:100,000'),
      /^ {8}epinephrine: 1:100,000$/m,
    );
    const flow = note(
      'anesthetic: {agent: lidocaine, concentration: 1%, epinephrine: 1:10000, volume: 1 mL}',
    );
    assert.match(
      corrected('dose/epinephrine-too-strong', flow, '1:100,000'),
      /epinephrine: "1:100,000", volume/,
    );
    assert.deepEqual(corrections('dose/epinephrine-too-strong', block.replace('1:10,000', '1:1000')), [
      'epinephrine as ??',
    ]);
  });

  const values: readonly (readonly [code: string, key: string, text: string])[] = [
    ['allergy/agent', 'agent', lidocaine('1 mL').replace('allergies: none', 'allergies: [lidocaine]')],
    [
      'allergy/dressing',
      'dressing',
      note('dressing: [bacitracin, gauze]').replace('allergies: none', 'allergies: [bacitracin]'),
    ],
    [
      'allergy/closure',
      'closure',
      note('closure: tissue glue').replace('allergies: none', 'allergies: [cyanoacrylate]'),
    ],
    [
      'device/electrosurgery',
      'hemostasis',
      note('hemostasis: electrosurgery').replace('implants: none', 'implants: [ICD]'),
    ],
    [
      'hemostasis/fire',
      'hemostasis',
      note('preparation: isopropyl alcohol', 'dry: no', 'hemostasis: electrosurgery'),
    ],
    ['dressing/ointment-on-glue', 'dressing', note('closure: tissue glue', 'dressing: petrolatum')],
    [
      'specimen/wrong-medium',
      'medium',
      note('specimen: {label: A, medium: Michel, tests: [routine histology]}'),
    ],
    ['closure/odd-suture-size', 'size', note('closure: {material: nylon, size: 7-0}')],
  ];
  for (const [code, key, text] of values)
    it(`leaves open what was used, and proposes nothing: ${code}`, () => {
      assert.deepEqual(corrections(code, text), [`${key} as ??`]);
      const offered = fixesOf(text).filter((one) => one.code === code);
      assert.equal(offered.at(-1)?.does, 'accept', 'beside it stands accepting');
      const after = corrected(code, text, `${key} as ??`);
      assert.match(after, /\?\?/);
      assert.equal(after.split('\n').length, text.split('\n').length);
    });

  it('leaves no word out that stands beside the one in doubt', () => {
    const text = note('dressing: bacitracin and gauze').replace('allergies: none', 'allergies: [bacitracin]');
    assert.ok(fixesOf(text).some(({ code, does }) => code === 'allergy/dressing' && does === 'accept'));
    assert.deepEqual(corrections('allergy/dressing', text), []);
  });

  it('changes nothing where a medium destroys what the test looks for, but says what to do now', () => {
    const text = note('specimen: {label: A, medium: formalin, tests: [direct immunofluorescence]}');
    assert.deepEqual(corrections('specimen/wrong-medium', text), []);
    const here = fixesOf(text).filter(({ code }) => code === 'specimen/wrong-medium');
    assert.deepEqual(
      here.map(({ does, sure }) => [does, sure]),
      [
        ['plan', false],
        ['accept', false],
      ],
    );
    const plan = here.find(({ does }) => does === 'plan');
    assert.equal(
      plan?.title,
      'What to do now: tell the laboratory, take another specimen (adds an event to fill in)',
    );
    const after = applyEdits(text, plan.edits);
    assert.equal(
      after,
      `${text}events:\n  - on: ??\n    kind: call\n    procedure: A\n    action: ??\n    outcome: ??\n`,
    );
    const again = fixesOf(after).filter(({ code }) => code === 'specimen/wrong-medium');
    assert.deepEqual(
      again.map(({ does }) => does),
      ['accept'],
      'the error stays, and the event is not asked for twice',
    );
  });

  it('names the procedure in that event where the label tells nothing, and joins the events that are there', () => {
    const text = `${note('specimen: {medium: formalin, tests: [bacterial culture]}')}events: [{on: 2026-03-03, kind: call}]\n`;
    const plan = fixesOf(text).find(({ does }) => does === 'plan');
    assert.match(
      applyEdits(text, plan?.edits ?? []),
      /events: \[\{on: 2026-03-03, kind: call\}, \{on: \?\?, kind: call, procedure: 1, action: \?\?, outcome: \?\?\}\]\n$/,
    );
  });

  describe('in dates', () => {
    const sent = (day: string): string =>
      note(`specimen: {label: A, medium: formalin, tests: [routine histology], sent: ${day}}`);

    it('reads a past day again in another year, or with day and month swapped, and invents none', () => {
      assert.deepEqual(corrections('record/dates-out-of-order', sent('2025-03-02')), [
        'sent as ??',
        '2026-03-02',
      ]);
      assert.deepEqual(corrections('record/dates-out-of-order', sent('2026-02-03')), [
        'sent as ??',
        '2026-03-02',
      ]);
      assert.deepEqual(corrections('record/dates-out-of-order', sent('2026-02-27')), ['sent as ??']);
      assert.deepEqual(corrections('record/date-in-future', sent('2026-05-04')), [
        'sent as ??',
        '2026-04-05',
      ]);
      assert.deepEqual(corrections('quantity/no-such-date', sent('2026-14-03')), [
        'sent as ??',
        '2026-03-14',
      ]);
    });

    it('keeps the time behind a day', () => {
      const text = sent('2026-03-02').replace('visit: 2026-03-02', 'visit: 2062-03-02 10:05');
      assert.match(
        corrected('record/date-in-future', text, '2026-03-02 10:05'),
        /^visit: 2026-03-02 10:05$/m,
      );
    });

    it('reads a birth after the visit in the century before', () => {
      const text = note().replace('1961', '2061');
      assert.deepEqual(corrections('record/born-after-visit', text), ['born as ??', '1961-08-09']);
    });

    const stitched = (day: string, key = 'sutures-due'): string =>
      note('size: 4 mm', 'closure: {material: nylon, size: 4-0, count: 2}', `${key}: ${day}`);

    it('plans stitches for the nearest working days of their window', () => {
      // On the back 10 to 14 days: the 12th to the 16th of March; the 14th is a Saturday.
      for (const [code, day, plan] of [
        ['closure/removal-early', '2026-03-05', '2026-03-12, Thursday'],
        ['closure/removal-late', '2026-04-20', '2026-03-16, Monday'],
        ['closure/removal-before-visit', '2026-02-20', '2026-03-12, Thursday'],
        ['closure/removal-on-closed-day', '2026-03-14', '2026-03-16, Monday'],
        ['closure/removal-on-closed-day', '2026-03-14', '2026-03-13, Friday'],
      ] as const)
        assert.ok(corrections(code, stitched(day), '2026-03-02').includes(plan), `${code}: ${day}`);
      const titles = corrections('closure/removal-late', stitched('2027-03-12'), '2026-03-02');
      assert.equal(titles[1], '2026-03-12', 'what was typed, in the year that was meant, comes before');
    });

    it('has no day ready for stitches that came out', () => {
      const titles = corrections('closure/removal-early', stitched('2026-03-05', 'sutures-out'));
      assert.deepEqual(titles, ['sutures-out as ??']);
    });
  });

  it('is never preferred, never part of "fix all", and its titles say so', () => {
    for (const text of [lidocaine('35 mL'), ...values.map(([, , one]) => one)]) {
      const record = fixesOf(text).filter(isRecord);
      assert.ok(record.length > 0);
      for (const { sure, title } of record) assert.ok(!sure && title.startsWith('correct the record: '));
      const analysis = analyse(text, { tables: sampleTables, today });
      assert.deepEqual(fixAll(analysis), []);
    }
  });

  it('comes after what mends the spelling, before accepting and what fills gaps', () => {
    const text = injected('agent: lidocaine', 'concentration: 1%', 'volume: 35.0 ml # all');
    const at = text.indexOf('35.0');
    const here = fixesAt(analyse(text, { tables: sampleTables, today }), at, at);
    const kinds = here.map(({ does, kind, sure }) =>
      does === 'mend' ? `${kind}${sure ? ' sure' : ''}` : does,
    );
    assert.deepEqual(
      kinds,
      [...kinds].sort((a, b) => order.indexOf(a) - order.indexOf(b)),
    );
    assert.deepEqual([kinds[0], kinds[1]], ['spelling sure', 'record']);
    assert.equal(here.find(({ does }) => does === 'accept')?.code, 'dose/over-limit', 'the gravest first');
  });

  const order = ['spelling sure', 'spelling', 'plan', 'record', 'accept', 'fill'];

  it('comes no more once the note is signed, while accepting and what to do now still do', () => {
    for (const text of [
      lidocaine('35 mL'),
      note('specimen: {label: A, medium: formalin, tests: [direct immunofluorescence], sent: 2026-02-03}'),
    ]) {
      assert.ok(fixesOf(text).some(isRecord));
      const edit = signatureEdit(readNote(text), 'K.O.', '2026-03-02 12:00');
      assert.ok(typeof edit !== 'string');
      const signed = fixesOf(applyEdits(text, [edit]));
      assert.deepEqual(signed.filter(isRecord), []);
      assert.ok(signed.some(({ does }) => does === 'accept'));
      assert.equal(
        signed.some(({ does }) => does === 'plan'),
        text.includes('direct immunofluorescence'),
      );
    }
  });
});
