import * as vscode from 'vscode';
import { calendarOf } from '../../documents/calendar/calendar.ts';
import { calendarItems } from '../../documents/schedule/schedule.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import { localDate } from '../host/clock.ts';
import { askWhere, deliver, frontNote } from '../papers/export.ts';
import type { Command } from './command.ts';

/** Writes what falls due after the visit of the note in front as a calendar, where the user says. */
export const exportCalendar: Command = async ({ notes }) => {
  const open = await frontNote(notes);
  if (open === undefined) return;
  const entries = (): ReturnType<typeof calendarItems> => {
    const { note, context } = open.analysis;
    const path = open.document.uri.path;
    return note === null
      ? []
      : calendarItems([{ path, note, ...scheduleOf(note, context.tables, localDate(new Date())) }]);
  };
  if (entries().length === 0)
    return void vscode.window.showInformationMessage(vscode.l10n.t('Nothing falls due after this visit.'));
  const target = await askWhere(open.document.uri, {
    title: vscode.l10n.t('Export what falls due as a calendar'),
    what: 'due',
    kinds: { [vscode.l10n.t('Calendar')]: 'ics' },
  });
  if (target === undefined) return;
  const { name } = open.analysis.context.tables.practice;
  const text = calendarOf(entries(), { now: new Date(), name });
  await deliver(
    target,
    text,
    vscode.l10n.t('The calendar is written. A later export, imported too, replaces these entries.'),
    undefined,
  );
};
