import * as vscode from 'vscode';
import { sha256 } from '../host/digest.ts';
import { Caseload, factsOf, unreadFacts, type NoteFacts, type OpenItem } from '../../followup/caseload.ts';
import { factsOfRow, rowOfFacts } from '../../followup/kept-facts.ts';
import { inSlices, type Pace } from '../../followup/slices.ts';
import { readNote } from '../../note/read.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { pace, Timer } from '../host/clock.ts';
import { filesBelow, isPractice, load } from '../host/files.ts';
import type { KeptNote, OpenStore } from './store.ts';
import type { FoundPractice, Practices } from '../host/practices.ts';

/** Of more notes than this the first are looked at, and the list says so. */
const mostNotes = 50_000;
/** Milliseconds until the list follows while notes are looked at. */
const refreshing = 500;
/** Milliseconds after a change until what is known is kept. */
const keeping = 5000;
/** Milliseconds of searching after which others get their turn. */
const searching = 10;
/** How many files are asked for at once, since those of another machine take their time. */
const atOnce = 4;

/** What a list of open items works with. */
export interface OpenHome {
  readonly folders: () => readonly vscode.Uri[];
  readonly practices: Pick<Practices, 'of'>;
  readonly store: Pick<OpenStore, 'load' | 'save'>;
  /** Version of Wheal: what another one has read is read again. */
  readonly version: string;
  readonly today: () => IsoDate;
  readonly pace?: Pace;
}

/** How far looking at the notes has come. */
export interface Progress {
  readonly done: number;
  /** Undefined while the folders are searched. */
  readonly of: number | undefined;
}

/** What is open in all notes of some folders, and how much of that is known. */
export interface OpenState {
  readonly asOf: IsoDate;
  readonly items: readonly OpenItem[];
  readonly notes: number;
  /** Set while notes are looked at; what was known before is in the list meanwhile. */
  readonly looking: Progress | undefined;
  /** Set where somebody stopped it. */
  readonly stopped: Progress | undefined;
  /** Whether there are more notes than are looked at. */
  readonly tooMany: boolean;
}

/**
 * What is still open over the notes of folders. What was known the last time is there at once; then each file is looked
 * at in the background, and read only if its text, its practice file or this version is another. After that only files
 * that change are looked at.
 */
