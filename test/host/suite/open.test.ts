/** What is open over all notes: how it is looked at, how it is shown, and how a row that says it is done gets written. */
import * as vscode from 'vscode';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { OpenList, type OpenHome } from '../../../src/editor/open-items/list.ts';
import { OpenStore } from '../../../src/editor/open-items/store.ts';
import { headingsOf, rowsBelow, treeItemOf, type OpenRow } from '../../../src/editor/open-items/tree.ts';
import { localDate } from '../../../src/editor/host/clock.ts';
import { readNote, readPractice } from '../../../src/note/read.ts';
import { referenceTables, tablesOf } from '../../../src/practice/tables.ts';
import { closeAll, equal, inWorkspace, ok, open, pause, until } from './help.ts';
import { Memory } from './memory.ts';

const { fs } = vscode.workspace;
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const today = '2026-03-20';

/** A note in which something is open, or nothing, by its number. */
function noteOf(number: number): string {
  const ends = [
    'sent: 2026-03-02',
    'sent: 2026-03-02\n      results: [{received: 2026-03-09, diagnosis: nevus}]',
    'sent: 2026-03-02\n      results: [{received: 2026-03-09, diagnosis: melanoma}]',
    'sent: 2026-03-02\n      results: [{received: 2026-03-09, diagnosis: nevus, told: 2026-03-10, next: none needed}]',
  ];
  return `wheal: 1 # invented
visit: 2026-03-02 10:05
clinician: K.O.
patient: {id: C-${number}, born: 1961-08-09, weight: 62 kg, allergies: none, implants: none}
consent: written
procedures:
  - site: left upper back
    landmarks: 4 cm from midline, 9 cm below the hairline
    lesion: brown-black macule 7 mm, irregular border
    question: rule out melanoma
    method: shave
    size: 9 x 8 mm
    depth: mid dermis
    preparation: isopropyl alcohol
    anesthetic:
      - agent: lidocaine
        concentration: 1%
        epinephrine: 1:100,000
        volume: 1.5 mL
    hemostasis: [aluminum chloride, pressure]
    closure: none
    specimen:
      label: A
      medium: formalin
      tests: [routine histology]
      ${ends[number % ends.length]!}
    dressing: [petrolatum, gauze, paper tape]
    complications: none
`;
}

/** A file system that knows which notes were read. */
class Counted extends Memory {
  readonly reads: string[] = [];

  override readFile(uri: vscode.Uri): Uint8Array {
    if (uri.path.endsWith('.wheal.yaml') && uri.path !== '/practice.wheal.yaml') this.reads.push(uri.path);
    return super.readFile(uri);
  }
}

const scheme = 'opentest';
const root = vscode.Uri.from({ scheme, path: '/' });
const at = (name: string): vscode.Uri => vscode.Uri.joinPath(root, name);
const none = { tables: referenceTables, text: '', trust: {}, uri: undefined };

