import assert from 'node:assert/strict';
import { openListFormats } from '../../src/documents/open-list/open-list.ts';
import { Caseload, factsOf } from '../../src/followup/caseload.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { hostile } from './hostile.ts';

const noteOf = (id: string): string => `wheal: 1
visit: 2026-03-02
patient: {id: ${JSON.stringify(id)}, age: 60}
procedures:
  - site: left upper back
    method: punch
    closure: [{material: nylon, size: 4-0, count: 2, technique: simple interrupted}]
    specimen: [{label: A, medium: formalin, sent: 2026-03-02}]
`;

function pageOn(asOf: string, id = 'C-1', path = 'a.wheal.yaml'): string {
  const caseload = new Caseload();
  caseload.set(path, factsOf(readNote(noteOf(id)), referenceTables));
  return openListFormats.html.write({ asOf, notes: 1, items: caseload.openOn(asOf) });
}

const headings = (html: string): readonly string[] =>
  [...html.matchAll(/<h[23]>([^<]*)</g)].map(([, text = '']) => text);

describe('the open list as a page', () => {
  it('has what is overdue first, by what is to be done', () => {
    assert.deepEqual(headings(pageOn('2026-03-17')), [
      'Overdue (2)',
      'Results outstanding (1)',
      'Stitches to come out (1)',
    ]);
    assert.deepEqual(headings(pageOn('2026-03-03')), [
      'Later (2)',
      'Results outstanding (1)',
      'Stitches to come out (1)',
    ]);
  });

  it('has a time line with words for each item that has a day', () => {
    const html = pageOn('2026-03-17');
    const lines = html.match(/<svg [^>]*aria-label="in order from \S+ to \S+, seen on 2026-03-17"/g);
    assert.equal(lines?.length, 2);
    for (const [, x, width] of html.matchAll(/<rect x="([\d.]+)" y="3" width="([\d.]+)"/g))
      assert.ok(Number(x) >= 0 && Number(x) + Number(width) <= 110, `${x ?? ''} ${width ?? ''}`);
  });

  it('filters without a script or a network', () => {
    const html = pageOn('2026-03-17');
    assert.doesNotMatch(html, /<script|src=|href=|@import|url\(/);
    for (const [, name, id] of html.matchAll(/<input type="radio" name="(\w+)" id="\w+-(\w+)"/g))
      if (id !== 'all') {
        const rule = `body:has(#${name!}-${id!}:checked)`;
        assert.ok(html.includes(rule), rule);
      }
    assert.equal(html.match(/ checked>/g)?.length, 2);
  });

  it('prints as a list to call from: a place to write, and no filters', () => {
    const html = pageOn('2026-03-17');
    assert.equal(html.match(/<td class="done"><\/td>/g)?.length, 2);
    assert.match(html, /@media print \{ fieldset \{ display: none; \}/);
    assert.match(html, /thead \{ display: table-header-group; \}/);
    assert.equal(html.match(/<h1>/g)?.length, 1);
    assert.equal(html.match(/<main>/g)?.length, 1);
  });

  it('says that nothing is open', () => {
    const html = openListFormats.html.write({ asOf: '2026-03-17', notes: 0, items: [] });
    assert.match(html, /<p>Nothing is open\. 0 in 0 notes\.<\/p>/);
    assert.doesNotMatch(html, /<fieldset>/);
  });

  it('names the notes that were not looked at', () => {
    const html = openListFormats.html.write({
      ...{ asOf: '2026-03-17', notes: 1, items: [] },
      notRead: [{ path: '<b>.yaml', why: 'too large' }],
    });
    assert.match(html, /<li>&lt;b&gt;\.yaml: too large<\/li>/);
  });

  it('lets no word of a note or a path become markup', () => {
    const tags = (html: string): ReadonlySet<string> => new Set(html.match(/<[^>]*>?/g));
    const own = tags(pageOn('2026-03-17'));
    for (const text of hostile) {
      if (readNote(noteOf(text)).value === null) continue;
      assert.deepEqual(
        [...tags(pageOn('2026-03-17', text, text))].filter((tag) => !own.has(tag)),
        [],
        text,
      );
    }
  });
});
