import { checks } from './checks.ts';
import { completionsOf } from './completions.ts';
import { dose } from './dose.ts';
import { draft } from './draft.ts';
import { handout } from './handout.ts';
import { manOf } from './man.ts';
import { open } from './open.ts';
import { requisition } from './requisition.ts';
import { schedule } from './schedule.ts';
import { sign } from './sign.ts';
import { specimens } from './specimens.ts';
import { summary } from './summary.ts';
import { verify } from './verify.ts';
import type { Command } from '../options/command.ts';

/** The commands by the name that is typed, in the order of the help. */
export function commandsWith(check: Command): ReadonlyMap<string, Command> {
  const all: ReadonlyMap<string, Command> = new Map([
    ['check', check],
    ['draft', draft],
    ['summary', summary],
    ['handout', handout],
    ['schedule', schedule],
    ['open', open],
    ['dose', dose],
    ['requisition', requisition],
    ['specimens', specimens],
    ['checks', checks],
    ['sign', sign],
    ['verify', verify],
    ['completions', completionsOf(() => all)],
    ['man', manOf(() => all)],
  ]);
  return all;
}
