import { acceptFinding } from './accept.ts';
import { exportCalendar } from './calendar.ts';
import type { Command } from './command.ts';
import { recordCall, recordDone } from './done.ts';
import { doseBeforeNeedle } from './dose.ts';
import { checkFolder } from './folder.ts';
import { draftNote } from './draft.ts';
import { handout, previewHandout } from './handout.ts';
import { afterFix, mendAll, newNote, openSample } from './notes.ts';
import { lookAgain, showOpen, stopLooking } from './open.ts';
import { aboutCheck, help } from './pages.ts';
import { signNote, verifyNote } from './sign.ts';
import { copySummary, exportSummary, previewSummary } from './summary.ts';

/** Every command by its id. */
export const commands: Readonly<Record<string, Command>> = {
  'wheal.newNote': newNote,
  'wheal.draftNote': draftNote,
  'wheal.openSample': openSample,
  'wheal.copySummary': copySummary,
  'wheal.exportSummary': exportSummary,
  'wheal.previewSummary': previewSummary,
  'wheal.handout': handout,
  'wheal.previewHandout': previewHandout,
  'wheal.exportCalendar': exportCalendar,
  'wheal.checkFolder': checkFolder,
  'wheal.doseBeforeNeedle': doseBeforeNeedle,
  'wheal.acceptFinding': acceptFinding,
  'wheal.showOpen': showOpen,
  'wheal.lookAgain': lookAgain,
  'wheal.stopLooking': stopLooking,
  'wheal.recordDone': recordDone,
  'wheal.recordCall': recordCall,
  'wheal.signNote': signNote,
  'wheal.verifyNote': verifyNote,
  'wheal.fixAll': mendAll,
  'wheal.aboutCheck': aboutCheck,
  'wheal.help': help,
  // Only for links and fixes of our own.
  'wheal.afterFix': afterFix,
};
