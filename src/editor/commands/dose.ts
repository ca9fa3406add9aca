import * as vscode from 'vscode';
import { factsOn, needsAge } from '../../dose/patient.ts';
import type { Facts } from '../../limits/ceilings.ts';
import { epinephrineText, strengthText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Age, Dilution, Quantity } from '../../note/values/values.ts';
import { referenceTables, type Tables } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import { placeCaret } from '../host/caret.ts';
import { workspaceEdit } from '../host/convert.ts';
import { ageText, doseAnswer, readText } from './dose-answer.ts';
import { isPractice } from '../host/files.ts';
import { injectionEdit, type InjectionEntry } from './injection-edit.ts';
import type { OpenNote } from '../notes/open-note.ts';
import type { Practices } from '../host/practices.ts';
import type { Command } from './command.ts';

/** What will be injected, and how the note would name it. */
interface Product {
  readonly agent: AgentRow;
  readonly mgPerMl: number;
  readonly epinephrineMicrogramsPerMl: number;
  readonly entry: InjectionEntry;
}

/** Says how much of an anesthetic may be injected, and offers to begin its entry; the volume given stays open. */
export const doseBeforeNeedle: Command = async ({ notes, practices }) => {
  const front = await notes.front();
  const note = front !== undefined && !isPractice(front.document.uri) ? front : undefined;
  const tables = note?.analysis.context.tables ?? (await tablesWithoutNote(practices));
  const product = await askProduct(tables);
  const patient = product && (await askPatient(note));
  if (patient === undefined || product === undefined) return;
  const answer = doseAnswer({ ...product, ...patient }, tables);
  if ('why' in answer) {
    const words = vscode.l10n.t('No maximum can be given: {0}.', answer.why);
    void vscode.window.showWarningMessage(words, { modal: true });
  } else await tell(answer.headline, answer.detail, product.entry, note);
};

/** What is known without a note: of the practice of the first folder. */
export async function tablesWithoutNote(practices: Practices): Promise<Tables> {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (folder === undefined) return referenceTables;
  return (await practices.of(vscode.Uri.joinPath(folder.uri, 'note'))).tables;
}

/** Weight and age: those of the note are proposed. */
async function askPatient(note: OpenNote | undefined): Promise<Facts | undefined> {
  const read = note?.analysis.note;
  const known = read == null ? undefined : factsOn(read, read.visit?.value?.date);
  const weight = known?.kg === undefined ? '' : `${formatNumber(known.kg)} kg`;
  const prompt = vscode.l10n.t('Weight, as 62 kg or 137 lb');
  const text = await input({ prompt, placeHolder: '62 kg', reader: 'mass', key: 'weight', value: weight });
  if (text === undefined) return undefined;
  const kg = (readText('mass', 'weight', text).value as Quantity).amount;
  return await askAge(kg, known?.months);
}

async function tell(
  headline: string,
  detail: string,
  entry: InjectionEntry,
  note: OpenNote | undefined,
): Promise<void> {
  const given = note?.analysis.judgement.dose?.injections.length ?? 0;
  const more =
    given > 0
      ? `\n${vscode.l10n.t('The note has anesthetic already, which this does not count: what is left is shown above the visit.')}`
      : '';
  const insert = vscode.l10n.t('Begin the entry');
  const copy = vscode.l10n.t('Copy');
  const canInsert = note !== undefined && editFor(note, entry) !== undefined;
  const answer = await vscode.window.showInformationMessage(
    headline,
    { modal: true, detail: `${detail}${more}` },
    ...(canInsert ? [insert] : []),
    copy,
  );
  if (answer === copy) await vscode.env.clipboard.writeText(`${headline}\n${detail}\n`);
  if (answer === insert && note !== undefined) await begin(note, entry);
}

/** Writes the entry; its volume is what was given, which nobody knows yet. */
async function begin(note: OpenNote, entry: InjectionEntry): Promise<void> {
  const edit = editFor(note, entry);
  if (edit === undefined) return;
  await vscode.workspace.applyEdit(workspaceEdit(note.document, [edit]));
  await vscode.window.showTextDocument(note.document);
  placeCaret(note.document, edit.start);
}

function editFor(note: OpenNote, entry: InjectionEntry): ReturnType<typeof injectionEdit> {
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === note.document);
  return injectionEdit(
    note.analysis,
    editor === undefined ? 0 : note.document.offsetAt(editor.selection.active),
    entry,
  );
}

