import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';

const one = (site: string, more = ''): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n    method: punch\n${more}`;

describe('site/unknown', () => {
  it('flags words that name no body site', () => {
    flags('site/unknown', one('⟦somewhere on the left⟧'), { severity: 'warning' });
    flags('site/unknown', one('⟦constructor⟧'));
    flags('site/unknown', one('⟦2 cm below the left ear⟧'));
  });

  it('offers the nearest site as one key', () => {
    const [finding] = flags('site/unknown', one('⟦left upper bakc⟧'));
    assert.ok(finding && messageOf(finding).includes('left upper back'));
    assert.equal(fixed('site/unknown', one('left upper bakc'), 'left upper back'), one('left upper back'));
    assert.equal(fixed('site/unknown', one('"left sholder"'), 'shoulder'), one('"left shoulder"'));
  });

  it('shows only the beginning of a long text', () => {
    const [finding] = judgeBy('site/unknown', one(`x${'y'.repeat(400)}`));
    assert.ok(finding && messageOf(finding).length < 300);
  });

  it('is silent where the site is known, not yet known, or missing', () => {
    silent('site/unknown', one('left upper back'));
    silent('site/unknown', one('??'));
    silent('site/unknown', 'visit: 2026-03-02\nprocedures:\n  - method: punch\n');
  });
});

describe('site/side-missing', () => {
  it('flags a site of which there are two', () => {
    flags('site/side-missing', one('⟦cheek⟧'), { severity: 'warning' });
    flags('site/side-missing', one('⟦dorsum of 3rd finger⟧'));
    flags('site/side-missing', one('⟦cheek, 2 cm below left eye⟧'));
    const [finding] = flags('site/side-missing', one('⟦upper back⟧'));
    assert.match(finding ? messageOf(finding) : '', /midline/);
  });

  it('puts a misspelt side right, and fills in none', () => {
    assert.equal(fixed('site/side-missing', one('lfet cheek'), 'left cheek'), one('left cheek'));
    assert.throws(() => fixed('site/side-missing', one('cheek'), 'left'));
  });

  it('is silent where a side is said, or none is needed', () => {
    for (const site of [
      'left cheek',
      'cheek, R',
      'bilateral cheeks',
      'upper back, midline',
      'central upper back',
      'glabella',
      'forehead',
      'nasal tip',
      'scalp, vertex',
      'left cheek right',
      '??',
    ])
      silent('site/side-missing', one(site));
  });
});

describe('site/side-contradicts', () => {
  it('flags the second of two sides, and points at the first', () => {
    const [finding] = flags('site/side-contradicts', one('left cheek, ⟦right⟧'), { severity: 'error' });
    assert.equal(finding?.related.length, 1);
    flags('site/side-contradicts', one('left upper back, 4 cm ⟦right⟧ of midline'));
    flags('site/side-contradicts', one('bilateral ⟦left⟧ forearm'));
  });

  it('flags landmarks on the other side of the midline', () => {
    flags(
      'site/side-contradicts',
      one('left upper back', '    landmarks: 4 cm ⟦right of the midline⟧, 9 cm below the hairline\n'),
      { severity: 'error' },
    );
    silent('site/side-contradicts', one('left upper back', '    landmarks: 4 cm left of midline\n'));
    silent('site/side-contradicts', one('left upper back', '    landmarks: 4 cm right of the tattoo\n'));
    silent('site/side-contradicts', one('left anterior thigh', '    landmarks: 2 cm right of its midline\n'));
    silent(
      'site/side-contradicts',
      one('left thigh', '    landmarks: 2 cm right of midline, 9 cm above the knee\n'),
    );
  });

  it('flags a side of what lies in the midline, as a warning', () => {
    flags('site/side-contradicts', one('⟦left⟧ umbilicus'), { severity: 'warning' });
    flags('site/side-contradicts', one('⟦both⟧ glabella'), { severity: 'warning' });
  });

  it('is silent where the side says what lies beside the midline, or belongs to a landmark', () => {
    for (const site of [
      'left of the glabella',
      'right side of umbilicus',
      'midline glabella',
      'left cheek, 2 cm below the right eye',
      'left and right forearms',
      'left nasal tip',
      'left chin',
      'left anterior thigh, 2 cm right of midline',
    ])
      silent('site/side-contradicts', one(site));
  });
});

describe('site/side-abbreviated', () => {
  it('spells out letters, with one sure key', () => {
    flags('site/side-abbreviated', one('⟦R⟧ nasal ala'), { severity: 'information' });
    for (const [typed, written] of [
      ['R nasal ala', 'right nasal ala'],
      ['L. cheek', 'left cheek'],
      ['cheek (Lt.)', 'cheek (left)'],
      ['"dorsum of rt hand"', '"dorsum of right hand"'],
      ['B/L forearms', 'bilateral forearms'],
    ] as const)
      assert.equal(fixed('site/side-abbreviated', one(typed), 'Write'), one(written));
  });

  it('is silent for words', () => {
    silent('site/side-abbreviated', one('left cheek, 2 cm from L ear'));
    silent('site/side-abbreviated', one('bilateral cheeks'));
  });
});

const two = (first: string, second: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - {site: ${first}}\n  - {site: ${second}}\n`;