describe('the list of what is open', () => {
  let memory: Counted;
  let registered: vscode.Disposable;
  const lists: OpenList[] = [];

  const begin = (count: number): void => {
    memory = new Counted(new Map());
    for (let number = 0; number < count; number++)
      memory.writeFile(at(`n${String(number).padStart(5, '0')}.wheal.yaml`), bytes(noteOf(number)));
    registered = vscode.workspace.registerFileSystemProvider(scheme, memory);
  };

  const listOf = (more: Partial<OpenHome> = {}): OpenList => {
    const list = new OpenList({
      folders: () => [root],
      practices: { of: () => Promise.resolve(none) },
      store: new OpenStore(at('store')),
      version: '1',
      today: () => today,
      ...more,
    });
    lists.push(list);
    return list;
  };

  const brief = ({ state }: OpenList): readonly string[] =>
    state.items.map(({ path, group }) => `${vscode.Uri.parse(path).path.slice(1, 7)} ${group}`);

  afterEach(() => {
    for (const list of lists.splice(0)) list.dispose();
    registered.dispose();
  });

  it('is that of the notes below a folder, the loudest first', async () => {
    begin(4);
    const list = listOf();
    await list.lookAtAll();
    equal(brief(list), ['n00002 tell', 'n00001 tell', 'n00000 results']);
    equal([list.state.notes, list.state.looking, list.state.stopped], [4, undefined, undefined]);
  });

  it('is there at once the next time, and then each file is looked at again', async () => {
    begin(4);
    await listOf().lookAtAll();
    memory.writeFile(at('n00001.wheal.yaml'), bytes(noteOf(3).replace('C-3', 'C-1')));
    await fs.delete(at('n00002.wheal.yaml'));
    memory.reads.length = 0;
    const list = listOf();
    const first = new Promise<readonly string[]>((resolve) => {
      list.onDidChange(() => {
        if (list.state.items.length > 0 && memory.reads.length === 0) resolve(brief(list));
      });
    });
    const done = list.lookAtAll();
    equal(await first, ['n00002 tell', 'n00001 tell', 'n00000 results']);
    await done;
    equal(brief(list), ['n00000 results']);
  });

  it('believes nothing that was kept by another version, by another practice file, or is damaged', async () => {
    begin(1);
    const practice = 'overdue:\n  result: 3\n';
    const own = { ...none, text: practice, tables: tablesOf(readPractice(practice).value) };
    const overdue = async (more: Partial<OpenHome>): Promise<string | undefined> => {
      const list = listOf(more);
      await list.lookAtAll();
      return list.state.items[0]?.to;
    };
    equal(await overdue({}), '2026-03-16');
    equal(await overdue({ practices: { of: () => Promise.resolve(own) } }), '2026-03-05');
    equal(await overdue({}), '2026-03-16');
    const kept = await new OpenStore(at('store')).load();
    equal(kept.size, 1);
    const file = at('store/open-notes.txt');
    const text = new TextDecoder().decode(await fs.readFile(file));
    await fs.writeFile(file, bytes(text.replace('2026-03-16', '2027-03-16')));
    equal((await new OpenStore(at('store')).load()).size, 0);
    equal(await overdue({ version: '2' }), '2026-03-16');
  });

  it('reads one file again when one has changed, and no other', async () => {
    begin(40);
    const list = listOf();
    await list.lookAtAll();
    equal(memory.reads.length, 40);
    memory.reads.length = 0;
    memory.writeFile(at('n00000.wheal.yaml'), bytes(noteOf(3).replace('C-3', 'C-0')));
    await list.lookAt(at('n00000.wheal.yaml'));
    equal(memory.reads, ['/n00000.wheal.yaml']);
    equal(brief(list).includes('n00000 results'), false);
    equal(list.state.items.length, 29);
  });

  it('keeps what can’t be read as something to look at, and forgets what is gone', async () => {
    begin(4);
    const list = listOf();
    await list.lookAtAll();
    memory.writeFile(at('n00000.wheal.yaml'), new Uint8Array([0xff, 0xfe, 0]));
    await list.lookAt(at('n00000.wheal.yaml'));
    memory.delete(at('n00002.wheal.yaml'));
    await list.lookAt(at('n00002.wheal.yaml'));
    equal(brief(list), ['n00000 look', 'n00001 tell']);
    await list.forget(at('n00001.wheal.yaml'));
    equal(brief(list), ['n00000 look']);
  });

  it('leaves the editor its turns while 2,000 notes are looked at, and stops when it is told to', async () => {
    begin(2000);
    let pauses = 0;
    const counted = {
      now: () => performance.now(),
      pause: () => {
        pauses += 1;
        return new Promise<void>((resolve) => setTimeout(resolve, 0));
      },
    };
    const list = listOf({ pace: counted });
    const began = performance.now();
    const { longest, turns } = await delaysDuring(() => list.lookAtAll());
    const took = performance.now() - began;
    const idle = await delaysDuring(() => pause(Math.min(took, 5000)));
    console.log(
      `suite|   2,000 notes in ${took.toFixed(0)} ms; the event loop waited at most ${longest.toFixed(1)} ms in ${turns} turns, and at most ${idle.longest.toFixed(1)} ms while nothing was done`,
    );
    equal([list.state.notes, list.state.items.length], [2000, 1500]);
    ok(pauses >= 10 && turns >= 10, `${pauses} pauses, ${turns} turns`);

    const other = listOf({ version: '2' });
    const stopped = other.lookAtAll();
    await until('a beginning', () => (other.state.looking?.done ?? 0) > 0);
    other.stop();
    await stopped;
    const { stopped: known, looking } = other.state;
    equal(looking, undefined);
    ok(known?.of === 2000 && known.done < 2000, JSON.stringify(known));
  });
});

interface Delays {
  /** In milliseconds. */
  readonly longest: number;
  readonly turns: number;
}

/** How long others wait for their turn while something is done. */
async function delaysDuring(work: () => Promise<unknown>): Promise<Delays> {
  const watch = { longest: 0, turns: 0, last: performance.now(), over: false };
  const tick = (): void => {
    const now = performance.now();
    watch.longest = Math.max(watch.longest, now - watch.last);
    watch.last = now;
    watch.turns += 1;
    if (!watch.over) setTimeout(tick, 0);
  };
  setTimeout(tick, 0);
  await work();
  watch.over = true;
  return watch;
}

