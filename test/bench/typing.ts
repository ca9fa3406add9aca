/** Clean notes typed again letter by letter: in how many states does something show that is not wrong? */
import type { Finding } from '../../src/note/tree/finding.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LanguageService } from 'yaml-language-server/lib/esm/languageservice/yamlLanguageService.js';
import { readPractice } from '../../src/note/read.ts';
import { tablesOf } from '../../src/practice/tables.ts';
import { analyse, shownFindings } from '../../src/service/index.ts';
import { Noise, retype, rowsOf } from '../service/retype.ts';
import { documentOf, incumbent } from './incumbent.ts';
import { round3, type Row } from './measure.ts';

const samples = join(import.meta.dirname, '..', '..', 'samples');
const names = ['punch-sutured', 'melanocytic-deep-shave', 'cream-and-injection'];

/** The shares of states in which something shows: on another line than the one that is typed, and on any line. */
export async function typingRows(service: LanguageService): Promise<readonly Row[]> {
  const [ours, theirs] = [new Noise(), new Noise()];
  for (const name of names) {
    const states = typed(readFileSync(join(samples, `${name}.wheal.yaml`), 'utf8'), ours);
    for (const { text, row } of states) {
      const found = await service.doValidation(documentOf(text), false);
      theirs.add(
        row,
        found.map(({ range }) => range.start.line),
      );
    }
  }
  return [
    shareOf('another row than the one that is typed is blamed', 0, 'elsewhere', ours, theirs),
    shareOf('any row is blamed', 0.04, 'anywhere', ours, theirs),
  ];
}

/** Types every line of a note again with our service, and answers the states for the other one. */
function typed(note: string, noise: Noise): readonly { readonly text: string; readonly row: number }[] {
  const tables = tablesOf(readPractice(readFileSync(join(samples, 'practice.wheal.yaml'), 'utf8')).value);
  const judge = (text: string): readonly Finding[] =>
    shownFindings(analyse(text, { tables, today: '2026-04-30' }), true);
  // What a clean note owes by that day is no noise.
  const before = new Set(judge(note).map(({ code }) => code));
  const states: { text: string; row: number }[] = [];
  note.split('\n').forEach((_, row) => {
    retype(note, row, judge, ({ text, findings }) => {
      noise.add(row, rowsOf({ text, findings: findings.filter(({ code }) => !before.has(code)) }));
      states.push({ text, row });
    });
  });
  return states;
}

function shareOf(
  what: string,
  goal: number,
  kind: 'elsewhere' | 'anywhere',
  ours: Noise,
  theirs: Noise,
): Row {
  const ratio = round3(ours[kind] / ours.states);
  return {
    name: `share of ${ours.states} states of typing in which ${what}`,
    ratio,
    goal,
    better: 'lower',
    spread: [ratio, ratio],
    beside: { name: incumbent, ratio: round3(theirs[kind] / theirs.states) },
  };
}
