import type { Report } from '../../note/tree/finding.ts';
import { agentOf } from '../../dose/injections.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';

function precipitating({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const agent = agentOf(injection, tables);
    if (agent?.precipitates === undefined || injection.buffered?.value?.buffered !== true) continue;
    found.push({
      at: injection.buffered,
      severity: bounded('warning', agent.precipitates.mark),
      args: { agent: agent.name },
    });
  }
  return found;
}

export const check: Check = {
  code: 'dose/bupivacaine-buffered',
  severity: 'warning',
  title: 'Bupivacaine mixed with bicarbonate',
  why: 'Bicarbonate makes bupivacaine precipitate, so that less of it works and crystals are injected.',
  sources: [
    { source: 'dermatologic-surgery-text', mark: 'Q' },
    { source: 'wikem-local-anesthetics', mark: 'Q' },
  ],
  messages: { main: '{agent} precipitates with bicarbonate. Check which anesthetic was buffered.' },
  alternatives: { readAs: [] },
  find: precipitating,
};