export class OpenList implements vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  /** The list, or how far it has come, is another. */
  readonly onDidChange = this.changed.event;

  private readonly caseload = new Caseload((path) => vscode.workspace.asRelativePath(vscode.Uri.parse(path)));
  private readonly known = new Map<string, KeptNote>();
  private readonly paths = new Set<string>();
  /** Practice files of which something that matters is not in force. */
  private readonly gaps = new Set<string>();
  /** Files that have changed or come since the folders were searched. */
  private readonly fresh = new Set<string>();
  private readonly bases = new WeakMap<FoundPractice, Promise<string>>();
  private readonly refreshTimer = new Timer();
  private readonly keepTimer = new Timer();
  private readonly pace: Pace;
  private recalled: Promise<void> | undefined;
  /** The look that is under way; another one takes its place. */
  private look: object | undefined;
  private drawing: Promise<void> | undefined;
  private drawAgain = false;
  private unkept = false;
  private current: OpenState;

  constructor(private readonly home: OpenHome) {
    this.pace = home.pace ?? pace;
    this.current = {
      ...{ asOf: home.today(), items: [], notes: 0 },
      ...{ looking: undefined, stopped: undefined, tooMany: false },
    };
  }

  get state(): OpenState {
    return this.current;
  }

  /** Looks at every file. Resolves when all were looked at, or somebody stopped it. */
  async lookAtAll(): Promise<void> {
    const mine = {};
    this.look = mine;
    this.fresh.clear();
    this.forgetGaps();
    const wanted = (): boolean => this.look === mine;
    this.say({ looking: { done: 0, of: undefined }, stopped: undefined });
    await (this.recalled ??= this.recall());
    const files = await this.find(wanted);
    if (files === undefined || !(await this.readAll(files, wanted))) return;
    const there = new Set(files.map(String));
    for (const path of [...this.paths]) if (!there.has(path) && !this.fresh.has(path)) this.drop(path);
    this.look = undefined;
    this.say({ looking: undefined });
    await this.refresh();
    await this.keep();
  }

  /** Stops looking; what is known by then stays in the list. */
  stop(): void {
    if (this.look === undefined) return;
    this.look = undefined;
    this.say({ looking: undefined, stopped: this.current.looking });
    void this.refresh();
  }

  /** Looks at one file again that has changed, or come. */
  async lookAt(uri: vscode.Uri): Promise<void> {
    this.fresh.add(uri.toString());
    await this.read(uri);
    await this.afterChange();
  }

  /** Forgets a file that is gone, or all notes of a folder that is. */
  async forget(uri: vscode.Uri): Promise<void> {
    const path = uri.toString();
    const gone = [...this.paths].filter((one) => one === path || one.startsWith(`${path}/`));
    if (gone.length === 0) return;
    for (const one of gone) this.drop(one);
    await this.afterChange();
  }

  /** Draws the list again: a day may have passed. */
  refresh(): Promise<void> {
    this.refreshTimer.clear();
    if (this.drawing !== undefined) {
      this.drawAgain = true;
      return this.drawing;
    }
    this.drawAgain = false;
    this.drawing = this.draw().finally(() => {
      this.drawing = undefined;
      return this.drawAgain ? this.refresh() : undefined;
    });
    return this.drawing;
  }

  dispose(): void {
    this.look = undefined;
    this.refreshTimer.clear();
    this.keepTimer.clear();
    this.changed.dispose();
  }

  private async draw(): Promise<void> {
    const asOf = this.home.today();
    const items = await this.caseload.openInSlices(asOf, this.pace);
    this.say({ asOf, items, notes: this.caseload.size - this.gaps.size });
  }

  private say(news: Partial<OpenState>): void {
    this.current = { ...this.current, ...news };
    this.changed.fire();
  }

  private async afterChange(): Promise<void> {
    await this.refresh();
    this.keepTimer.set(keeping, () => void this.keep());
  }

  private async keep(): Promise<void> {
    if (!this.unkept) return;
    this.unkept = false;
    await this.home.store.save(this.known);
  }

  /** Takes over what was known the last time. */
  private async recall(): Promise<void> {
    const today = this.home.today();
    const kept = await this.home.store.load();
    await inSlices(
      kept,
      ([path, { key, row }]) => {
        const facts = factsOfRow(row, today);
        if (facts !== undefined) this.take(path, { key, row }, facts);
      },
      this.pace,
    );
    this.unkept = false;
    await this.refresh();
  }

  /** Every note below the folders, each once; undefined where it is no longer wanted. */
  private async find(wanted: () => boolean): Promise<readonly vscode.Uri[] | undefined> {
    const found = new Map<string, vscode.Uri>();
    const { now, pause } = this.pace;
    let began = now();
    for (const folder of this.home.folders())
      for await (const uri of filesBelow(folder)) {
        if (!isPractice(uri) && found.size <= mostNotes) found.set(uri.toString(), uri);
        if (now() - began < searching) continue;
        await pause();
        if (!wanted()) return undefined;
        began = now();
      }
    if (!wanted()) return undefined;
    const files = [...found.values()].slice(0, mostNotes);
    this.say({ looking: { done: 0, of: files.length }, tooMany: found.size > mostNotes });
    return files;
  }

  private async readAll(files: readonly vscode.Uri[], wanted: () => boolean): Promise<boolean> {
    let done = 0;
    await inSlices(
      some(files, atOnce),
      async (batch) => {
        await Promise.all(batch.map((uri) => this.read(uri)));
        done += batch.length;
        if (!wanted()) return;
        this.current = { ...this.current, looking: { done, of: files.length } };
        if (!this.refreshTimer.isSet) this.refreshTimer.set(refreshing, () => void this.refresh());
      },
      { ...this.pace, wanted },
    );
    return wanted();
  }

  /** Reads a file, unless what it says is known. */
  private async read(uri: vscode.Uri): Promise<void> {
    const path = uri.toString();
    const loaded = await textOf(uri);
    if ('code' in loaded) {
      this.drop(path);
      if (loaded.code === 'yaml/unreadable' && !(await isListed(uri))) return;
      this.take(path, undefined, unreadFacts(whyNot[loaded.code] ?? 'it cannot be opened'));
      return;
    }
    const practice = await this.home.practices.of(uri);
    this.takeGap(practice);
    const key = await this.keyOf(practice, loaded.text);
    if (key !== undefined && this.known.get(path)?.key === key) return;
    const facts = factsOf(readNote(loaded.text), practice.tables);
    const row = rowOfFacts(facts);
    // As a line it takes less room than as facts.
    const kept = key === undefined ? undefined : { key, row };
    this.take(path, kept, factsOfRow(row, this.home.today()) ?? facts);
  }

  private take(path: string, kept: KeptNote | undefined, facts: NoteFacts): void {
    this.paths.add(path);
    this.caseload.set(path, facts);
    if (kept !== undefined) {
      this.known.set(path, kept);
      this.unkept = true;
    }
  }

  /** A practice file that is not in force is something to look at. */
  private takeGap({ uri, tables: { gap } }: FoundPractice): void {
    const path = uri?.toString();
    if (path === undefined || gap === undefined || this.gaps.has(path)) return;
    this.gaps.add(path);
    this.caseload.set(path, unreadFacts(gap.why));
  }

  private forgetGaps(): void {
    for (const path of this.gaps) this.caseload.delete(path);
    this.gaps.clear();
  }

  private drop(path: string): void {
    this.paths.delete(path);
    this.caseload.delete(path);
    if (this.known.delete(path)) this.unkept = true;
  }

  /** A digest of all that the facts of a note follow from; undefined where this browser can make none. */
  private async keyOf(practice: FoundPractice, text: string): Promise<string | undefined> {
    try {
      let basis = this.bases.get(practice);
      if (basis === undefined) {
        basis = sha256(JSON.stringify([this.home.version, practice.text, practice.trust]));
        this.bases.set(practice, basis);
      }
      return await sha256(`${await basis}\n${text}`);
    } catch {
      return undefined;
    }
  }
}

