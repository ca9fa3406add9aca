import type { Report } from '../../note/tree/finding.ts';
import { agentOf } from '../../dose/injections.ts';
import type { Check } from '../check.ts';
import { sparks } from './_procedure.ts';

export const check: Check = {
  code: 'hemostasis/flammable-spray',
  severity: 'warning',
  title: 'Heat or a spark after a flammable cold spray',
  why: 'Ethyl chloride is flammable, and its vapor lingers. Some other cold sprays are not.',
  sources: [{ source: 'ethyl-chloride-monograph', mark: 'Q' }],
  messages: {
    main: '{spray} is flammable, and `{word}` was used at the same site. Let the vapor clear, or numb without it.',
    unsaid:
      'Some cold sprays are flammable, and `{word}` was used at the same site. Name the spray, and let the vapor clear.',
    spark: 'heat or a spark here',
  },
  alternatives: { readAs: [] },
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
};
