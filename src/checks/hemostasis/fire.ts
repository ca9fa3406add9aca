import type { Related, Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Subject } from '../check.ts';
import { type Energy } from '../current.ts';
import { rowsIn } from '../words.ts';
import { sparks } from './_procedure.ts';

/** The words of a list that name something which burns. */
const flammable = (
  leaves: readonly Leaf<string>[] | undefined,
  table: Tables['preparations'] | Tables['hemostasis'],
): readonly Leaf<string>[] =>
  (leaves ?? []).filter((leaf) =>
    rowsIn<{ name: string; synonyms: readonly string[]; flammable?: boolean }>(table, leaf).some(
      (row) => row.flammable === true,
    ),
  );

const placeOf = ({ start, end, text }: Leaf<string>): Related => ({
  start,
  end,
  form: 'fuel',
  args: { fuel: text },
});

function judge(procedure: Procedure, spark: Energy, subject: Subject): Report | undefined {
  const { preparation, hemostasis, dry } = procedure;
  const prepared = flammable(preparation, subject.tables.preparations);
  const at = spark.leaf;
  const reportOf = (form: string, fuel: readonly Leaf<string>[]): Report => ({
    at,
    form,
    severity: form === 'wet' ? 'error' : 'information',
    args: { word: at.text, fuel: fuel.map(({ text }) => text).join(', ') },
    related: fuel.map(placeOf),
  });
  if (prepared.length > 0 && dry?.value === false) return reportOf('wet', prepared);
  const agents = flammable(hemostasis, subject.tables.hemostasis);
  if (agents.length > 0) return reportOf('agent', agents);
  const hair = subject.siteOf(procedure)?.base.hairBearing === true;
  return prepared.length > 0 && dry === undefined && hair ? reportOf('hair', prepared) : undefined;
}

export const check: Check = {
  code: 'hemostasis/fire',
  severity: 'error',
  title: 'Heat or a spark beside wet alcohol',
  why: 'Alcohol on the skin burns with a flame that is hard to see. In a trial it caught fire at once where it pooled and in a third of cases after 30 seconds, and never after it had dried; labels ask for 3 minutes on hairless skin and up to an hour in hair.',
  sources: [
    { source: 'alcohol-label', mark: 'Q' },
    { source: 'chlorhexidine-alcohol-label', mark: 'Q' },
    { source: 'prep-fire-study', mark: 'Q' },
    { source: 'prep-drying-instructions', mark: 'Q' },
    { source: 'procedure-text-hemostasis', mark: 'Q' },
  ],
  messages: {
    wet: '`{word}` was used on skin still wet with {fuel}, which burns. Let it dry for 3 minutes, or prepare with a solution without alcohol.',
    agent:
      '{fuel} burns until it is dry; `{word}` was used beside it. Let it dry first, or use aluminum chloride in water.',
    hair: '`{word}` in hair-bearing skin after {fuel}, which stays wet in hair for up to an hour. If it was dry, write `dry: yes`.',
    fuel: '{fuel} burns until it is dry',
  },
  alternatives: { readAs: [] },
  sourcesDiffer: {
    how: 'Labels ask for 3 minutes on hairless skin and up to an hour in hair; in an experiment nothing caught fire from the sixtieth second on. Whether it was dry is asked, and no minutes are counted.',
    settings: ['severities'],
  },
  find(subject) {
    const found: Report[] = [];
    for (const { procedure, spark } of sparks(subject)) {
      const report = judge(procedure, spark, subject);
      if (report !== undefined) found.push(report);
    }
    return found;
  },
};
