import type { Related } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { agentOf } from '../../dose/injections.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Report, Subject } from '../check.ts';
import { energiesOf, isEnergyUsed, type Energy } from '../current.ts';
import { rowsIn } from '../words.ts';

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

/** One report for each procedure: at the first word that says heat or a spark. */
function sparks(subject: Subject): readonly { procedure: Procedure; spark: Energy }[] {
  const found: { procedure: Procedure; spark: Energy }[] = [];
  for (const procedure of subject.note.procedures ?? []) {
    const [spark] = energiesOf(procedure, subject.tables);
    if (spark !== undefined) found.push({ procedure, spark });
  }
  return found;
}

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

export const checks: readonly Check[] = [
  {
    code: 'hemostasis/fire',
    about: ['hemostasis', 'preparation'],
    when: isEnergyUsed,
    severity: 'error',
    title: 'Heat or a spark beside wet alcohol',
    why: 'Alcohol on the skin burns with a flame that is hard to see. In a trial it caught fire at once where it pooled and in a third of cases after 30 seconds, and never once dry; labels ask for 3 minutes on hairless skin and up to an hour in hair.',
    sources: [
      { source: 'alcohol-label', mark: 'Q' },
      { source: 'chlorhexidine-alcohol-label', mark: 'Q' },
      { source: 'prep-fire-study', mark: 'Q' },
      { source: 'prep-drying-instructions', mark: 'Q' },
      { source: 'procedure-text-hemostasis', mark: 'Q' },
    ],
    messages: {
      wet: '`{word}` was used while the skin was not dry from {fuel}, which burns. Let it dry for 3 minutes, or prepare with a solution without alcohol.',
      agent:
        '{fuel} burns until it is dry; `{word}` was used beside it. Let it dry first, or use aluminum chloride in water.',
      hair: '`{word}` in hair-bearing skin after {fuel}, which stays wet in hair for up to an hour. If it was dry, write `dry: yes`.',
      fuel: '{fuel} burns until it is dry',
    },
    find(subject) {
      const found: Report[] = [];
      for (const { procedure, spark } of sparks(subject)) {
        const report = judge(procedure, spark, subject);
        if (report !== undefined) found.push(report);
      }
      return found;
    },
  },
  {
    code: 'hemostasis/flammable-spray',
    when: isEnergyUsed,
    severity: 'warning',
    title: 'Heat or a spark after a flammable cold spray',
    why: 'Ethyl chloride is flammable, and its vapor lingers. Some other cold sprays are not.',
    sources: [{ source: 'ethyl-chloride-monograph', mark: 'Q' }],
    messages: {
      main: '{spray} is flammable, and `{word}` was used at the same site. Let the vapor clear, or numb without it.',
      unsaid:
        'Some cold sprays are flammable, and `{word}` was used at the same site. Name the spray, and let the vapor clear.',
      spark: 'heat or a spark is said here',
    },
    find(subject) {
      const found: Report[] = [];
      for (const { procedure, spark } of sparks(subject))
        for (const injection of procedure.anesthetic ?? []) {
          const leaf = injection.agent ?? injection.product;
          if (leaf === undefined || agentOf(injection, subject.tables)?.form !== 'spray') continue;
          const { start, end, text } = spark.leaf;
          const named = /ethyl chloride/i.test(leaf.text);
          found.push({
            at: leaf,
            form: named ? 'main' : 'unsaid',
            severity: named ? 'warning' : 'information',
            args: { spray: leaf.text, word: text },
            related: [{ start, end, form: 'spark', args: {} }],
          });
        }
      return found;
    },
  },
];
