import * as vscode from 'vscode';
import { catalogue } from '../../checks/index.ts';
import type { Command } from './command.ts';

/** Shows the page of a check: the one that was given, or one that is chosen, those with findings here first. */
export const aboutCheck: Command = async ({ notes, pages }, given) => {
  const code =
    typeof given === 'string' ? given : await chosen((await notes.front())?.analysis.judgement.findings);
  // Only pages of checks that there are.
  if (catalogue.some((check) => check.code === code) && code !== undefined) await pages.showCheck(code);
};

async function chosen(findings: readonly { readonly code: string }[] = []): Promise<string | undefined> {
  const here = new Set(findings.map(({ code }) => code));
  const items = [...new Set([...here, ...catalogue.map(({ code }) => code)])].flatMap((code) => {
    const check = catalogue.find((one) => one.code === code);
    const description = here.has(code) ? vscode.l10n.t('found in this note') : '';
    return check === undefined ? [] : [{ label: code, description, detail: check.title }];
  });
  const placeHolder = vscode.l10n.t('Which check?');
  return (await vscode.window.showQuickPick(items, { placeHolder, matchOnDetail: true }))?.label;
}

export const help: Command = ({ pages }) => pages.showHelp();