describe('the view of what is open', () => {
  const name = 'open-view/a.wheal.yaml';
  let list: OpenList;

  beforeEach(async () => {
    await fs.writeFile(inWorkspace(name), bytes(noteOf(2)));
    list = new OpenList({
      folders: () => [inWorkspace('open-view')],
      practices: { of: () => Promise.resolve(none) },
      store: new OpenStore(undefined),
      version: '1',
      today: () => localDate(new Date()),
    });
    await list.lookAtAll();
  });

  afterEach(async () => {
    list.dispose();
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
    await fs.delete(inWorkspace('open-view'), { recursive: true });
  });

  const rows = (): readonly OpenRow[] => headingsOf(list.state.items);
  const only = (): OpenRow => rowsBelow(rows()[0]!)[0]!;

  it('has its rows below what is to be done, each with its words for eye and ear', () => {
    equal(
      rows().map((row) => treeItemOf(row).label),
      ['Patients to be told'],
    );
    const row = treeItemOf(only());
    equal(row.label, 'C-2');
    ok(
      /^cannot wait, \d+ days overdue; specimen A, left upper back/.test(String(row.description)),
      String(row.description),
    );
    equal((row.iconPath as vscode.ThemeIcon).id, 'error');
    const spoken = row.accessibilityInformation!.label;
    ok(
      spoken.includes('C-2') && spoken.includes('overdue') && spoken.includes('Patients to be told'),
      spoken,
    );
  });

  it('puts what is too much below a row of its own', () => {
    const item = list.state.items[0]!;
    const [heading] = headingsOf(Array.from({ length: 450 }, () => item));
    const first = rowsBelow(heading!);
    const second = rowsBelow(first.at(-1)!);
    equal([first.length, second.length, rowsBelow(second.at(-1)!).length], [201, 201, 50]);
    const ids = [...first, ...second].map((row) => treeItemOf(row).id);
    equal(new Set(ids).size, ids.length);
  });

  it('opens the note at the row of the item', async () => {
    const { command } = treeItemOf(only());
    await vscode.commands.executeCommand(command!.command, ...(command!.arguments as unknown[]));
    const editor = await until('the note', () => vscode.window.activeTextEditor);
    ok(editor!.document.uri.path.endsWith(name), editor!.document.uri.path);
    ok(
      editor!.document.lineAt(editor!.selection.active).text.includes('received: 2026-03-09'),
      editor!.document.lineAt(editor!.selection.active).text,
    );
  });

  it('is looked at and stopped by commands', async () => {
    await vscode.commands.executeCommand('wheal.showOpen');
    await vscode.commands.executeCommand('wheal.lookAgain');
    await vscode.commands.executeCommand('wheal.stopLooking');
  });

  it('writes what was done into the note: what was chosen, and ?? for what nobody said', async () => {
    const row = only();
    ok(row.kind === 'item', row.kind);
    const before = noteOf(2);
    // Today, by telephone, and nobody says who: the first that is offered, twice, and nothing typed.
    const asked = vscode.commands.executeCommand('wheal.recordDone', row);
    const document = (await until('the note', () => vscode.window.activeTextEditor))!.document;
    await until('the row', async () => {
      await pause(300);
      await vscode.commands.executeCommand('workbench.action.acceptSelectedQuickOpenItem');
      return document.getText() !== before;
    });
    await asked;
    const day = localDate(new Date());
    equal(
      document.getText(),
      before.replace('melanoma}', `melanoma, told: {on: ${day}, by: ??, how: telephone}}`),
    );
    equal(document.getText(vscode.window.activeTextEditor!.selection), '??');
    equal(document.isDirty, true);
    await vscode.commands.executeCommand('undo');
    await until('the note as it was', () => document.getText() === before);
  });
});

describe('a signature', () => {
  afterEach(async () => {
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await closeAll();
  });

  it('shows what was changed later, and goes there', async () => {
    const text = noteOf(2);
    const edit = signatureEdit(readNote(text), 'K.O.', '2026-03-02 16:40');
    ok(typeof edit !== 'string', 'it was not signed');
    const signed = (text + edit.text).replace('1.5 mL', '2.5 mL');
    await fs.writeFile(inWorkspace('signed.wheal.yaml'), bytes(signed));
    const editor = await open('signed.wheal.yaml');
    try {
      // Two things that it can't do in silence: signing over it, and hiding the change.
      void vscode.commands.executeCommand('wheal.signNote');
      await pause(1000);
      equal(editor.document.getText(), signed);
      const asked = vscode.commands.executeCommand('wheal.verifyNote');
      await until('the row', async () => {
        await pause(300);
        await vscode.commands.executeCommand('workbench.action.acceptSelectedQuickOpenItem');
        return editor.selection.active.line > 0;
      });
      await asked;
      ok(
        editor.document.lineAt(editor.selection.active).text.includes('site: left upper back'),
        editor.document.lineAt(editor.selection.active).text,
      );
    } finally {
      await closeAll();
      await fs.delete(inWorkspace('signed.wheal.yaml'));
    }
  });
});
