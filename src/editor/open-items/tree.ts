import * as vscode from 'vscode';
import { openBrief, openHeadings, openText } from '../../documents/open-list/open-list.ts';
import { plain } from '../../documents/one-line.ts';
import { groupOrder, type OpenGroup, type OpenItem } from '../../followup/caseload.ts';

interface OfGroup {
  readonly group: OpenGroup;
  readonly items: readonly OpenItem[];
  /** Index of the first item that is below. */
  readonly from: number;
}

/** What is on one row of the view: a heading, what did not fit below it, or an open item. */
export type OpenRow =
  | (OfGroup & { readonly kind: 'heading' | 'more' })
  | { readonly kind: 'item'; readonly item: OpenItem; readonly place: string };

/** Of a longer group the rest is below a line of its own: an editor draws thousands of lines slowly. */
const shownAtOnce = 200;

/** The headings under which there is something to do. */
export function headingsOf(items: readonly OpenItem[]): readonly OpenRow[] {
  const groups = new Map<OpenGroup, OpenItem[]>();
  for (const item of items) {
    const same = groups.get(item.group);
    if (same === undefined) groups.set(item.group, [item]);
    else same.push(item);
  }
  return groupOrder.flatMap((group): OpenRow[] => {
    const own = groups.get(group);
    return own === undefined ? [] : [{ kind: 'heading', group, items: own, from: 0 }];
  });
}

/** The lines below a line. */
export function rowsBelow(row: OpenRow): readonly OpenRow[] {
  if (row.kind === 'item') return [];
  const { group, items, from } = row;
  const to = Math.min(from + shownAtOnce, items.length);
  const rows = items
    .slice(from, to)
    // By its number, so that what follows takes the place of what is done, and the caret of the list stays.
    .map((item, at): OpenRow => ({ kind: 'item', item, place: `${group} ${from + at}` }));
  return to === items.length ? rows : [...rows, { kind: 'more', group, items, from: to }];
}

/** A line as the editor shows it and as a screen reader says it. */
export function treeItemOf(row: OpenRow): vscode.TreeItem {
  return row.kind === 'item' ? itemRow(row.item, row.place) : groupRow(row);
}

function groupRow({ kind, group, items, from }: OfGroup & { readonly kind: string }): vscode.TreeItem {
  const isHeading = kind === 'heading';
  const below = items.slice(from);
  const counts = countsOf(below.length, below.filter(({ state }) => state === 'overdue').length);
  const title = isHeading ? openHeadings[group] : vscode.l10n.t('More');
  const row = new vscode.TreeItem(
    title,
    isHeading ? vscode.TreeItemCollapsibleState.Expanded : vscode.TreeItemCollapsibleState.Collapsed,
  );
  row.id = isHeading ? group : `${group} more ${from}`;
  row.description = counts;
  row.accessibilityInformation = { label: `${title}: ${counts}` };
  row.contextValue = 'wheal.group';
  return row;
}

function countsOf(number: number, overdue: number): string {
  if (overdue === 0) return String(number);
  return overdue === number
    ? vscode.l10n.t('{0} overdue', number)
    : vscode.l10n.t('{0}, {1} overdue', number, overdue);
}

function itemRow(item: OpenItem, place: string): vscode.TreeItem {
  const uri = vscode.Uri.parse(item.path, true);
  const who = item.patient === undefined ? vscode.l10n.t('no chart number') : plain(item.patient);
  const where = `${plain(vscode.workspace.asRelativePath(uri))}:${item.line + 1}`;
  const row = new vscode.TreeItem(who);
  row.id = place;
  row.description = openBrief(item);
  row.tooltip = [openHeadings[item.group], `${who}: ${openText(item)}`, where].join('\n');
  row.iconPath = iconOf(item);
  row.contextValue = item.group === 'look' ? 'wheal.look' : 'wheal.item';
  row.accessibilityInformation = {
    label: `${who}: ${openBrief(item)}. ${openHeadings[item.group]}, ${where}`,
  };
  const line = new vscode.Position(item.line, 0);
  row.command = {
    command: 'vscode.open',
    title: vscode.l10n.t('Open'),
    arguments: [uri, { selection: new vscode.Range(line, line) }],
  };
  return row;
}

/** The longer it is overdue, the louder: by its sign, not by its color alone. */
function iconOf({ state, loudness }: OpenItem): vscode.ThemeIcon {
  if (loudness === 3) return new vscode.ThemeIcon('error', new vscode.ThemeColor('list.errorForeground'));
  if (loudness === 2) return new vscode.ThemeIcon('warning', new vscode.ThemeColor('list.errorForeground'));
  if (loudness === 1) return new vscode.ThemeIcon('warning', new vscode.ThemeColor('list.warningForeground'));
  return new vscode.ThemeIcon(state === 'later' ? 'circle-outline' : 'circle-filled');
}
