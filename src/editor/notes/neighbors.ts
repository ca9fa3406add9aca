import * as vscode from 'vscode';
import { DayDoses } from '../../dose/day-doses.ts';
import { inSlices } from '../../followup/slices.ts';
import { ByPatient, chartKey } from '../../note/chart-numbers.ts';
import { pace } from '../host/clock.ts';
import { isNoteFile, isPractice, load, notesIn, watched } from '../host/files.ts';
import type { Practices } from '../host/practices.ts';

/** In a folder with more notes than this none is looked at, and every dose says so. */
const mostNotes = 20_000;

/**
 * The other notes in the folder of an open one, as far as they may be of the same patient, so that a dose counts over
 * the day as it does on the command line. A folder is read once, in the background; after that only what changes.
 */
export class Neighbors implements vscode.Disposable {
  private readonly folders = new Map<string, Folder>();
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  private readonly subscriptions: readonly { dispose: () => unknown }[];
  /** What the notes of a folder say has changed, or is known now. */
  readonly onDidChange = this.changed.event;

  constructor(private readonly practices: Practices) {
    const look = (uri: vscode.Uri): void => {
      if (isNoteFile(uri)) this.folders.get(folderOf(uri).toString())?.look(uri);
    };
    this.subscriptions = [
      this.changed,
      ...watched('*.wheal.yaml', look),
      // Not every file system mentions changes.
      vscode.workspace.onDidSaveTextDocument(({ uri }) => {
        look(uri);
      }),
      practices.onDidChange(() => {
        for (const folder of this.folders.values()) folder.recount();
      }),
    ];
  }

  /**
   * What the notes of a note's folder say was given to a patient. Undefined where nobody looks: outside of the
   * workspace, in a note without a file, and until the folder has been read.
   */
  daysOf(note: vscode.Uri, patient: string): DayDoses | undefined {
    if (note.scheme === 'untitled' || vscode.workspace.getWorkspaceFolder(note) === undefined)
      return undefined;
    const uri = folderOf(note);
    const key = uri.toString();
    let folder = this.folders.get(key);
    if (folder === undefined) {
      folder = new Folder(uri, this.practices, () => {
        this.changed.fire(uri);
      });
      this.folders.set(key, folder);
    }
    return folder.daysOf(note.toString(), patient);
  }

  dispose(): void {
    for (const folder of this.folders.values()) folder.dispose();
    vscode.Disposable.from(...this.subscriptions).dispose();
  }
}

export const folderOf = (note: vscode.Uri): vscode.Uri => vscode.Uri.joinPath(note, '..');

/** The notes of one folder. */
class Folder {
  private readonly byPatient = new ByPatient();
  /** What was given to a patient, once somebody has asked; undefined until it has been read. */
  private readonly doses = new Map<string, DayDoses | undefined>();
  /** What is done to the folder, one thing after the other. */
  private work: Promise<void>;
  private isKnown = false;
  private isOver = false;

  constructor(
    uri: vscode.Uri,
    private readonly practices: Practices,
    private readonly changed: () => void,
  ) {
    this.work = this.readAll(uri);
  }

  daysOf(note: string, patient: string): DayDoses | undefined {
    if (!this.isKnown) return undefined;
    const paths = [...this.byPatient.of(patient)];
    if (paths.every((path) => path === note)) return nobody;
    const key = chartKey(patient);
    if (!this.doses.has(key)) {
      this.doses.set(key, undefined);
      this.next(() => this.readDoses([key]));
    }
    return this.doses.get(key);
  }

  /** Reads a note again that has changed, come or gone. */
  look(uri: vscode.Uri): void {
    this.next(async () => {
      const loaded = await load(uri);
      const concerned = this.byPatient.set(uri.toString(), 'text' in loaded ? loaded.text : undefined);
      if (this.isKnown) await this.readDoses([...concerned].filter((key) => this.doses.has(key)));
    });
  }

  /** Counts again by other tables. */
  recount(): void {
    this.next(() => this.readDoses([...this.doses.keys()]));
  }

  dispose(): void {
    this.isOver = true;
  }

  private next(work: () => Promise<void>): void {
    this.work = this.work.then(() => (this.isOver ? undefined : work()));
  }

  private async readAll(uri: vscode.Uri): Promise<void> {
    const notes = await notesIn(uri);
    if (notes.length > mostNotes) return;
    await takeAllIn(notes, this.byPatient, () => !this.isOver);
    this.isKnown = true;
    this.changed();
  }

  private async readDoses(keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      const days = new DayDoses();
      const wanted = (): boolean => !this.isOver;
      await inSlices(this.byPatient.of(key), (path) => addTo(days, path, this.practices), {
        ...pace,
        wanted,
      });
      this.doses.set(key, days);
    }
    this.changed();
  }
}

const nobody = new DayDoses();

/** How many notes are asked for at once: most of the time goes by in waiting for them. */
const atOnce = 16;

async function takeAllIn(
  notes: readonly vscode.Uri[],
  byPatient: ByPatient,
  wanted: () => boolean,
): Promise<void> {
  const groups = Array.from({ length: Math.ceil(notes.length / atOnce) }, (_, at) =>
    notes.slice(at * atOnce, (at + 1) * atOnce),
  );
  const takeGroup = async (group: readonly vscode.Uri[]): Promise<void> => {
    await Promise.all(group.map((note) => takeIn(note, byPatient)));
  };
  await inSlices(groups, takeGroup, { ...pace, wanted });
}

async function takeIn(note: vscode.Uri, byPatient: ByPatient): Promise<void> {
  const loaded = await load(note);
  if ('text' in loaded) byPatient.set(note.toString(), loaded.text);
}

async function addTo(days: DayDoses, path: string, practices: Practices): Promise<void> {
  const uri = vscode.Uri.parse(path, true);
  const loaded = await load(uri);
  if ('text' in loaded) days.read(path, loaded.text, (await practices.of(uri)).tables);
}

/**
 * What notes among files say was given, for those that may share a patient; undefined where there is only one note, so
 * that none was compared.
 */
export async function dayDosesOf(
  files: readonly vscode.Uri[],
  practices: Practices,
  token: vscode.CancellationToken,
): Promise<DayDoses | undefined> {
  const notes = files.filter((uri) => !isPractice(uri));
  if (notes.length < 2) return undefined;
  const wanted = (): boolean => !token.isCancellationRequested;
  const byPatient = new ByPatient();
  await takeAllIn(notes, byPatient, wanted);
  const days = new DayDoses();
  await inSlices(byPatient.shared, (path) => addTo(days, path, practices), { ...pace, wanted });
  return days;
}
