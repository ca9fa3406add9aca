import assert from 'node:assert/strict';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { noteIndex, practiceIndex, readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import type { Completion } from '../../../src/service/completion/completion.ts';
import { completionsAt } from '../../../src/service/completion/completions.ts';
import { sampleTables } from '../notes.ts';

const writing = { tables: referenceTables, today: '2026-03-02', shapes: noteIndex, root: 'note' };

function offered(marked: string): { text: string; all: readonly Completion[] } {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  return { text, all: completionsAt(text, offset, writing) };
}

/** The note after the completion with a label was accepted at the mark `|`. */
function accepted(marked: string, label: string): string {
  const { text, all } = offered(marked);
  const item = all.find((one) => one.label === label);
  assert.ok(item !== undefined, `${label} is not offered: ${all.map((one) => one.label).join(', ')}`);
  return applyEdits(text, [{ start: item.start, end: item.end, text: item.insert }]);
}

const labels = (marked: string): string[] => offered(marked).all.map(({ label }) => label);

describe('completions', () => {
  it('offer in an empty file what a note needs first', () => {
    const { all } = offered('|');
    const sorted = [...all].sort((a, b) => (a.sort < b.sort ? -1 : 1)).map(({ label }) => label);
    assert.deepEqual(sorted.slice(0, 3), ['visit', 'patient', 'procedures']);
  });

  it('leave out keys that are there, in any accepted spelling', () => {
    assert.ok(!labels('patient:\n  dob: 1961-08-09\n  |').includes('born'));
    assert.ok(labels('patient:\n  dob: 1961-08-09\n  |').includes('weight'));
  });

  it('write keys, their colon and the first row of a map with the right indentation', () => {
    assert.equal(accepted('|', 'visit'), 'visit: ');
    assert.equal(accepted('visit: 2026-03-02\npat|', 'patient'), 'visit: 2026-03-02\npatient:\n  ');
    assert.equal(accepted('proc|', 'procedures'), 'procedures:\n  - ');
    assert.equal(
      accepted('procedures:\n  - site: nose\n    me|', 'method'),
      'procedures:\n  - site: nose\n    method: ',
    );
    assert.equal(
      accepted('procedures:\n- site: nose\n  me|', 'method'),
      'procedures:\n- site: nose\n  method: ',
    );
    assert.equal(
      accepted('procedures:\n  - site: nose\n    an|', 'anesthetic'),
      'procedures:\n  - site: nose\n    anesthetic:\n      - ',
    );
  });

  it('open a part as the note does: indented by four, or with the dashes below their key', () => {
    const four = 'patient:\n    id: C-1\n';
    assert.equal(accepted(`${four}proc|`, 'procedures'), `${four}procedures:\n    - `);
    assert.equal(accepted(`procedures:\n    - site: nose\npat|`, 'patient').split('\n').at(-1), '    ');
    assert.equal(
      accepted(`${four}procedures:\n    - site: nose\n      an|`, 'anesthetic'),
      `${four}procedures:\n    - site: nose\n      anesthetic:\n          - `,
    );
    const compact = 'patient:\n  id: C-1\nprocedures:\n- site: nose\n';
    assert.equal(accepted(`${compact}  an|`, 'anesthetic'), `${compact}  anesthetic:\n  - `);
    assert.equal(accepted(`${compact}after|`, 'aftercare'), `${compact}aftercare:\n  `);
    // Lines between, and comments, tell nothing.
    const apart = 'patient: # told\n\n# here\n    id: C-1\n';
    assert.equal(accepted(`${apart}proc|`, 'procedures'), `${apart}procedures:\n    - `);
  });

  it('offer in a gap what they offer where nothing is typed, and replace the gap', () => {
    const note = 'visit: 2026-03-02\nprocedures:\n  - site: nose\n    method: ';
    assert.deepEqual(labels(`${note}??|`), labels(`${note}|`));
    assert.equal(accepted(`${note}??|`, 'punch'), `${note}punch`);
    // An editor leaves out what does not hold the letters that are there.
    for (const { filter } of offered(`${note}??|`).all) assert.match(filter, /^\?\? /);
  });

  it('tell beside the unit of a volume what the method usually takes, and propose no number', () => {
    const volume = (typed: string, method = 'saucerization'): string =>
      `procedures:\n  - site: nose\n    method: ${method}\n    anesthetic: {agent: lidocaine, volume: ${typed}|}\n`;
    const help = 'deep shave: 1 to 3 mL is usual (common practice, no source)';
    for (const typed of ['', '4', '0.3'])
      assert.deepEqual(
        offered(volume(typed)).all.map(({ label, detail }) => [label, detail]),
        [[`${typed} mL`.trim(), help]],
      );
    const [empty] = offered(volume('')).all;
    assert.ok(empty !== undefined);
    assert.deepEqual([empty.insert, empty.caretBack, empty.whole, empty.again], [' mL', 3, false, false]);
    assert.deepEqual(labels(volume('', 'cryotherapy')), []);
    assert.deepEqual(labels(volume('2', 'cryotherapy')), ['2 mL']);
  });

  it('propose no date of birth', () => {
    assert.deepEqual(labels('visit: 2026-03-02\npatient:\n  born: |'), []);
  });

  it('say which value is whole, so that a snippet can go on: one of a list is not, nor a key', () => {
    const wholes = (marked: string): readonly boolean[] => [
      ...new Set(offered(marked).all.map(({ whole }) => whole)),
    ];
    assert.deepEqual(wholes('procedures:\n  - method: |'), [true]);
    assert.deepEqual(wholes('procedures:\n  - dressing: [|'), [false]);
    assert.deepEqual(wholes('procedures:\n  - dressing: [gauze, |'), [false]);
    assert.deepEqual(wholes('pat|'), [false]);
  });

  it('put a row with the wrong indentation right', () => {
    assert.equal(accepted('consent: written\n    sc|', 'scribe'), 'consent: written\nscribe: ');
    assert.equal(
      accepted('procedures:\n  - site: nose\n      me|', 'method'),
      'procedures:\n  - site: nose\n    method: ',
    );
  });

  it('begin a list item with its dash', () => {
    assert.equal(accepted('procedures:\n  |', 'site'), 'procedures:\n  - site: ');
    assert.equal(accepted('procedures:\n  - |', 'site'), 'procedures:\n  - site: ');
  });

  it('open no list of values behind a key, where one more key would write what nobody said', () => {
    const again = offered('|')
      .all.filter((one) => one.again)
      .map(({ label }) => label);
    assert.ok(again.includes('patient') && again.includes('procedures'));
    for (const fact of ['consent', 'time-out', 'clinician', 'visit']) assert.ok(!again.includes(fact), fact);
  });

  it('write no second colon', () => {
    assert.equal(accepted('con|: written', 'consent'), 'consent: written');
    assert.equal(accepted('patient: {w|eight: 62 kg}', 'weighed'), 'patient: {weighed: 62 kg}');
  });

  it('offer the words of a key', () => {
    assert.ok(labels('procedures:\n  - method: |').includes('punch'));
    assert.equal(accepted('procedures:\n  - method: pu|', 'punch'), 'procedures:\n  - method: punch');
    assert.equal(accepted('consent:|', 'written'), 'consent: written');
  });

  it('offer sites with the side where one must be said', () => {
    const all = labels('procedures:\n  - site: |');
    assert.ok(
      all.includes('left upper back') && all.includes('right upper back') && !all.includes('upper back'),
    );
  });

  it('offer units behind a number, and no number of their own', () => {
    assert.deepEqual(labels('patient: {weight: 62|}'), ['62 kg', '62 lb']);
    assert.deepEqual(labels('patient: {weight: |}'), []);
  });

  it('quote what a comma would cut inside brackets', () => {
    const note = 'procedures:\n  - anesthetic: [{agent: lidocaine, epinephrine: |}]';
    assert.match(accepted(note, '1:100,000'), /epinephrine: "1:100,000"}/);
  });

  it('know today and the day of the visit', () => {
    assert.deepEqual(labels('visit: |'), ['2026-03-02']);
    assert.deepEqual(labels('visit: 2026-02-27\nevents:\n  - on: |'), ['2026-03-02', '2026-02-27']);
  });

  const withStock = { ...writing, tables: sampleTables };
  const at = (marked: string, given = withStock): readonly Completion[] => {
    const offset = marked.indexOf('|');
    return completionsAt(marked.slice(0, offset) + marked.slice(offset + 1), offset, given);
  };
  const texts = (marked: string, given = withStock): string[] => at(marked, given).map(({ label }) => label);

  it('offer the products in stock, and whole injections with them but for the volume', () => {
    assert.deepEqual(texts('procedures:\n  - anesthetic: {product: |}'), ['lido 1% epi', 'lido 1% plain']);
    const begun = 'procedures:\n  - site: nose\n    anesthetic:\n      - |';
    const [first] = at(begun);
    assert.equal(first?.label, 'lido 1% epi');
    assert.equal(first.insert, 'product: lido 1% epi\n        volume: ');
    assert.equal(
      at('procedures:\n  - site: nose\n    anesthetic: |')[0]?.insert,
      '\n      - product: lido 1% epi\n        volume: ',
    );
    assert.equal(
      at('procedures:\n- site: nose\n  anesthetic: |')[0]?.insert,
      '\n  - product: lido 1% epi\n    volume: ',
    );
    assert.equal(at('procedures:\n  - anesthetic: [{|}]')[0]?.insert, 'product: lido 1% epi, volume: ');
    assert.equal(at('procedures:\n  - anesthetic: [{agent: lidocaine, |}]')[0]?.kind, 'key');
  });

  it('offer the strengths that the agent of the same injection is made in', () => {
    const note = (agent: string): string =>
      `procedures:\n  - anesthetic:\n      - agent: ${agent}\n        concentration: |\n        volume: 1 mL\n`;
    assert.deepEqual(texts(note('bupivacaine')), ['0.25%', '0.5%', '0.75%']);
    assert.deepEqual(texts(note('nothing known')), []);
  });

  it('leave out what holds an allergen of the patient', () => {
    const note = (allergies: string): string =>
      `patient: {allergies: ${allergies}}\nprocedures:\n  - site: left cheek\n    dressing: [gauze, |]\n`;
    assert.ok(texts(note('none')).includes('bacitracin'));
    assert.ok(!texts(note('[bacitracin]')).includes('bacitracin'));
    assert.ok(texts(note('[bacitracin]')).includes('petrolatum'));
  });

  it('put dressings last that hold badly on the site', () => {
    const note = 'procedures:\n  - site: vertex\n    dressing: |\n';
    assert.equal(at(note).at(-1)?.detail, 'holds badly on this site');
    assert.ok(at(note.replace('vertex', 'left cheek')).every(({ detail }) => detail === ''));
  });

  it('offer for taking stitches out the working days of the window alone', () => {
    const note = `visit: 2026-03-02\nprocedures:\n  - site: left cheek\n    method: punch\n    closure: {material: nylon}\n    sutures-due: |\n`;
    const days = at(note);
    assert.ok(days.length > 0);
    for (const { label, detail } of days) {
      const weekday = new Date(`${label}T12:00:00Z`).getUTCDay();
      assert.ok(weekday >= 1 && weekday <= 5, label);
      assert.match(detail, /^(Mon|Tues|Wednes|Thurs|Fri)day, \d+ days after the visit$/);
    }
    assert.deepEqual(texts(note.replace('nylon', 'polyglactin')), []);
    assert.deepEqual(texts(note.replace('left cheek', 'nowhere known')), []);
  });

  it('offer the codes of what is open in this note', () => {
    const note = `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left cheek\n    method: punch\n    accepted: [{check: |}]\n`;
    assert.ok(texts(note).includes('closure/missing'));
    assert.ok(!texts(note).includes('hemostasis/fire'));
    assert.ok(!texts(note).some((code) => code.startsWith('shape/')));
  });

  it('offer labels of this note and the people in it', () => {
    const note =
      'clinician: K.O.\nprocedures:\n  - site: nose\n    specimen: {label: A}\n  - site: nose\n    same-as: |\n';
    assert.deepEqual(texts(note), ['A']);
    assert.deepEqual(texts(`clinician: K.O.\naccepted: [{by: |}]`), ['K.O.']);
  });

  it('offer today and the day of the visit where a patient was told, the answers where one is asked', () => {
    assert.deepEqual(
      texts('visit: 2026-02-27\nprocedures:\n  - specimen:\n      results:\n        - told: |'),
      ['2026-03-02', '2026-02-27'],
    );
    assert.deepEqual(texts('patient:\n  allergies: |').slice(0, 2), ['none', 'unknown']);
    assert.equal(texts('patient:\n  implants: |')[0], 'none');
    assert.equal(texts('procedures:\n  - closure: |')[0], 'none');
  });

  it('write the British spelling where the practice wants it', () => {
    const tables = { ...sampleTables, practice: { ...sampleTables.practice, spelling: 'british' as const } };
    const british = { ...writing, tables };
    assert.ok(texts('procedures:\n  - site: nose\n    |', british).includes('haemostasis'));
    assert.ok(texts('procedures:\n  - anesthetic: {|}', british).includes('adrenaline'));
    assert.ok(texts('procedures:\n  - hemostasis: |', british).includes('aluminium chloride'));
    assert.ok(texts('procedures:\n  - hemostasis: |').includes('aluminum chloride'));
  });

  it('offer in a practice file what belongs there', () => {
    const practice = { ...withStock, shapes: practiceIndex, root: 'practice' };
    assert.deepEqual(texts('spelling: |', practice), ['american', 'british']);
    assert.deepEqual(texts('stock:\n  - product: |', practice), []);
  });

  it('leave every row that was good as it was, and break nothing, wherever they are accepted', () => {
    const text =
      'visit: 2026-03-02\npatient: {id: C-1, allergies: [latex]}\nprocedures:\n  - site: left upper back # here\n    method: punch\n    specimen:\n      - label: A\n\n';
    for (let offset = 0; offset <= text.length; offset++) {
      const all = completionsAt(text, offset, writing);
      // Values of one place differ in their words alone: the first and the last mean them.
      for (const item of all.filter(
        ({ kind }, index) => kind === 'key' || index === 0 || index === all.length - 1,
      )) {
        assert.ok(item.start <= offset && offset <= item.end, `${item.label} at ${offset}`);
        const result = applyEdits(text, [{ start: item.start, end: item.end, text: item.insert }]);
        const syntax = readNote(result).problems.filter(({ code }) => code === 'yaml/syntax');
        assert.deepEqual(syntax, [], `${item.label} at ${offset}:\n${result}`);
      }
    }
  });
});