describe('site/repeated', () => {
  it('flags the second of two procedures that nothing tells apart', () => {
    const [finding] = flags('site/repeated', two('left upper back', '⟦upper back (left)⟧'), {
      severity: 'information',
    });
    assert.equal(finding?.related.length, 1);
    flags(
      'site/repeated',
      two('left cheek, landmarks: 2 cm below the eye', '⟦left cheek⟧, landmarks: 2 cm below the eye'),
    );
  });

  it('takes landmarks within the site for a part of it', () => {
    flags('site/repeated', two("'left cheek, 2 cm below eye'", "⟦'left cheek, 2 cm below eye'⟧"));
  });

  it('is silent where site, landmarks or relation differ, or the note says that it is the same', () => {
    for (const [first, second] of [
      ['left upper back', 'right upper back'],
      ['left upper back', 'left upper back, same-as: A'],
      ['left cheek, landmarks: 2 cm below the eye', 'left cheek, landmarks: 3 cm from the ear'],
      ['left shin, relation: edge', 'left shin, relation: perilesional'],
      ['left forearm', 'left forearm distal'],
      ['left ring finger', 'left index finger'],
      ["'left cheek, 2 cm below the eye'", "'left cheek, 1 cm from the ear'"],
      ['??', '??'],
    ] as const)
      silent('site/repeated', two(first, second));
  });
});

describe('site/hard-to-find', () => {
  it('flags a large site with neither landmarks nor photo', () => {
    flags('site/hard-to-find', one('⟦left upper back⟧'), { severity: 'information' });
    flags('site/hard-to-find', one('⟦left upper back⟧', '    photo: no\n'));
    const [finding] = flags('site/hard-to-find', one('⟦left arm⟧'));
    assert.match(finding ? messageOf(finding) : '', /alone/);
  });

  it('is silent where the place can be found again', () => {
    silent('site/hard-to-find', one('left upper back', '    photo: yes\n'));
    silent('site/hard-to-find', one('left upper back', '    landmarks: 4 cm from midline\n'));
    silent('site/hard-to-find', one('left upper back', '    photo: ??\n'));
    silent('site/hard-to-find', one('left cheek, 2 cm below the eye'));
    silent('site/hard-to-find', one('left upper back', '    same-as: A\n'));
    for (const small of ['glabella', 'umbilicus', 'nasal tip', 'left earlobe', 'right tragus'])
      silent('site/hard-to-find', one(small));
    silent('site/hard-to-find', 'procedures: [{site: left upper back, method: cryotherapy}]\n');
  });
});

describe('site/danger-area', () => {
  const cut = (site: string, how: string): string => `procedures: [{site: ${site}, ${how}}]\n`;

  it('flags what goes through the skin over a nerve', () => {
    for (const site of ['left temple', 'right jawline', 'left lateral neck', 'right upper eyelid'])
      flags('site/danger-area', cut(`⟦${site}⟧`, 'method: punch'), { severity: 'information' });
    for (const site of ['left volar wrist', 'right achilles', 'left medial elbow', 'right fibular head'])
      flags('site/danger-area', cut(`⟦${site}⟧`, 'method: punch, depth: subcutis'));
    flags('site/danger-area', cut('⟦left dorsal hand⟧', 'method: punch, depth: subcutis'));
    flags('site/danger-area', cut('⟦left temple⟧', 'method: excisional, depth: subcutis'));
    flags('site/danger-area', cut('⟦left temple⟧', 'method: shave, depth: subcutis'));
    const [finding] = flags('site/danger-area', cut('⟦left temple⟧', 'method: punch, depth: ??'));
    assert.match(finding ? messageOf(finding) : '', /temporal branch/);
  });

  it('is silent for what stays in the skin, and elsewhere', () => {
    silent('site/danger-area', cut('left temple', 'method: shave'));
    silent('site/danger-area', cut('left temple', 'method: deep shave, depth: deep dermis'));
    silent('site/danger-area', cut('left temple', 'method: punch, depth: mid dermis'));
    silent('site/danger-area', cut('left temporal scalp', 'method: punch'));
    silent('site/danger-area', cut('left cheek', 'method: punch, depth: subcutis'));
    silent('site/danger-area', cut('left elbow', 'method: punch, depth: subcutis'));
    silent('site/danger-area', cut('left lateral lower leg', 'method: punch, depth: subcutis'));
    // Over the tendons of the hand the skin is loose: only what goes into the fat is near them.
    silent('site/danger-area', cut('left dorsal hand', 'method: punch'));
    silent('site/danger-area', cut('left dorsal hand', 'method: punch, depth: deep dermis'));
  });
});

describe('the side in other texts of a procedure', () => {
  const code = 'site/side-contradicts';
  const of = (site: string, ...rows: readonly string[]): string =>
    `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n${rows.map((row) => `    ${row}\n`).join('')}`;

  it('is compared where they name the same place', () => {
    flags(code, of('left upper back', 'lesion: brown macule on ⟦right upper back⟧'), { severity: 'warning' });
    flags(code, of('left upper back', 'question: "nevus, ⟦right upper back⟧, r/o atypia"'));
    flags(code, of('dorsum of right 3rd finger', 'lesion: wart of ⟦left 3rd finger⟧'));
    flags(code, of('left upper back', 'landmarks: 4 cm from ⟦midline on the right⟧'), { severity: 'error' });
  });

  it('may be another where they name another place, or another lesion', () => {
    for (const row of [
      'lesion: brown macule on left upper back',
      'lesion: similar macule on right upper back',
      'question: history of melanoma of the right upper back',
      'lesion: macule, new since treatment of right upper back',
      'lesion: macule with a bright right border',
      'lesion: macule right above a scar',
      'question: recurrence after excision on right forearm',
      'landmarks: 4 cm from midline',
      'landmarks: 4 cm left of the midline',
      'landmarks: 3 cm below the midline, to the right of the spine',
    ])
      silent(code, of('left upper back', row));
    silent(code, of('upper back', 'lesion: brown macule on right upper back'));
  });
});
