/** What a note is judged by beside itself: other notes of the same patient and day, and the practice's holidays. */
import * as vscode from 'vscode';
import { closeAll, codes, equal, finding, inWorkspace, ok, open, pause, until } from './help.ts';

const code = 'dose/over-limit';
const onClosedDay = 'closure/removal-on-closed-day';
const { fs } = vscode.workspace;

async function textOf(uri: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await fs.readFile(uri));
}

const write = (uri: vscode.Uri, text: string): Thenable<void> =>
  fs.writeFile(uri, new TextEncoder().encode(text));

describe('a note among others', () => {
  afterEach(closeAll);

  it('counts what the others of its folder say was given on that day, and follows them', async () => {
    const [first, second] = ['first', 'second'].map((name) => inWorkspace(`one-day/${name}.wheal.yaml`)) as [
      vscode.Uri,
      vscode.Uri,
    ];
    const small = await textOf(second);
    try {
      const { document } = await open('one-day/first.wheal.yaml');
      await finding(first, 'follow-up/specimen-not-sent');
      equal(codes(first).includes(code), false);
      // 200 mg here and 200 mg there: 279 mg is the limit.
      await write(second, small.replace('5 mL', '20 mL'));
      const { range, message } = await finding(first, code);
      equal(document.getText(range), '20 mL');
      ok(message.includes('another note of this patient'), message);
      await write(second, small);
      await until('the finding to go', () => !codes(first).includes(code));
      await write(second, small.replace('5 mL', '20 mL').replace('C-77', 'C-79'));
      await pause(1000);
      equal(codes(first).includes(code), false);
      await fs.delete(second);
      await write(inWorkspace('one-day/third.wheal.yaml'), small.replace('5 mL', '20 mL'));
      await finding(first, code);
      await fs.delete(inWorkspace('one-day/third.wheal.yaml'));
      await until('the finding to go', () => !codes(first).includes(code));
    } finally {
      await write(second, small);
    }
  });

  it('counts with them when a whole folder is checked', async () => {
    const second = inWorkspace('one-day/second.wheal.yaml');
    const small = await textOf(second);
    try {
      await write(second, small.replace('5 mL', '20 mL'));
      // Its closing message waits for an answer.
      void vscode.commands.executeCommand('wheal.checkFolder', inWorkspace('one-day'));
      await finding(inWorkspace('one-day/first.wheal.yaml'), code);
      await finding(second, code);
    } finally {
      await write(second, small);
    }
  });

  it('knows the holidays that its practice names, and follows their calendar', async () => {
    const calendar = inWorkspace('with-holidays/feasts.ics');
    const text = await textOf(calendar);
    const { document } = await open('with-holidays/stitches.wheal.yaml');
    try {
      const { range } = await finding(document.uri, onClosedDay);
      equal(document.getText(range), '2026-03-13');
      await write(calendar, text.replace('20260313', '20260316'));
      await until('the finding to go', () => !codes(document.uri).includes(onClosedDay));
      const practice = await open('with-holidays/practice.wheal.yaml');
      await pause(500);
      equal(codes(practice.document.uri), []);
    } finally {
      await write(calendar, text);
    }
  });

  it('takes no calendar from outside of the workspace', async () => {
    const practice = inWorkspace('with-holidays/practice.wheal.yaml');
    const text = await textOf(practice);
    try {
      await write(practice, text.replace('feasts.ics', '../../feasts.ics'));
      await open('with-holidays/practice.wheal.yaml');
      const { message } = await finding(practice, 'practice/holidays-unread');
      ok(message.includes('../../feasts.ics'), message);
    } finally {
      await write(practice, text);
    }
  });
});
