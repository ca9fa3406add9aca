import assert from 'node:assert/strict';
import { check } from '../../src/checks/index.ts';
import { handoutFormats, handoutOf } from '../../src/documents/handout/index.ts';
import { requisitionFormats } from '../../src/documents/requisition/forms.ts';
import { requisitionOf } from '../../src/documents/requisition/requisition.ts';
import { summaryFormats, summaryOf } from '../../src/documents/summary/index.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';

const now = new Date('2026-03-20T10:00:00Z');
const text = `wheal: 1
visit: 2026-03-02
patient: {id: 'C-1 "</style>', weight: 62 kg, age: 60}
procedures:
  - site: left upper back
    method: punch
    anesthetic: {agent: lidocaine, concentration: 1%, volume: 3 mL}
    specimen: [{label: A, medium: formalin}, {label: B, medium: Michel}]
  - site: perianal skin
    method: shave
    specimen: {label: C, medium: formalin}
`;

interface Papers {
  readonly summary: string;
  readonly handout: string;
  readonly request: string;
  readonly mail: string;
}

function papers(): Papers {
  const source = readNote(text);
  assert.ok(source.value);
  const judgement = check(source, { tables, today: '2026-03-20' });
  const summary = summaryOf(source, judgement, { tables, practice: undefined, today: '2026-03-20' });
  const handout = handoutOf(source, judgement, { tables, language: 'es' });
  assert.ok(summary.readable && handout.readable);
  return {
    summary: summaryFormats.html.write(summary),
    handout: handoutFormats.html.write(handout, now),
    request: requisitionFormats.html.write(requisitionOf(source.value, tables)),
    mail: handoutFormats.eml.write(handout, now),
  };
}

const titles = (html: string): readonly string[] =>
  [...html.matchAll(/<figcaption>([^<]*)</g)].map(([, title = '']) => title);

describe('papers', () => {
  const { summary, handout, request, mail } = papers();

  it('have one main and one first heading each, and no id twice', () => {
    for (const html of [summary, handout, request]) {
      assert.equal(html.match(/<main>/g)?.length, 1);
      assert.equal(html.match(/<h1>/g)?.length, 1);
      const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
      assert.equal(new Set(ids).size, ids.length, String(ids));
      for (const [, id] of html.matchAll(/ aria-\w+by="([^"]*)"|url\(#([^)]*)\)/g))
        if (id !== undefined) assert.ok(ids.includes(id), id);
    }
  });

  it('have chart number, visit and page at the foot of every page, and nothing of them ends the style', () => {
    for (const html of [summary, handout, request]) {
      assert.equal(html.match(/<\/style>/g)?.length, 1);
      assert.match(html, /@bottom-left \{[^}]*content: "[^"]*C-1 \\22 \\3c \\2f style\\3e [^"]*";/);
      assert.match(html, /counter\(page\).*counter\(pages\)/);
    }
    assert.match(summary, /content: "[^"]*2026-03-02/);
    assert.match(handout, /"página "/);
  });

  it('carry the figure where it helps', () => {
    assert.deepEqual(titles(summary), ['Where on the body', 'Dose of local anesthetic', 'What falls due']);
    assert.deepEqual(titles(handout), ['En qué parte del cuerpo']);
    assert.deepEqual(titles(request), ['Where on the body', 'Where on the body', 'Where on the body']);
    assert.doesNotMatch(mail, /<svg/);
  });

  it('have on the request the number of the container, the same as on its label', () => {
    const numbers = [...request.matchAll(/font-size="10">(\d+)<\/text>/g)].map(([, number]) => number);
    assert.deepEqual(numbers, ['1', '2', '3']);
    for (const number of numbers) {
      assert.ok(request.includes(`<h2>Container ${number} of 3</h2>`));
      assert.ok(request.includes(`<h3 class="wide">Container ${number} of 3</h3>`));
    }
  });

  it('have the labels of 30 by 70 mm on a sheet of their own, with nothing cut off', () => {
    assert.match(request, /\.label \{[^}]*width: 70mm; min-height: 30mm;/);
    assert.doesNotMatch(request, /overflow: hidden/);
    const [, labels = ''] = request.split('<h2>Container labels</h2>');
    assert.equal(labels.match(/class="label"/g)?.length, 3);
    assert.equal(request.match(/<section class="sheet">/g)?.length, 3);
  });

  it('leave the genital area out of the handout', () => {
    assert.match(request, /Genital and anal area/);
    const figure = handout.slice(handout.indexOf('<figure>'));
    assert.doesNotMatch(figure, /genital|ano\b/i);
  });

  it('have no place in the note on them', () => {
    for (const html of [summary, handout, request]) assert.doesNotMatch(html, /data-start|tabindex/);
  });
});
