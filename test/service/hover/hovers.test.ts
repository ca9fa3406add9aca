import assert from 'node:assert/strict';
import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { hoverAt } from '../../../src/service/index.ts';
import { step } from '../../share.ts';
import { analysed, samples } from '../notes.ts';

/** The Markdown of the hover at the mark `|`. */
function hover(marked: string): string {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  return hoverAt(analysed(text), offset)?.markdown ?? '';
}

const note = (patient: string, procedure: string): string =>
  `wheal: 1\nvisit: 2026-03-02\npatient:\n  id: C-1\n${patient}\nprocedures:\n  - ${procedure}\n`;

const injection = (rows: string): string =>
  note('  born: 1961-08-09\n  weight: 62 kg', `site: left cheek\n    anesthetic:\n      - ${rows}`);

describe('a hover', () => {
  it('on a key is its help and its words, ten at most', () => {
    const text = hover('procedures:\n  - met|hod: shave');
    assert.match(text, /How the tissue was taken/);
    assert.match(text, /Words: shave, deep shave, .* and \d+ more/);
  });

  it('on a volume follows the sum to its sources, and says what is left', () => {
    const text = hover(injection('{agent: lidocaine, concentration: 1%, volume: 1.5| mL}'));
    assert.match(text, /Weight 62 kg; age 64 years/);
    assert.match(text, /1\.5 mL × 10 mg\/mL = 15 mg/);
    assert.match(text, /4\.5 mg\/kg × 62 kg = 279 mg, cap 300 mg.*_\(US prescribing information/);
    assert.match(text, /5\.4% of the limit/);
    assert.match(text, /Left: 264 mg, that is 26\.4 mL of lidocaine 1%/);
    // Beside the sum, so that it is seen without scrolling; the help of the key comes last.
    assert.match(text, /local protocol and the current label decide\..*\n\n\*\*volume\*\*/);
  });

  it('says of each number how sure it is of its source', () => {
    const dose = hover(injection('{agent: lidocaine, concentration: 1%, volume: 1.5| mL}'));
    assert.match(dose, /maximum recommended dosages .*; read in this source\)_/);
    assert.match(
      hover(injection('{agent: lidocaine-prilocaine cream, amount: 1| g}')),
      /read in this source|secondary/,
    );
    const eyelid = hover(note('  age: 40 years', 'site: left upper| eyelid'));
    assert.match(eyelid, /read in this source/);
    // Nothing is cited without it.
    for (const text of [dose, eyelid, hover(note('  medications: [warf|arin]', 'site: left cheek'))])
      for (const [, cited] of text.matchAll(/_\((.*?)\)_$/gm))
        assert.match(cited!, /; (?:read in|from memory|not verified|a rule of)/);
  });

  it('on a finding is what it rests on, and how sure that is', () => {
    const over = hover(injection('{agent: lidocaine, concentration: 1%, volume: 4|0 mL}'));
    assert.match(
      over,
      /What dose\/over-limit rests on\*\*\n\n- US prescribing information, .*; read in this source/,
    );
    const child = hover(
      note(
        '  age: 8 years\n  weight: 25 kg',
        'site: left cheek\n    anesthetic:\n      - {agent: bupivacaine, concentration: 0.25%, volume: 1| mL}',
      ),
    );
    assert.match(child, /What dose\/advisory-passed rests on\*\*\n\n- .*; read in a secondary page/);
    assert.match(
      hover(note('  age: 40 years\n  allergies: [latex]', 'site: left cheek\n    dressing: [elastic wr|ap]')),
      /What allergy\/dressing rests on\*\*\n\n- Premier/,
    );
    assert.doesNotMatch(
      hover(injection('{agent: lidocaine, concentration: 1%, volume: 1|.5 mL}')),
      /rests on/,
    );
  });

  it('on an injected drug follows its sum, and says what is left of a session, never rounded up', () => {
    const injected = (volume: string): string =>
      hover(
        note(
          '  born: 1961-08-09',
          `site: left cheek\n    method: injection\n    injected: {drug: triamcinolone, concentration: 15 mg/mL, volume: ${volume}, area: 3 cm2}`,
        ),
      );
    const text = injected('0.5| mL');
    assert.match(text, /0\.5 mL × 15 mg\/mL = 7\.5 mg of triamcinolone/);
    assert.match(
      text,
      /7\.5 mg that day, held against 40 mg a session of an adult: 32\.5 mg left, 2\.1 mL of this _\(secondary/,
    );
    assert.match(text, /2\.5 mg on each cm²; trials had at most 20 _\(Yin/);
    assert.match(text, /local protocol and the current label decide/);
    assert.match(injected('3| mL'), /45 mg that day, .* 0 mg left, 0 mL of this/);
    assert.match(injected('??|'), /Volume injected at this site/);
  });

  it('on one of two injections tells its own mg and the sum of both', () => {
    const text = hover(
      injection(
        '{agent: lidocaine, concentration: 1%, volume: 1| mL}\n      - {agent: bupivacaine, concentration: 0.25%, volume: 4 mL}',
      ),
    );
    assert.match(text, /1 mL × 10 mg\/mL = 10 mg/);
    assert.doesNotMatch(text, /4 mL ×/);
    assert.match(text, /Sum of the shares/);
  });

  it('on one of several of the same agent tells what the others add to its sum', () => {
    const text = hover(
      injection(
        '{agent: lidocaine, concentration: 1%, volume: 20| mL}\n      - {agent: lidocaine, concentration: 2%, volume: 6 mL}',
      ),
    );
    assert.match(
      text,
      /= 200 mg\n+- Other injections of lidocaine: 120 mg\n+- Limit of lidocaine.*\n+- lidocaine: 320 mg/,
    );
    assert.doesNotMatch(
      hover(injection('{agent: lidocaine, concentration: 1%, volume: 20| mL}')),
      /Other injections/,
    );
  });

  it('on an injection that is not counted says so', () => {
    assert.match(
      hover(injection('{agent: lidocaine|, volume: 1 mL}')),
      /Not counted: the concentration is missing/,
    );
    assert.match(
      hover(injection('{agent: bacteriostatic saline|, volume: 1 mL}')),
      /no dose limit of this kind/,
    );
  });

  it('on a dictated line is the sum of what was dictated', () => {
    const text = hover(
      note(
        '  born: 1961-08-09\n  weight: 62 kg',
        'site: left cheek\n    anesthetic: 1.5 mL lido|caine 1% with epinephrine 1:100,000',
      ),
    );
    assert.match(text, /= 15 mg/);
  });

  it('on a date is its weekday and the days since the visit', () => {
    const text = hover(note('', 'site: nose\n    specimen: {label: A, sent: 2026-03-0|4}'));
    assert.match(text, /Wednesday, 2026-03-04/);
    assert.match(text, /2 days after the visit/);
    assert.match(hover('visit: 2026-03-0|2'), /Monday/);
  });

  it('on a planned removal of stitches is its window and the sources', () => {
    const text = hover(
      note(
        '',
        'site: left cheek\n    method: punch\n    closure: {material: nylon}\n    sutures-due: 2026-03-0|9',
      ),
    );
    assert.match(text, /When the stitches come out/);
    assert.match(text, /from 2026-03-\d\d to 2026-03-\d\d _\(/);
  });

  it('on a site is what follows from it', () => {
    const shin = hover(note('', 'site: left sh|in'));
    assert.match(shin, /heals slowly/);
    assert.match(shin, /Stitches/);
    const finger = hover(note('', 'site: left index fin|ger'));
    assert.match(finger, /judged safe in a digital block/);
    assert.match(finger, /Some labels still say not to/);
    assert.match(hover(note('', 'site: left axil|la')), /A fold/);
    assert.doesNotMatch(hover(note('', 'site: left che|ek')), /Epinephrine where end arteries/);
  });

  it('on a blood thinner tells what is published, and does not advise to stop it', () => {
    const text = hover(note('  medications: [war|farin 5 mg]', 'site: nose'));
    assert.match(text, /Goes on for minor skin procedures/);
    assert.match(text, /Stopping such a medicine raises the risk of a clot/);
    assert.equal(
      /blood|procedures of the skin/.test(hover(note('  medications: [vitamin |D]', 'site: nose'))),
      true,
    );
    assert.doesNotMatch(hover(note('  medications: [vitamin |D]', 'site: nose')), /Stopping/);
  });

  it('on a word for hemostasis or an implant is what follows for current', () => {
    assert.match(
      hover(note('', 'site: nose\n    hemostasis: electro|surgery')),
      /passes through the patient/,
    );
    assert.match(hover(note('', 'site: nose\n    hemostasis: caut|ery')), /counts as current/);
    assert.match(hover(note('  implants: IC|D', 'site: nose')), /No electrosurgical current at all/);
    assert.match(hover(note('  implants: [{kind: pace|maker}]', 'site: nose')), /Heat cautery/);
  });

  it('on an accepted code is the title of its check', () => {
    assert.match(
      hover(note('', 'site: nose\n    accepted: [{check: closure/mis|sing, reason: left open}]')),
      /an excision without a closure/,
    );
  });

  it('on an accepted code tells what is accepted, and where it stands; or that nothing is', () => {
    const accepting = (method: string): string =>
      hover(
        note(
          '',
          `site: nose\n    method: ${method}\n    accepted: [{check: closure/mis|sing, reason: left open}]`,
        ),
      );
    assert.match(
      accepting('punch'),
      /What is accepted.*\n+- Line 7: The note does not say how the wound was closed/,
    );
    assert.match(accepting('shave'), /Nothing of this kind is found here now/);
  });

  it('on ?? is the help of the key alone', () => {
    assert.doesNotMatch(
      hover(injection('{agent: lidocaine, concentration: 1%, volume: ?|?}')),
      /step by step/,
    );
  });
});

const hostile = [
  '[x](command:workbench.action.quit)',
  '<img src=x onerror=alert(1)>',
  '![x](https://example.com/a.png)',
  '`code` **bold** _em_ ~~s~~',
  'https://example.com www.example.com a@example.com',
  '<command:quit> &lt;b&gt;',
  '# heading',
  '> quote | table |',
  '[ref]: https://example.com',
  '1. one',
  '- --- ===',
  '$(alert)',
  '\u202Eabc\u0000',
];

/**
 * Rows of a hover in which a reader of Markdown would find more than our own bold headings, emphasis and list items:
 * each sign of links, images, HTML, code, tables and quotes must be after a backslash.
 */
function markup(markdown: string): readonly string[] {
  return markdown
    .split('\n')
    .filter(
      (row) =>
        !/^(?:|- .*|\*\*[^*]*\*\*|_[^_]*_)$/.test(row.replace(/\\./g, '')) ||
        /(?<!\\)(?:\\\\)*[<>[\]`@~|#&]|:\/\/|www\.|\p{Cc}|\p{Cf}/u.test(row) ||
        /^- (?:[-+>#*]|\d+[.)])(?:\s|$)/.test(row),
    );
}

describe('the words of a note in a hover', () => {
  for (const words of hostile)
    it(`are never markup: ${JSON.stringify(words)}`, () => {
      const quoted = JSON.stringify(words);
      const text = note(
        `  medications: [${JSON.stringify(`warfarin ${words}`)}]\n  implants: [{kind: ${JSON.stringify(`ICD ${words}`)}}]`,
        `site: ${JSON.stringify(`left cheek ${words}`)}\n    hemostasis: ${JSON.stringify(`cautery ${words}`)}\n    lesion: ${quoted}\n    anesthetic: [{product: ${quoted}, agent: ${quoted}, concentration: 1%, volume: 1 mL}]`,
      );
      const analysis = analysed(text);
      for (let offset = 0; offset <= text.length; offset += 3)
        assert.deepEqual(markup(hoverAt(analysis, offset)?.markdown ?? ''), []);
    });

  it('are none from the practice file either', () => {
    const stock = readPractice(
      `stock: [{product: ${JSON.stringify(hostile.join(' '))}, agent: lidocaine, concentration: 1%}]`,
    );
    const product = JSON.stringify(hostile.join(' '));
    const text = note(
      '  born: 1961-08-09\n  weight: 62 kg',
      `site: nose\n    anesthetic: {product: ${product}, volume: 1 mL}`,
    );
    const shown = hoverAt(analysed(text, tablesOf(stock.value)), text.indexOf('1 mL'))?.markdown ?? '';
    assert.match(shown, /1 mL × 10 mg\/mL/);
    assert.deepEqual(markup(shown), []);
  });

  it('nor are those of any sample', () => {
    for (const { text } of samples) {
      const analysis = analysed(text);
      for (let offset = 0; offset <= text.length; offset += step(17))
        assert.deepEqual(markup(hoverAt(analysis, offset)?.markdown ?? ''), []);
    }
  });
});
