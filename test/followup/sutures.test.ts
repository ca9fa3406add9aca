import assert from 'node:assert/strict';
import fc from 'fast-check';
import { addDays } from '../../src/note/values/days.ts';
import {
  sutureDay,
  sutureRemoval,
  type SutureRemoval,
  type SutureWindow,
} from '../../src/followup/sutures.ts';
import { isClosed } from '../../src/followup/working-days.ts';
import { readNote } from '../../src/note/read.ts';
import { readSite } from '../../src/note/words/site.ts';
import { weekend, type ClosedDays } from '../../src/practice/closed-days.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';
import { citation } from '../../src/reference/sources/index.ts';

interface Case {
  readonly closure?: string;
  readonly patient?: string;
  readonly extra?: string;
  readonly tables?: Tables;
}

const nylon = '{material: nylon, size: 4-0, technique: simple interrupted, count: 2}';

function removal(
  site: string,
  { closure = nylon, patient = 'id: C-1, born: 1961-08-09', extra = '', tables = referenceTables }: Case = {},
): SutureRemoval {
  const { value: note } = readNote(
    `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: ${site}\n    method: punch\n${
      closure === '' ? '' : `    closure: ${closure}\n`
    }${extra}`,
  );
  const procedure = note?.procedures?.[0];
  assert.ok(note && procedure);
  return sutureRemoval(note, procedure, readSite(site, tables.sites), tables);
}

function window(site: string, given: Case = {}): SutureWindow {
  const found = removal(site, given);
  assert.ok(found.kind === 'window', `${site}: ${found.kind}`);
  return found;
}

const days = (site: string, given: Case = {}): readonly number[] => {
  const { from, to } = window(site, given).days;
  return [from, to];
};

describe('suture windows', () => {
  it('give the dates of the note format: left upper back, 2026-03-12 to 2026-03-16', () => {
    const { from, to, source } = window('left upper back');
    assert.deepEqual([from, to, source], ['2026-03-12', '2026-03-16', 'punch-leaflet']);
  });

  it('are those of the page on vulval biopsies where no table has a row', () => {
    // DermNet, vulval biopsy: nylon out after 5-7 days. A patient page on labial stitches: 7-10 days.
    for (const site of ['vulva', 'left labium majus', 'right labium minus', 'posterior fourchette']) {
      assert.deepEqual([site, days(site)], [site, [5, 7]]);
      const { widest, source } = window(site);
      assert.deepEqual([widest.from, widest.to, source], [5, 10, 'vulval-biopsy-page']);
    }
    const closure = '{material: polyglactin, size: 4-0, count: 1}';
    assert.equal(removal('left labium majus', { closure }).kind, 'none');
  });

  it('propose the days of the leaflet on punch biopsies where it names the site', () => {
    // Practice leaflet on punch biopsy: face 5-7, scalp 7-10, trunk 10-14, arms and legs 10-14.
    for (const [site, from, to] of [
      ['left cheek', 5, 7],
      ['forehead', 5, 7],
      ['right nasal ala', 5, 7],
      ['chin', 5, 7],
      ['vertex of the scalp', 7, 10],
      ['left pectoral chest', 10, 14],
      ['right flank', 10, 14],
      ['left buttock', 10, 14],
      ['right upper arm', 10, 14],
      ['left dorsal forearm', 10, 14],
      ['right thigh', 10, 14],
    ] as const)
      assert.deepEqual([site, ...days(site)], [site, from, to]);
  });

  it('propose the days of the suture handbook for the sites that the leaflet does not name', () => {
    // Web suture handbook, adults: eyelid 3-5, lip 4-5, ear 4-5, hand 8-10, fingertip 10-12, joint extensor 10-14, joint
    // flexor 8-10, penis and scrotum 7-10. 5-Minute Clinical Consult: neck 5-7.
    for (const [site, from, to] of [
      ['left upper eyelid', 3, 5],
      ['lower lip', 4, 5],
      ['right helix', 4, 5],
      ['left lateral neck', 5, 7],
      ['left dorsal hand', 8, 10],
      ['right ring finger', 8, 10],
      ['left fingertip', 10, 12],
      ['right elbow', 10, 14],
      ['left knee', 10, 14],
      ['left antecubital fossa', 8, 10],
      ['right popliteal fossa', 10, 14],
      ['behind the left knee', 10, 14],
      ['scrotum', 7, 10],
    ] as const)
      assert.deepEqual([site, ...days(site)], [site, from, to]);
  });

  it('know the widest span of all sources', () => {
    // Union of eight published tables of suture removal, children included.
    for (const [site, from, to] of [
      ['left cheek', 3, 7],
      ['scalp', 5, 14],
      ['left neck', 3, 7],
      ['left chest', 6, 14],
      ['left upper back', 7, 14],
      ['left upper arm', 6, 14],
      ['left dorsal hand', 6, 14],
      ['left thigh', 6, 28],
      ['left knee', 8, 14],
    ] as const) {
      const { widest } = window(site);
      assert.deepEqual([site, widest.from, widest.to], [site, from, to]);
    }
    // Palms and soles 14-21: laceration table, from memory; foot 8-14 without it.
    assert.deepEqual(window('left sole').widest, { from: 8, to: 21 + 5 });
  });

  it('show where other sources differ', () => {
    const { steps } = window('left upper back');
    assert.match(steps[0]?.text ?? '', /upper back.*10 to 14 days/);
    assert.ok(steps.some(({ text, source }) => source === 'suture-chart' && text.includes('7 to 10 days')));
    for (const { source } of steps) if (source !== undefined) assert.notEqual(citation(source), '');
  });
});

