import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { together } from '../../src/checks/together.ts';
import type { Finding } from '../../src/note/tree/finding.ts';
import { readNote } from '../../src/note/read.ts';
import { judge } from '../checks/tester.ts';

const root = 'test/fixtures/';

/** Every note below a folder of the fixtures, by its path there. */
export const notesIn = (folder: string): readonly (readonly [name: string, text: string])[] =>
  readdirSync(root + folder, { recursive: true })
    .map((name) => `${folder}/${String(name).replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.wheal.yaml'))
    .sort()
    .map((name) => [name, readFileSync(root + name, 'utf8')]);

/** A YAML file of the fixtures. */
export const dataOf = (file: string): unknown => parse(readFileSync(root + file, 'utf8'));

/** What people are shown of a note on a day. */
export const shownOf = (text: string, today: string): readonly Finding[] =>
  together(judge(text, { today }).findings, readNote(text).value);

export const isLoud = ({ severity }: Finding): boolean => severity === 'error' || severity === 'warning';

/** One line for each finding, for the output of a run. */
export const lineOf = (name: string, text: string, { severity, code, start, end }: Finding): string =>
  `${name}  ${severity}  ${code}  ${text.slice(start, end).replaceAll('\n', ' ').slice(0, 60)}`;

export const share = (part: number, whole: number): string => `${part} of ${whole}`;
