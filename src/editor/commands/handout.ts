import * as vscode from 'vscode';
import {
  handoutFormats,
  type Handout,
  type HandoutFormat,
  type Language,
} from '../../documents/handout/index.ts';
import { askWhere, deliver, frontNote } from '../papers/export.ts';
import { handoutOfNote, remarksText } from '../papers/handout.ts';
import type { Notes } from '../notes/notes.ts';
import type { OpenNote } from '../notes/open-note.ts';
import type { Command } from './command.ts';

/** Asks for a language and a form, and shows or writes what the patient takes home. */
export const handout: Command = async ({ notes, panel }) => {
  const note = await noteToHandOut(notes);
  const language = note && (await askLanguage(note.handout.language));
  const form = language && (await askForm());
  if (note === undefined || language === undefined || form === undefined) return;
  if (form === 'beside') panel.show(note.open, 'handout', language);
  else await exportHandout(note.open, language, form);
};

/** Shows what the patient takes home beside the note, in the note's language. */
export const previewHandout: Command = async ({ notes, panel }) => {
  const note = await noteToHandOut(notes);
  if (note !== undefined) panel.show(note.open, 'handout');
};

interface ToHandOut {
  readonly open: OpenNote;
  readonly handout: Handout;
}

/** The note in front with its handout in its own language; where there is none, it is said why. */
async function noteToHandOut(notes: Notes): Promise<ToHandOut | undefined> {
  const open = await frontNote(notes);
  const made = open && handoutOrWhy(open, undefined);
  return open === undefined || made === undefined ? undefined : { open, handout: made };
}

function handoutOrWhy(open: OpenNote, language: Language | undefined): Handout | undefined {
  const made = handoutOfNote(open, language);
  if (!('why' in made)) return made;
  void vscode.window.showWarningMessage(vscode.l10n.t('There is no handout: {0}', made.why));
  return undefined;
}

async function exportHandout(open: OpenNote, language: Language, form: HandoutFormat): Promise<void> {
  const target = await askWhere(open.document.uri, {
    title: vscode.l10n.t('Export the patient handout'),
    what: `handout-${language}`,
    formats: [handoutFormats[form]],
  });
  // The note may have gone on while the dialog was open.
  const made = target && handoutOrWhy(open, language);
  if (target === undefined || made === undefined) return;
  await deliver(
    target,
    handoutFormats[form].write(made, new Date()),
    vscode.l10n.t('The patient handout is written.'),
    alertOf(made, form),
  );
}

const titleOf = (form: HandoutFormat): string => vscode.l10n.t(handoutFormats[form].title);

/** Asks for the language, that of the note first. */
async function askLanguage(own: Language): Promise<Language | undefined> {
  const of = (language: Language, label: string): vscode.QuickPickItem & { language: Language } => ({
    label,
    language,
    description: language === own ? vscode.l10n.t('as the note or the practice has it') : '',
  });
  const items = [of('en', vscode.l10n.t('English')), of('es', vscode.l10n.t('Spanish'))];
  const placeHolder = vscode.l10n.t('In which language?');
  const sorted = items.sort((a, b) => Number(b.language === own) - Number(a.language === own));
  return (await vscode.window.showQuickPick(sorted, { placeHolder }))?.language;
}

async function askForm(): Promise<HandoutFormat | 'beside' | undefined> {
  const items: readonly (vscode.QuickPickItem & { form: HandoutFormat | 'beside' })[] = [
    { form: 'beside', label: vscode.l10n.t('Show beside the note') },
    { form: 'html', label: titleOf('html'), description: vscode.l10n.t('one sheet, in any browser') },
    { form: 'text', label: titleOf('text') },
    {
      form: 'eml',
      label: titleOf('eml'),
      description: vscode.l10n.t('opens in a mail program; nothing is sent'),
    },
  ];
  const placeHolder = vscode.l10n.t('Which format for the patient handout?');
  return (await vscode.window.showQuickPick(items, { placeHolder }))?.form;
}

/** What has to be known before it is handed out or sent. */
function alertOf(made: Handout, form: HandoutFormat): string | undefined {
  const parts = [
    ...(made.remarks.length === 0 ? [] : [vscode.l10n.t('Before it is handed out: {0}', remarksText(made))]),
    ...(form === 'eml'
      ? [
          vscode.l10n.t(
            'This draft contains health data; ordinary mail can be read on its way. Send it only where the patient agreed, and check the address.',
          ),
        ]
      : []),
  ];
  return parts.length === 0 ? undefined : parts.join(' ');
}
