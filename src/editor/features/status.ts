import * as vscode from 'vscode';
import { statusOf, type Status } from '../../service/index.ts';
import { Timer } from '../host/clock.ts';
import { selector, type Feature } from './feature.ts';

const severities: Readonly<Record<Status['severity'], vscode.LanguageStatusSeverity>> = {
  error: vscode.LanguageStatusSeverity.Error,
  warning: vscode.LanguageStatusSeverity.Warning,
  none: vscode.LanguageStatusSeverity.Information,
};

/** Milliseconds without a change until the status follows. */
const delay = 200;

/** How the note in front is: share of the limit, open findings, version of the format. */
export const status: Feature = (notes) => {
  const item = vscode.languages.createLanguageStatusItem('wheal.status', selector);
  item.name = vscode.l10n.t('Procedure note');
  item.command = { command: 'workbench.actions.view.problems', title: vscode.l10n.t('Show problems') };
  const timer = new Timer();
  const show = async (): Promise<void> => {
    const analysis = (await notes.front())?.analysis;
    if (analysis === undefined) return;
    const { text, detail, spoken, severity } = statusOf(analysis);
    item.text = text;
    item.detail = detail;
    item.severity = severities[severity];
    item.accessibilityInformation = { label: spoken };
  };
  const later = (): void => {
    timer.set(delay, () => void show());
  };
  later();
  return vscode.Disposable.from(
    item,
    {
      dispose: () => {
        timer.clear();
      },
    },
    notes.onDidJudge(later),
    notes.onDidReload(later),
    vscode.window.onDidChangeActiveTextEditor(later),
  );
};