describe('what lengthens a suture window', () => {
  // Suture handbook, short table: 10 days; 15 with one such factor; 20 with several.
  it('starts where the usual window ends, and holds the 15 and the 20 days of the handbook', () => {
    const one = days('left upper back', { patient: 'id: C-1, conditions: [diabetes]' });
    assert.deepEqual(one, [14, 19]);
    const several = days('left upper back', {
      patient: 'id: C-1, conditions: [type 2 diabetes], medications: [prednisone 10 mg]',
    });
    assert.deepEqual(several, [19, 24]);
    const three = days('left upper back', {
      patient: 'id: C-1, conditions: [diabetes, malnutrition], medications: [prednisone]',
    });
    assert.deepEqual(three, several, 'the handbook has no third step');
  });

  it('counts each thing once', () => {
    assert.deepEqual(
      days('left upper back', { patient: 'id: C-1, conditions: [diabetes, type 2 diabetes]' }),
      [14, 19],
    );
  });

  it('is a site below the knee', () => {
    // 5-Minute Clinical Consult: lower leg among what lengthens, leg 14-28; handbook: lower limb 15.
    assert.deepEqual(days('left shin'), [14, 19]);
    assert.deepEqual(days('left shin', { patient: 'id: C-1, conditions: [diabetes]' }), [19, 24]);
    assert.deepEqual(days('left thigh'), [10, 14]);
  });

  it('is old age, as far as it is known, and no surer than that', () => {
    assert.deepEqual(days('left upper back', { patient: 'id: C-1, born: 1946-03-02' }), [14, 19]);
    assert.deepEqual(days('left upper back', { patient: 'id: C-1, born: 1946-03-03' }), [10, 14]);
    assert.deepEqual(days('left upper back', { patient: 'id: C-1, age: 80 years' }), [14, 19]);
    assert.equal(window('left upper back', { patient: 'id: C-1, age: 80 years' }).mark, 'M');
    assert.equal(window('left upper back').mark, 'Q');
  });

  it('is nothing that is denied, past, or only on the skin', () => {
    for (const patient of [
      'id: C-1, conditions: [no diabetes]',
      'id: C-1, conditions: none',
      'id: C-1, medications: [prednisone eye drops]',
      'id: C-1, conditions: [history of malnutrition]',
      'id: C-1, medications: [??]',
    ])
      assert.deepEqual([patient, ...days('left upper back', { patient })], [patient, 10, 14]);
  });

  it('does not lengthen a window of the face, and says so', () => {
    // Emergency medicine text, closure removal: from 7 days on sutures leave tracks in the face.
    const { days: face, steps } = window('left cheek', { patient: 'id: C-1, conditions: [diabetes]' });
    assert.deepEqual(face, { from: 5, to: 7 });
    assert.ok(steps.some(({ text }) => text.includes('diabetes') && text.includes('does not lengthen')));
  });
});

