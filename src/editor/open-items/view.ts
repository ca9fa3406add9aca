import * as vscode from 'vscode';
import { builtFrom } from '../../followup/kept-facts.ts';
import { localDate } from '../host/clock.ts';
import { OpenList, type OpenState } from './list.ts';
import { OpenStore } from './store.ts';
import { headingsOf, rowsBelow, treeItemOf, type OpenRow } from './tree.ts';
import { watchFor } from './watch.ts';
import type { Practices } from '../host/practices.ts';

/** What was kept is believed only by the code that kept it; code that was not built believes nothing. */
const keptBy = builtFrom ?? crypto.randomUUID();

/** Milliseconds in which whoever opens the view still waits for its first rows. */
const patience = 3000;

/**
 * The view of what is open over all notes of the workspace. Nothing is looked at before somebody opens it; from then
 * on it follows what changes.
 */
export class OpenView implements vscode.Disposable {
  private readonly list: OpenList;
  private readonly tree: vscode.TreeView<OpenRow>;
  private readonly redrawn = new vscode.EventEmitter<undefined>();
  private readonly subscriptions: { dispose: () => unknown }[];
  private drawn: OpenState['items'] | undefined;
  private following = false;

  constructor(
    { storageUri }: Pick<vscode.ExtensionContext, 'storageUri'>,
    private readonly practices: Practices,
  ) {
    this.list = new OpenList({
      folders: () => (vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri),
      practices,
      store: new OpenStore(storageUri),
      version: keptBy,
      today: () => localDate(new Date()),
    });
    this.tree = vscode.window.createTreeView('wheal.open', {
      treeDataProvider: {
        onDidChangeTreeData: this.redrawn.event,
        getTreeItem: treeItemOf,
        getChildren: (row?: OpenRow) => [
          ...(row === undefined ? headingsOf(this.list.state.items) : rowsBelow(row)),
        ],
      },
    });
    this.subscriptions = [
      this.redrawn,
      this.tree,
      this.list,
      this.list.onDidChange(() => {
        this.draw();
      }),
      this.tree.onDidChangeVisibility(() => {
        this.begin();
      }),
    ];
    this.draw();
    this.begin();
  }

  /** The row on which the view is. */
  get selected(): OpenRow | undefined {
    return this.tree.selection[0];
  }

  /** Shows the view, and puts the focus into it: again once there is something in it, since an empty tree takes none. */
  async show(): Promise<void> {
    const focus = (): Thenable<unknown> => vscode.commands.executeCommand('wheal.open.focus');
    await focus();
    if (this.list.state.items.length > 0 || !(await this.hasRows())) return;
    await focus();
  }

  /** Waits a moment for the first lines; false where none have come. */
  private hasRows(): Promise<boolean> {
    return new Promise((resolve) => {
      const ended = (has: boolean): void => {
        waiting.dispose();
        clearTimeout(timer);
        resolve(has);
      };
      const waiting = this.list.onDidChange(() => {
        if (this.list.state.items.length > 0) ended(true);
      });
      const timer = setTimeout(() => {
        ended(false);
      }, patience);
    });
  }

  /** Looks at every note again, and follows what changes from then on. */
  lookAgain(): void {
    if (!this.following) this.subscriptions.push(watchFor(this.list, this.practices));
    this.following = true;
    void vscode.window.withProgress({ location: { viewId: 'wheal.open' } }, () => this.list.lookAtAll());
  }

  stop(): void {
    this.list.stop();
  }

  dispose(): void {
    vscode.Disposable.from(...this.subscriptions).dispose();
  }

  private begin(): void {
    if (!this.tree.visible) return;
    if (this.following) void this.list.refresh();
    else this.lookAgain();
  }

  private draw(): void {
    const { state } = this.list;
    this.tree.message = messageOf(state);
    this.tree.description = this.following ? vscode.l10n.t('as of {0}', state.asOf) : '';
    void context('looking', state.looking !== undefined);
    void context('state', this.following ? stateOf(state) : 'unknown');
    if (state.items === this.drawn) return;
    this.drawn = state.items;
    this.redrawn.fire(undefined);
  }
}

const context = (name: string, value: unknown): Thenable<unknown> =>
  vscode.commands.executeCommand('setContext', `wheal.open.${name}`, value);

/** Which words are in the place of an empty list. */
function stateOf({ looking, stopped, notes, items }: OpenState): string {
  if (looking !== undefined || stopped !== undefined) return 'looking';
  if (notes === 0) return 'none';
  return items.length === 0 ? 'clear' : 'open';
}

/** What is said above the list; nothing where the list says it all. */
function messageOf({ looking, stopped, tooMany, notes }: OpenState): string {
  const { l10n } = vscode;
  if (looking !== undefined)
    return looking.of === undefined
      ? l10n.t('Looking for notes…')
      : l10n.t('Checking notes: {0} of {1}.', looking.done, looking.of);
  if (stopped !== undefined)
    return stopped.of === undefined
      ? l10n.t('Stopped before any note was checked. What is shown is from the last check.')
      : l10n.t(
          'Stopped after {0} of {1} notes. Open items of the others are missing, or from the last check.',
          stopped.done,
          stopped.of,
        );
  return tooMany ? l10n.t('Only {0} notes are checked; there are more. Open a smaller folder.', notes) : '';
}
