import * as vscode from 'vscode';
import { calendarItems, scheduleFormats, type NoteSchedule } from '../../documents/schedule/index.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import { localDate } from '../host/clock.ts';
import { askWhere, deliver, frontNote } from '../papers/export.ts';
import type { Command } from './command.ts';

/** Writes what falls due after the visit of the note in front as a calendar, where the user says. */
export const exportCalendar: Command = async ({ notes }) => {
  const open = await frontNote(notes);
  if (open === undefined) return;
  const { ics } = scheduleFormats;
  const schedules = (): readonly NoteSchedule[] => {
    const { note, context } = open.analysis;
    const path = open.document.uri.path;
    return note === null ? [] : [{ path, note, ...scheduleOf(note, context.tables, localDate(new Date())) }];
  };
  if (calendarItems(schedules()).length === 0)
    return void vscode.window.showInformationMessage(vscode.l10n.t('Nothing is due after this visit.'));
  const target = await askWhere(open.document.uri, {
    title: vscode.l10n.t('Export due dates as a calendar'),
    what: 'due',
    formats: [ics],
  });
  if (target === undefined) return;
  const { name } = open.analysis.context.tables.practice;
  const now = new Date();
  // Where a file is replaced, what vanished from it is canceled.
  const replaces = await earlierText(target);
  const text = ics.write(schedules(), { today: localDate(now), now, name, replaces });
  if (text === '')
    return void vscode.window.showInformationMessage(vscode.l10n.t('Nothing is due after this visit.'));
  await deliver(
    target,
    text,
    vscode.l10n.t(
      'The calendar is written. Export it over this file later: imported again, it replaces these entries and removes what is done.',
    ),
    undefined,
  );
};

/** The text of the file that is replaced; undefined where there is none. */
async function earlierText(target: vscode.Uri): Promise<string | undefined> {
  try {
    return new TextDecoder().decode(await vscode.workspace.fs.readFile(target));
  } catch {
    return undefined;
  }
}
