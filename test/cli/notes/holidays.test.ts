import assert from 'node:assert/strict';
import { join } from 'node:path';
import { folder, wheal } from '../run.ts';

const note = `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09}
procedures:
  - site: left upper back
    method: punch
    closure: {material: nylon, size: 4-0, count: 2}
    sutures-due: 2026-03-13
`;
const feast =
  'BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART;VALUE=DATE:20260313\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n';

describe('a calendar of holidays beside the practice file', () => {
  const found = async (files: Readonly<Record<string, string>>): Promise<string> => {
    const cwd = folder({ 'a/note.wheal.yaml': note, ...files });
    return (await wheal(['check', join(cwd, 'a')], { cwd })).out;
  };

  it('closes its days for the notes below', async () => {
    const out = await found({
      'a/practice.wheal.yaml': 'name: Invented\nholidays: ../feasts.ics\n',
      'feasts.ics': feast,
    });
    assert.match(out, /closure\/removal-on-closed-day/);
    assert.doesNotMatch(out, /holidays-unread/);
  });

  it('is asked for where it is not there', async () => {
    const out = await found({ 'a/practice.wheal.yaml': 'name: Invented\nholidays: feasts.ics\n' });
    assert.doesNotMatch(out, /removal-on-closed-day/);
    assert.match(out, /feasts\.ics.*holidays-unread/);
  });
});
