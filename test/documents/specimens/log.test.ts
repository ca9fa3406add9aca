import assert from 'node:assert/strict';
import { csvCell } from '../../../src/documents/csv.ts';
import { logFormats, specimenLog, type SpecimenLog } from '../../../src/documents/specimens/log.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

const logOf = (texts: readonly string[], on = '2026-03-02'): SpecimenLog =>
  specimenLog(
    texts.map((text, at) => {
      const { value } = readNote(text);
      assert.ok(value);
      return { path: `${at}.wheal.yaml`, note: value, tables: referenceTables };
    }),
    on,
  );

const day = `visit: 2026-03-02
patient: {id: C-1}
procedures:
  - {site: chin, method: punch, codes: [X1, X2], specimen: {label: A, medium: formalin, sent: 2026-03-02}}
  - {site: nose, method: punch biopsy, codes: [X1], specimen: [{label: B, medium: formalin}, {label: C, medium: Michel, sent: ??}]}
  - {site: neck, method: snip, specimen: "not sent, skin tag"}
  - {site: left cheek, method: shave}
`;

describe('specimen log', () => {
  it('sets what was taken against what left', () => {
    const log = logOf([day, day.replace('visit: 2026-03-02', 'visit: 2026-03-03')]);
    assert.deepEqual(
      log.rows.map(({ label, state }) => [label, state]),
      [
        ['A', 'sent'],
        ['B', 'not sent yet'],
        ['C', 'not sent yet'],
        [undefined, 'not to be sent'],
        [undefined, 'not recorded'],
      ],
    );
    assert.match(
      logFormats.text.write(log),
      /Containers to send: 3\. sent: 1, not sent yet: 2, not to be sent: 1, not recorded: 1\./,
    );
  });

  it('counts procedures by method, whatever word was typed, and the practice’s codes', () => {
    const { methods, codes } = logOf([day]);
    assert.deepEqual(
      [...methods],
      [
        ['punch', 2],
        ['scissor', 1],
        ['shave', 1],
      ],
    );
    assert.deepEqual(
      [...codes],
      [
        ['X1', 2],
        ['X2', 1],
      ],
    );
  });

  it('says of a day without any that it has none', () => {
    assert.equal(
      logFormats.text.write(logOf([day], '2026-04-01')),
      'No specimens and no procedures on 2026-04-01.\n',
    );
    assert.deepEqual(
      (JSON.parse(logFormats.json.write(logOf([day], '2026-04-01'))) as { specimens: unknown }).specimens,
      [],
    );
  });

  it('writes a byte order mark and identifiers as text where it is asked to', () => {
    const log = logOf([day.replace('C-1', '0042')]);
    const plainly = logFormats.csv.write(log);
    const asked = logFormats.csv.write(log, { mark: true, textIds: true });
    assert.ok(asked.startsWith('\ufeffpatient,'));
    assert.ok(!plainly.startsWith('\ufeff'));
    assert.match(plainly, /^0042,/m);
    assert.match(asked, /^"=""0042""",/m);
    assert.equal(asked.split('\r\n').length, plainly.split('\r\n').length);
  });

  it('writes cells that no spreadsheet takes for a formula', () => {
    for (const text of ['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '＝1', '\r=1'])
      assert.match(csvCell(text), /^"?'/, JSON.stringify(text));
    for (const text of ['C-1', '2026-03-02', 'left upper back']) assert.equal(csvCell(text), text);
    assert.equal(csvCell('a "b", c'), '"a ""b"", c"');
    assert.doesNotMatch(csvCell('a\nb\r\nc'), /[\r\n]/);
    const csv = logFormats.csv.write(logOf([day.replace('C-1', '"=HYPERLINK(1)"')]));
    assert.ok(
      csv
        .split('\r\n')
        .slice(1, -1)
        .every((row) => row.startsWith("'=")),
    );
    assert.equal(csv.split('\r\n').length, 7);
  });
});