describe('a practice of its own mind', () => {
  const own = (site: string, from: number, to: number): Tables => ({
    ...referenceTables,
    practiceWindows: [{ site, from, to }],
  });

  it('sets the window of a site, a region or a group', () => {
    assert.deepEqual(days('left upper back', { tables: own('upper back', 12, 16) }), [12, 16]);
    assert.deepEqual(days('left upper back', { tables: own('back', 11, 12) }), [11, 12]);
    assert.deepEqual(days('right helix', { tables: own('ear', 7, 9) }), [7, 9]);
    assert.deepEqual(days('left cheek', { tables: own('back', 11, 12) }), [5, 7]);
  });

  it('counts by its last row that fits', () => {
    const practiceWindows = [
      { site: 'back', from: 11, to: 12 },
      { site: 'upper back', from: 12, to: 16 },
    ];
    assert.deepEqual(days('left upper back', { tables: { ...referenceTables, practiceWindows } }), [12, 16]);
    assert.deepEqual(days('left lower back', { tables: { ...referenceTables, practiceWindows } }), [11, 12]);
  });

  it('widens what is in order, and is named as the source', () => {
    const { widest, source } = window('left upper back', { tables: own('back', 12, 16) });
    assert.deepEqual([widest.to, source], [16, 'practice-file']);
    assert.notEqual(citation(source), '');
  });

  it('can say when where no source does', () => {
    assert.deepEqual(removal('perineum'), { kind: 'unknown', why: 'no source' });
    assert.deepEqual(days('perineum', { tables: own('genital', 7, 10) }), [7, 10]);
  });
});

describe('stitches that need no date', () => {
  it('are those that are not there', () => {
    for (const closure of ['none', 'second intention', 'adhesive strips', 'tissue glue', ''])
      assert.deepEqual(
        [closure, removal('left upper back', { closure })],
        [closure, { kind: 'none', why: 'no stitches' }],
      );
  });

  it('are those that are absorbed', () => {
    // WikEM, Sutures: absorbable sutures of the skin have no removal row.
    for (const closure of [
      '{material: chromic gut, size: 5-0, count: 2}',
      '{material: polyglactin, layer: skin, count: 1}',
      '5-0 fast gut',
    ])
      assert.deepEqual(
        [closure, removal('left upper back', { closure })],
        [closure, { kind: 'none', why: 'absorbable' }],
      );
  });

  it('are not those that stay in the skin over a deep layer', () => {
    const closure =
      '[{material: polyglactin, size: 4-0, layer: deep}, {material: nylon, size: 5-0, layer: skin, count: 3}]';
    assert.deepEqual(days('left upper back', { closure }), [10, 14]);
    assert.deepEqual(
      removal('left upper back', { closure: '{material: polyglactin, size: 4-0, layer: deep}' }),
      { kind: 'none', why: 'no stitches' },
    );
  });

  it('are not those whose material nobody wrote down', () => {
    for (const closure of [
      'suture',
      'staples',
      '{size: 4-0, technique: simple interrupted, count: 1}',
      'nylon',
    ])
      assert.deepEqual([closure, ...days('left upper back', { closure })], [closure, 10, 14]);
    assert.deepEqual(
      days('left upper back', { closure: 'none', extra: '    hemostasis: [suture]\n' }),
      [10, 14],
    );
  });

  it('are not passed over where something is not yet known', () => {
    assert.deepEqual(removal('left upper back', { closure: '??' }), { kind: 'unknown', why: 'closure' });
    assert.deepEqual(removal('left uper bakc'), { kind: 'unknown', why: 'site' });
  });
});

describe('the day for suture removal', () => {
  it('is the first working day of the window', () => {
    assert.deepEqual(sutureDay({ from: '2026-03-12', to: '2026-03-16' }, weekend), {
      day: '2026-03-12',
      inside: true,
    });
    assert.deepEqual(sutureDay({ from: '2026-03-07', to: '2026-03-09' }, weekend), {
      day: '2026-03-09',
      inside: true,
    });
  });

  it('is said to lie outside where the practice is closed on each day of the window', () => {
    assert.deepEqual(sutureDay({ from: '2026-03-07', to: '2026-03-08' }, weekend), {
      day: '2026-03-09',
      inside: false,
    });
  });

  it('is never before the window and never a closed day', () => {
    const closed: ClosedDays = { weekdays: new Set([0, 5, 6]), dates: new Set(['2026-03-10', '2026-03-11']) };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 20 }), (start, length) => {
        const from = addDays('2026-01-01', start);
        const to = addDays(from, length);
        const { day, inside } = sutureDay({ from, to }, closed);
        assert.ok(day >= from && !isClosed(day, closed));
        assert.equal(inside, day <= to);
      }),
    );
  });
});
