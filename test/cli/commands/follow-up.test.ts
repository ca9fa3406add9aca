import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { folder, wheal } from '../run.ts';

const note = (rest: string, id = 'C-1'): string => `wheal: 1
visit: 2026-03-02
clinician: K.O.
patient: {id: ${id}, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: punch
    size: 4 mm
    closure: {material: nylon, count: 2}
    specimen: {label: A, medium: formalin, sent: 2026-03-02${rest}}
`;
const asOf = (day: string): readonly string[] => ['--as-of', day];

interface Items {
  readonly items: readonly Readonly<Record<string, unknown>>[];
}
const itemsOf = (out: string): Items['items'] => (JSON.parse(out) as Items).items;

describe('wheal schedule', () => {
  it('writes the fixed JSON', async () => {
    const cwd = folder({ 'a.wheal.yaml': note('') });
    const { code, out } = await wheal(
      ['schedule', 'a.wheal.yaml', '--format', 'json', ...asOf('2026-03-12')],
      { cwd },
    );
    assert.equal(code, 0);
    const removal = itemsOf(out).find(({ kind }) => kind === 'suture removal');
    assert.ok(removal);
    const { note: path, patient, procedure, from, to, state } = removal;
    assert.deepEqual(
      { path, patient, procedure, from, to, state },
      {
        path: 'a.wheal.yaml',
        patient: 'C-1',
        procedure: 0,
        from: '2026-03-12',
        to: '2026-03-16',
        state: 'due',
      },
    );
  });

  it('gives text a reason and a source for each item', async () => {
    const cwd = folder({ 'a.wheal.yaml': note('') });
    const { out } = await wheal(['schedule', '.', ...asOf('2026-03-20')], { cwd });
    assert.match(
      out,
      /overdue +2026-03-12 to 2026-03-16: suture removal, left upper back\n.*10 to 14 days.*\[.+\]/,
    );
    assert.match(out, /overdue +2026-03-05 to 2026-03-16.*: result, specimen A, left upper back/);
  });

  it('cites no source beside days that are not in it', async () => {
    const practice = (rest: string): string =>
      `name: Test\nfollow-up-approved: {by: K.O., on: 2026-01-02, reason: a slow laboratory}\n${rest}`;
    const shown = async (name: string, text: string): Promise<string> => {
      const cwd = folder({
        'a.wheal.yaml': text,
        ...(name === '' ? {} : { 'practice.wheal.yaml': practice(name) }),
      });
      return (await wheal(['schedule', '.', ...asOf('2026-03-20')], { cwd })).out;
    };
    assert.match(await shown('', note('')), /10 working days after 2026-03-02\. \[practice leaflets/);
    const slow = await shown('overdue: {result: 30}\n', note(''));
    assert.match(slow, /30 working days after 2026-03-02\. \[the practice's own file\]/);
    const leg = note('').replace('left upper back', 'left shin');
    assert.match(
      await shown('', leg),
      /lengthened from 10 to 14 days.*\[the days of a source for the site, lengthened as in a web suture handbook/,
    );
    const own = await shown('suture-windows: [{site: leg, from: 12, to: 16}]\n', leg);
    assert.match(own, /12 to 16 days.*own window\. \[the practice's own file\]/);
  });

  it('says of a note that is read in part that it was not looked at in full, as every list does', async () => {
    const damaged = note('').replace('method: punch', 'method: [punch');
    const cwd = folder({ 'a.wheal.yaml': note(''), 'b.wheal.yaml': damaged });
    for (const command of ['schedule', 'specimens', 'open']) {
      const day = command === 'specimens' ? ['--on', '2026-03-02'] : asOf('2026-03-20');
      const { code, out } = await wheal([command, '.', ...day], { cwd });
      assert.equal(code, 1, command);
      assert.match(out, /Not looked at in full: 1 file\.\n +\S*b\.wheal\.yaml: a part of it/, command);
      const json = await wheal([command, '.', '--format', 'json', ...day], { cwd });
      assert.equal((JSON.parse(json.out) as { readonly notRead: readonly unknown[] }).notRead.length, 1);
    }
  });

  it('writes a calendar that another program reads, with an entry for each item that is not done', async () => {
    const cwd = folder({ 'a.wheal.yaml': note('') });
    const { out } = await wheal(['schedule', '.', '--format', 'ics', ...asOf('2026-03-02')], { cwd });
    const events = new ICAL.Component(ICAL.parse(out) as unknown[]).getAllSubcomponents('vevent');
    const { out: json } = await wheal(['schedule', '.', '--format', 'json', ...asOf('2026-03-02')], { cwd });
    assert.deepEqual(
      events.map((event) => String(event.getFirstPropertyValue('dtstart'))),
      itemsOf(json).flatMap(({ from, state }) => (state === 'done' ? [] : [from])),
    );
  });

  it('names a note that cannot be read, answers 1, and writes a file whole', async () => {
    const cwd = folder({ 'a.wheal.yaml': note(''), 'b.wheal.yaml': '- no note\n' });
    const { code, err, out } = await wheal(['schedule', '.', '--out', 'list.txt'], { cwd });
    assert.deepEqual([code, out], [1, '']);
    assert.match(err, /b\.wheal\.yaml can't be read/);
    assert.match(readFileSync(join(cwd, 'list.txt'), 'utf8'), /suture removal/);
  });
});

describe('wheal open', () => {
  const files = {
    'a.wheal.yaml': note(', result: {received: 2026-03-09, diagnosis: melanoma}'),
    'b.wheal.yaml': note('', 'C-2'),
    'c.wheal.yaml': '- no note\n',
  };

  it('groups by what is to be done, and keeps what cannot be read on the list', async () => {
    const { code, out } = await wheal(['open', '.', ...asOf('2026-03-17')], { cwd: folder(files) });
    assert.equal(code, 1);
    assert.deepEqual(
      [...out.matchAll(/^(\w[^(\n]+) \(\d+\)$/gm)].map(([, heading]) => heading),
      ['Notes to look at', 'Patients to be told', 'Results outstanding', 'Stitches to come out'],
    );
    assert.match(
      out,
      /^!!! C-1: specimen A, left upper back; overdue since 2026-03-10, 7 days; cannot wait$/m,
    );
    assert.match(out, /^! {3}C-2: specimen A, left upper back; overdue since 2026-03-16, 1 day$/m);
  });

  it('says where nothing is open', async () => {
    const cwd = folder({
      'a.wheal.yaml': note('')
        .replace('{label: A, medium: formalin, sent: 2026-03-02}', 'not sent, none taken')
        .replace('size: 4 mm', 'sutures-out: 2026-03-14'),
    });
    const { code, out } = await wheal(['open', '.', ...asOf('2026-03-17')], { cwd });
    assert.deepEqual([code, out], [0, 'Nothing is open in 1 note as of 2026-03-17.\n']);
  });

  it('writes CSV whose cells no spreadsheet takes for a formula', async () => {
    const cwd = folder({
      'a.wheal.yaml': note('', '"=1+1"').replace('left upper back', '"@SUM(A1), left\\nback"'),
    });
    const { out } = await wheal(['open', '.', '--format', 'csv', ...asOf('2026-03-17')], { cwd });
    const rows = out.trimEnd().split('\r\n');
    assert.equal(rows.length, 3);
    for (const row of rows.slice(1)) {
      assert.match(row, /,'=1\+1,/);
      assert.match(row, /"'@SUM\(A1\), left back"/);
    }
  });

  describe('with a folder for what it read', () => {
    const run = async (cwd: string, day: string): Promise<string> =>
      (await wheal(['open', '.', '--format', 'json', ...asOf(day)], { cwd, cache: 'kept' })).out;
    const plainly = async (cwd: string, day: string): Promise<string> =>
      (await wheal(['open', '.', '--format', 'json', ...asOf(day)], { cwd })).out;

    it('says the same as without, on any day, and after any change', async () => {
      const cwd = folder(files);
      const days = ['2026-03-17', '2026-03-05', '2027-01-01', '2026-03-17'];
      for (const day of days) assert.equal(await run(cwd, day), await plainly(cwd, day), day);
      writeFileSync(
        join(cwd, 'b.wheal.yaml'),
        note(', result: {received: 2026-03-16, diagnosis: nevus, told: 2026-03-17}', 'C-2'),
      );
      for (const day of days) assert.equal(await run(cwd, day), await plainly(cwd, day), day);
      writeFileSync(join(cwd, 'practice.wheal.yaml'), 'overdue: {result: 3}\n');
      for (const day of days) assert.equal(await run(cwd, day), await plainly(cwd, day), day);
      writeFileSync(join(cwd, 'practice.wheal.yaml'), 'holidays: feasts.ics\n');
      for (const date of ['20260306', '20260309']) {
        const event = `BEGIN:VEVENT\nDTSTART;VALUE=DATE:${date}\nEND:VEVENT\n`;
        const more = date === '20260309' ? event.replace(date, '20260310') : '';
        writeFileSync(join(cwd, 'feasts.ics'), `BEGIN:VCALENDAR\n${event}${more}END:VCALENDAR\n`);
        for (const day of days) assert.equal(await run(cwd, day), await plainly(cwd, day), `${date} ${day}`);
      }
      rmSync(join(cwd, 'a.wheal.yaml'));
      for (const day of days) assert.equal(await run(cwd, day), await plainly(cwd, day), day);
    });

    it('keeps what it read, and nothing of notes that are gone', async () => {
      const cwd = folder(files);
      const kept = (): string =>
        readFileSync(join(cwd, 'kept', readdirSync(join(cwd, 'kept'))[0] ?? ''), 'utf8');
      await run(cwd, '2026-03-17');
      const first = kept();
      await run(cwd, '2026-03-17');
      assert.equal(kept(), first);
      rmSync(join(cwd, 'a.wheal.yaml'));
      await run(cwd, '2026-03-17');
      assert.equal(kept().split('\n').length, first.split('\n').length - 1);
    });

    it('takes nothing from a file that is not whole', async () => {
      const cwd = folder(files);
      await run(cwd, '2026-03-17');
      const [name = ''] = readdirSync(join(cwd, 'kept'));
      const path = join(cwd, 'kept', name);
      const text = readFileSync(path, 'utf8');
      for (const broken of [text.slice(0, -20), text.replace('2026-03-16', '2036-03-16'), 'nonsense', '']) {
        writeFileSync(path, broken);
        assert.equal(await run(cwd, '2026-03-17'), await plainly(cwd, '2026-03-17'));
      }
    });

    it('keeps nothing where nobody names a folder', async () => {
      const cwd = folder(files);
      const before = readdirSync(cwd);
      await plainly(cwd, '2026-03-17');
      assert.deepEqual(readdirSync(cwd), before);
    });
  });
});

describe('wheal requisition and wheal specimens', () => {
  it('write the request, and point at errors of the note', async () => {
    const cwd = folder({
      'a.wheal.yaml': note(''),
      'b.wheal.yaml': note('').replace('formalin', 'formalin, tests: [DIF]'),
    });
    const right = await wheal(['requisition', 'a.wheal.yaml'], { cwd });
    assert.equal(right.err, '');
    assert.match(right.out, /Chart number: +C-1/);
    const wrong = await wheal(['requisition', 'b.wheal.yaml', '--format', 'html'], { cwd });
    assert.equal(wrong.code, 1);
    assert.match(wrong.err, /has errors/);
    assert.match(wrong.out, /^<!DOCTYPE html>/);
  });

  it('answer 2 where there is nothing to request', async () => {
    const cwd = folder({
      'a.wheal.yaml': note('').replace(/specimen: \{.*\}/, 'specimen: not sent, skin tag'),
    });
    assert.equal((await wheal(['requisition', 'a.wheal.yaml'], { cwd })).code, 2);
  });

  it('list the day', async () => {
    const cwd = folder({ 'a.wheal.yaml': note(''), 'b.wheal.yaml': note('', 'C-2') });
    const { code, out } = await wheal(['specimens', '.'], { cwd });
    assert.equal(code, 0);
    assert.match(out, /Containers to send: 2\. sent: 2/);
  });
});

describe('a calendar that replaces another', () => {
  const sewn = `note-id: 5d1f
visit: 2026-03-02
patient: {id: C-1}
procedures:
  - site: chin
    method: punch
    closure: {material: nylon, size: 5-0, count: 2}
    specimen: not sent, reason given
`;
  const ics = ['schedule', 'a.wheal.yaml', '--format', 'ics', '--as-of', '2026-03-03'];

  it('cancels what vanished, and keeps an entry whose label, site or time was corrected', async () => {
    const cwd = folder({ 'a.wheal.yaml': sewn });
    const old = (
      await wheal([...ics, '--out', 'old.ics'], { cwd, now: () => new Date('2026-03-02T10:05:00Z') })
    ).code;
    assert.equal(old, 0);
    const uids = (text: string): readonly string[] => text.match(/^UID:.*$/gm) ?? [];
    const first = readFileSync(join(cwd, 'old.ics'), 'utf8');
    assert.ok(!first.includes('UID:C-1') && uids(first).length > 0);
    writeFileSync(
      join(cwd, 'a.wheal.yaml'),
      sewn.replace('2026-03-02\n', '2026-03-02 10:05\n').replace('chin', 'the chin'),
    );
    assert.deepEqual(uids((await wheal([...ics, '--replaces', 'old.ics'], { cwd })).out), uids(first));
    writeFileSync(join(cwd, 'a.wheal.yaml'), sewn.replace(/ {4}closure.*\n/, '    closure: none\n'));
    const { out } = await wheal([...ics, '--replaces', 'old.ics'], { cwd });
    assert.match(out, /STATUS:CANCELLED/);
    assert.equal((await wheal(['schedule', 'a.wheal.yaml', '--replaces', 'old.ics'], { cwd })).code, 2);
    assert.equal((await wheal([...ics, '--replaces', 'none.ics'], { cwd })).code, 2);
  });

  it('is not written where nothing falls due, and that is said', async () => {
    const cwd = folder({ 'a.wheal.yaml': 'visit: 2026-03-02\npatient: {id: C-1}\nprocedures: []\n' });
    const { code, out, err } = await wheal([...ics, '--out', 'a.ics'], { cwd });
    assert.equal(code, 0);
    assert.equal(out, '');
    assert.match(err, /nothing falls due, so no calendar was written/);
    assert.ok(!existsSync(join(cwd, 'a.ics')));
  });
});
