import type { Finding, Problem } from '../../note/tree/finding.ts';
import type { Practice } from '../../note/generated/types.ts';
import { nearest } from '../../note/text/nearest.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import { practiceIndex, type Source } from '../../note/read.ts';
import { layOver, type Tables, type Trust } from '../../practice/tables.ts';
import { practiceShapeProblems } from '../../schema/validate.ts';
import type { Check } from '../check.ts';
import { isFixed, refusals } from '../danger.ts';
import { sentences } from '../generated/sentences.ts';
import { withMissingParts } from './missing-part.ts';
import { findingOf, withSeverity } from './run.ts';

/** What is wrong with a practice file, in the order of the text. Its own severities count for it too. */
export function judgePractice(
  byCode: ReadonlyMap<string, Check>,
  source: Source<Practice>,
  trust?: Trust,
): readonly Finding[] {
  const { tables, problems } = layOver(source.value, trust);
  const form = [...source.problems, ...practiceShapeProblems(source)];
  const refused = form.filter(({ code }) => refusals.has(code));
  const all =
    refused.length > 0
      ? refused
      : [
          ...form,
          ...problems,
          ...severityProblems(source.value, tables, byCode),
          ...sentenceProblems(source.value),
        ];
  const findings = all
    .flatMap((problem) => {
      const check = byCode.get(problem.code);
      if (check === undefined) return [];
      // What to begin with is not what a note begins with.
      const own = check.messages['practice'] === undefined ? {} : { form: 'practice' };
      const finding = findingOf(check, { ...problem, ...own });
      return withSeverity(finding, tables.severities.get(problem.code)) ?? [];
    })
    .sort((a, b) => a.start - b.start || a.end - b.end);
  const judged = { root: source.root, shapes: practiceIndex, kind: 'practice' } as const;
  return withMissingParts(findings, byCode, judged);
}

/** What of the severities can only be said by who knows the checks. */
function severityProblems(
  practice: Practice | null,
  { severities }: Tables,
  byCode: ReadonlyMap<string, Check>,
): readonly Problem[] {
  return (practice?.severities ?? []).flatMap(({ name, start, end }): Problem[] => {
    const check = byCode.get(name);
    if (check === undefined)
      return [unknownWord('practice/unknown-check', name, { start, end }, byCode.keys())];
    const lowered = (severities.get(name) ?? 'error') !== 'error' && isFixed(check);
    return lowered ? [{ code: 'practice/lowered-danger', at: { start, end }, args: { word: name } }] : [];
  });
}

function unknownWord(code: string, word: string, at: Range, known: Iterable<string>): Problem {
  const near = nearest(word, known)?.word;
  return near === undefined
    ? { code, at, args: { word } }
    : { code, at, form: 'nearest', args: { word, nearest: near } };
}

/** Sentences of the practice that replace none, and gaps in them that nothing fills. */
function sentenceProblems(practice: Practice | null): readonly Problem[] {
  const { en = [], es = [] } = practice?.handout?.sentences ?? {};
  return [...en, ...es].flatMap(({ name, value, start, end }): readonly Problem[] => {
    const known = Object.hasOwn(sentences, name) ? sentences[name] : undefined;
    if (known === undefined)
      return [unknownWord('practice/unknown-sentence', name, { start, end }, Object.keys(sentences))];
    return Array.from((value.value ?? '').matchAll(/\{(\w+)\}/g)).flatMap(
      ({ 0: gap, 1: word = '', index }) =>
        known.includes(word)
          ? []
          : [
              {
                code: 'practice/unknown-sentence',
                form: known.length === 0 ? 'gap' : 'gaps',
                at: within(value.node, index, index + gap.length),
                args: { word, choices: known.join(', ') },
              },
            ],
    );
  });
}
