import assert from 'node:assert/strict';
import fc from 'fast-check';
import { analyse, diagnosticsOf, panelOf, procedureAt, shownFindings } from '../../src/service/index.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { hostileText } from '../documents/hostile.ts';
import { times } from '../share.ts';

const context = { tables: referenceTables, today: '2026-03-20' };

const noteWith = (volume: string, site = 'left upper back'): string => `wheal: 1
visit: 2026-03-02 10:05
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: none, implants: none}
consent: written
procedures:
  - site: ${site}
    lesion: brown macule 6 mm
    method: punch
    size: 4 mm
    anesthetic: {agent: lidocaine, concentration: 1%, volume: ${volume}}
    closure: {material: nylon, size: 5-0, count: 2}
    sutures-due: 2026-03-14
    specimen: {label: A, medium: formalin, sent: 2026-03-02}
  - site: right cheek
    method: shave
    specimen: {label: B, medium: formalin, sent: 2026-03-02}
`;

function shown(text: string, view: 'summary' | 'handout' = 'summary'): ReadonlyMap<string, string> {
  const analysis = analyse(text, context);
  const findings = diagnosticsOf(text, shownFindings(analysis, true));
  const options = { view, language: undefined, practice: undefined };
  return new Map(panelOf(analysis, findings, options).map(({ id, html }) => [id, html]));
}

describe('the panel beside a note', () => {
  it('shows findings, dose, place, time and summary, in this order', () => {
    assert.deepEqual([...shown(noteWith('5 mL')).keys()], ['findings', 'dose', 'place', 'time', 'summary']);
  });

  it('shows in its place the handout, with the caution', () => {
    const panel = shown(noteWith('5 mL'), 'handout');
    assert.deepEqual([...panel.keys()], ['findings', 'handout']);
    assert.match(panel.get('handout')!, /Caring for the wound/);
    assert.match(panel.get('handout')!, /Decision support for trained staff/);
  });

  it('passes the ceiling where the volume does', () => {
    assert.doesNotMatch(shown(noteWith('20 mL')).get('dose')!, /wheal-over/);
    const over = shown(noteWith('35 mL'));
    assert.match(over.get('dose')!, /wheal-over/);
    assert.match(over.get('findings')!, /^<h2>Open findings<\/h2><ul><li><button[^>]*class="error"/);
  });

  it('names the line and the character of each finding', () => {
    const text = noteWith('35 mL');
    const { html } = { html: shown(text).get('findings')! };
    const line = text.split('\n').findIndex((one) => one.includes('35 mL'));
    const at = text.split('\n')[line]!.indexOf('35 mL');
    assert.ok(html.includes(`data-line="${line}" data-character="${at}"`), html);
  });

  it('points into the note from every mark of a picture', () => {
    const text = noteWith('5 mL');
    const starts = [...shown(text).values()]
      .flatMap((html) => [...html.matchAll(/data-start="(\d+)"/g)])
      .map(([, start]) => Number(start));
    assert.ok(starts.length >= 3);
    for (const start of starts) assert.ok(start < text.length && /\S/.test(text[start]!), String(start));
  });

  it('says that there is nothing of a note that cannot be read', () => {
    const panel = shown('- a\n- b\n');
    assert.deepEqual([...panel.keys()], ['findings', 'summary']);
    assert.match(panel.get('summary')!, /There is no summary/);
  });

  it('knows in which procedure an offset is', () => {
    const text = noteWith('5 mL');
    const analysis = analyse(text, context);
    assert.equal(procedureAt(analysis, text.indexOf('visit')), undefined);
    assert.equal(procedureAt(analysis, text.indexOf('punch')), 0);
    assert.equal(procedureAt(analysis, text.indexOf('shave')), 1);
  });

  it('holds no script, no address and no style, whatever the note says', () => {
    const tag = /<\/?[a-z][a-z0-9]*(?:\s+[a-zA-Z-]+(?::[a-z]+)?="[^"<>]*")*\s*\/?>/g;
    fc.assert(
      fc.property(hostileText, fc.constantFrom('summary', 'handout'), (site, view) => {
        for (const html of shown(noteWith('5 mL', JSON.stringify(site)), view).values()) {
          assert.doesNotMatch(html.replace(tag, ''), /[<>]/);
          for (const [one] of html.matchAll(tag)) {
            assert.doesNotMatch(
              one,
              /^<\/?(?:script|style|iframe|img|a|link|object|embed|form|foreignObject|image|use)\b/i,
            );
            assert.doesNotMatch(
              one.replace(/"[^"]*"/g, '""'),
              /\s(?:on[a-z]+|style|href|src|srcdoc|action)=/i,
            );
          }
        }
      }),
      { numRuns: times(60) },
    );
  });
});
