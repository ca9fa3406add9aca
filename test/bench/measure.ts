/** One ratio with the goal that it should keep. */
export interface Row {
  readonly name: string;
  readonly ratio: number;
  readonly goal: number;
  readonly better: 'lower' | 'higher';
  /** The middle half of the rounds, as ratios. */
  readonly spread: readonly [number, number];
  /** The same, measured in this run of something else. */
  readonly beside?: { readonly name: string; readonly ratio: number };
}

const milliseconds = (action: () => unknown): number => {
  const start = process.hrtime.bigint();
  action();
  return Number(process.hrtime.bigint() - start) / 1e6;
};

const quantile = (sorted: readonly number[], part: number): number =>
  sorted[Math.floor((sorted.length - 1) * part)] ?? NaN;

/**
 * Times two actions in turn, each time on a text that neither has seen, and compares their medians. In the text `@`
 * means a number that is another in each round. Before that both run until the engine has compiled what is hot,
 * as in an editor that has been open for a minute.
 */
export function compare(
  name: string,
  goal: number,
  text: string,
  measured: (text: string) => unknown,
  base: (text: string) => unknown,
  rounds = 120,
): Row {
  return compareReady({ name, goal, text, rounds }, (fresh) => fresh, measured, base);
}

/** So many that the engine has compiled what it will compile: a few thousand states of a note that is being typed. */
const warmUpCharacters = 6_000_000;

/** The same, where what is measured takes something that was made of the text before, untimed. */
export function compareReady<Ready>(
  {
    name,
    goal,
    text,
    rounds,
  }: Pick<Row, 'name' | 'goal'> & { readonly text: string; readonly rounds: number },
  prepare: (text: string) => Ready,
  measured: (ready: Ready) => unknown,
  base: (text: string) => unknown,
): Row {
  const ours: number[] = [];
  const theirs: number[] = [];
  const warmUp = Math.ceil(warmUpCharacters / text.length);
  for (let round = -warmUp; round < rounds; round++) {
    const fresh = `${text.replaceAll('@', String(round + warmUp))}# round ${round} of ${name}\n`;
    const turn = (): number => {
      // Directly before, as in use: what is checked has just been read.
      const ready = prepare(fresh);
      return milliseconds(() => measured(ready));
    };
    // Which of the two goes first changes, so that neither always meets a warm or a full memory.
    const before = round % 2 === 0 ? turn() : undefined;
    const parsed = milliseconds(() => base(fresh));
    const taken = before ?? turn();
    if (round < 0) continue;
    ours.push(taken);
    theirs.push(parsed);
  }
  const middle = quantile(
    [...theirs].sort((x, y) => x - y),
    0.5,
  );
  const sorted = [...ours].sort((x, y) => x - y).map((value) => value / middle);
  return {
    name,
    ratio: round3(quantile(sorted, 0.5)),
    goal,
    better: 'lower',
    spread: [round3(quantile(sorted, 0.25)), round3(quantile(sorted, 0.75))],
  };
}

/**
 * The median time of what answers later, as a ratio to one of `base` on the same text.
 * @param prepare makes of a fresh text, untimed, what is measured
 */
export async function ratioOf<Ready>(
  text: string,
  rounds: number,
  prepare: (text: string) => Promise<Ready>,
  measured: (ready: Ready) => Promise<unknown>,
  base: (text: string) => unknown,
): Promise<number> {
  const times: number[] = [];
  const bases: number[] = [];
  for (let round = -Math.ceil(rounds / 2); round < rounds; round++) {
    const fresh = `${text.replaceAll('@', String(round + rounds))}# round ${round} of another\n`;
    const ready = await prepare(fresh);
    const start = process.hrtime.bigint();
    await measured(ready);
    const time = Number(process.hrtime.bigint() - start) / 1e6;
    const one = milliseconds(() => base(fresh));
    if (round < 0) continue;
    times.push(time);
    bases.push(one);
  }
  const middle = (values: readonly number[]): number =>
    quantile(
      [...values].sort((a, b) => a - b),
      0.5,
    );
  return round3(middle(times) / middle(bases));
}

export const round3 = (value: number): number => Math.round(value * 1000) / 1000;
