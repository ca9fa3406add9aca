import { checkOf } from '../../checks/index.ts';
import { markText } from '../../documents/check-page.ts';
import type { Finding } from '../../note/tree/finding.ts';
import { citation } from '../../reference/sources/index.ts';
import type { Sourced } from '../../reference/types.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Row, Section } from './section.ts';

/** As many findings and sources as a hover has room for; the page of the check has all. */
const most = { findings: 2, sources: 3 } as const;

const rowOf = ({ source, mark }: Sourced): Row => ({ text: `${citation(source)}; ${markText[mark]}` });

/** What the findings at an offset rest on, and how sure it is: the line that fired where the check named it, else the check's sources. */
export function findingSections({ judgement }: Analysis, offset: number): readonly Section[] {
  return judgement.findings
    .filter(({ start, end }) => offset >= start && offset <= end)
    .slice(0, most.findings)
    .flatMap(sectionOf);
}

function sectionOf({ code, rests }: Finding): readonly Section[] {
  const check = checkOf(code);
  if (check === undefined) return [];
  const sources = rests === undefined ? check.sources : [rests];
  const more = sources.length - most.sources;
  const rows = sources.slice(0, most.sources).map(rowOf);
  const rest = more > 0 ? [{ text: `and ${more} more, on the page of the check` }] : [];
  return [{ title: `What ${code} rests on`, rows: [...rows, ...rest] }];
}