/** Why a file can't be read, by the code of the check that says so elsewhere. */
const whyNot: Readonly<Record<string, string>> = {
  'yaml/too-large': 'it is larger than a note can be (512 KiB)',
  'yaml/not-text': 'its text is not UTF-8',
};

/** The text of a note as it is in an editor, otherwise as it is in its file. */
async function textOf(uri: vscode.Uri): ReturnType<typeof load> {
  const path = uri.toString();
  const open = vscode.workspace.textDocuments.find((one) => !one.isClosed && one.uri.toString() === path);
  return open === undefined ? await load(uri) : { text: open.getText() };
}

/** Whether a file is there, be it a link that leads nowhere. */
async function isListed(uri: vscode.Uri): Promise<boolean> {
  const name = uri.path.slice(uri.path.lastIndexOf('/') + 1);
  try {
    await vscode.workspace.fs.stat(uri);
    return true;
  } catch {
    const beside = await vscode.workspace.fs
      .readDirectory(vscode.Uri.joinPath(uri, '..'))
      .then(undefined, () => []);
    return beside.some(([one]) => one === name);
  }
}

function* some<Item>(items: readonly Item[], count: number): Generator<readonly Item[]> {
  for (let at = 0; at < items.length; at += count) yield items.slice(at, at + count);
}