async function askProduct(tables: Tables): Promise<Product | undefined> {
  const stock = [...tables.stock.values()].flatMap(({ name, agent, mgPerMl, epinephrineMicrogramsPerMl }) =>
    mgPerMl === undefined || agent.form !== 'injected' || !agent.limited
      ? []
      : [{ label: name, description: vscode.l10n.t('in stock'), agent, mgPerMl, epinephrineMicrogramsPerMl }],
  );
  const agents = tables.agents.rows
    .filter(({ form, limited }) => form === 'injected' && limited)
    .map((agent) => ({ label: agent.name, agent }));
  const picked = await pick<{
    label: string;
    agent: AgentRow;
    mgPerMl?: number;
    epinephrineMicrogramsPerMl?: number;
  }>([...stock, ...agents], vscode.l10n.t('Which anesthetic?'));
  if (picked === undefined) return undefined;
  const { agent, label, mgPerMl, epinephrineMicrogramsPerMl } = picked;
  return mgPerMl !== undefined && epinephrineMicrogramsPerMl !== undefined
    ? {
        agent,
        mgPerMl,
        epinephrineMicrogramsPerMl,
        entry: [
          ['product', label],
          ['volume', '??'],
        ],
      }
    : await askStrength(agent);
}

async function askStrength(agent: AgentRow): Promise<Product | undefined> {
  const strength = await pickOr(
    agent.strengths.map(strengthText),
    vscode.l10n.t('Which strength?'),
    (prompt) => input({ prompt, placeHolder: '1%', reader: 'concentration', key: 'concentration' }),
  );
  if (strength === undefined) return undefined;
  const dilutions = ['none', epinephrineText(10), epinephrineText(5)];
  const epinephrine = await pickOr(dilutions, vscode.l10n.t('With epinephrine?'), (prompt) =>
    input({ prompt, placeHolder: '1:100,000', reader: 'dilution', key: 'epinephrine' }),
  );
  if (epinephrine === undefined) return undefined;
  const { amount } = readText('concentration', 'concentration', strength).value as Quantity;
  const { microgramsPerMl } = readText('dilution', 'epinephrine', epinephrine).value as Dilution;
  return {
    agent,
    mgPerMl: amount,
    epinephrineMicrogramsPerMl: microgramsPerMl,
    entry: [
      ['agent', agent.name],
      ['concentration', strength],
      ['epinephrine', epinephrine],
      ['volume', '??'],
    ],
  };
}

const pick = <T extends vscode.QuickPickItem>(
  items: readonly T[],
  placeHolder: string,
): Thenable<T | undefined> =>
  vscode.window.showQuickPick(items, { placeHolder, ignoreFocusOut: true, title: title() });

/** One of some usual answers, or another that is typed. */
async function pickOr(
  usual: readonly string[],
  prompt: string,
  other: (prompt: string) => Thenable<string | undefined>,
): Promise<string | undefined> {
  const items = usual.map((label) => ({ label, other: false }));
  const picked = await pick([...items, { label: vscode.l10n.t('Another…'), other: true }], prompt);
  return picked?.other === true ? await other(prompt) : picked?.label;
}

interface Question {
  readonly prompt: string;
  readonly placeHolder: string;
  /** Reader of the schema, and the key under which a note has such a value. */
  readonly reader: string;
  readonly key: string;
  readonly value?: string;
  readonly optional?: boolean;
}

async function input({
  prompt,
  placeHolder,
  reader,
  key,
  value = '',
  optional = false,
}: Question): Promise<string | undefined> {
  const text = await vscode.window.showInputBox({
    title: title(),
    prompt,
    placeHolder,
    value,
    ignoreFocusOut: true,
    validateInput: (typed) => {
      if (optional && typed.trim() === '') return undefined;
      const { value: read, odd } = readText(reader, key, typed);
      if (read === undefined) return vscode.l10n.t('Write it like this: {0}', placeHolder);
      return odd ? vscode.l10n.t('This number is far out of range.') : undefined;
    },
  });
  return text?.trim();
}

/** The age; left out, an adult is assumed where the weight lets it be. */
async function askAge(kg: number, known: number | undefined): Promise<Facts | undefined> {
  const needed = needsAge({ kg, months: undefined });
  const prompt = needed
    ? vscode.l10n.t('Age (needed under 50 kg)')
    : vscode.l10n.t('Age; left empty, an adult is assumed');
  const value = known === undefined ? '' : ageText(known);
  const text = await input({
    prompt,
    placeHolder: '64 years',
    reader: 'age',
    key: 'age',
    value,
    optional: !needed,
  });
  if (text === undefined) return undefined;
  return { kg, months: text === '' ? undefined : (readText('age', 'age', text).value as Age).months };
}

const title = (): string => vscode.l10n.t('Dose before the needle');
