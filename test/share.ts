/**
 * The part of what is tried very often that this run tries: everything, or what `npm run test:core` asks for, so that it
 * takes seconds. Each property is tried by every run.
 */
const share = Number(process.env['WHEAL_TEST_SHARE'] ?? '1');

/** How often this run tries what the whole suite tries so often. */
export const times = (all: number): number => Math.max(1, Math.ceil(all * share));

/** How far apart the places are that this run tries, where the whole suite tries each `step`th. */
export const step = (all: number): number => Math.max(all, Math.round(all / share));

/** The cases of a list that this run tries: all, or some of them with the same distance between each and the next. */
export const some = <T>(all: readonly T[]): readonly T[] => {
  const every = Math.max(1, Math.round(1 / share));
  return all.filter((_, index) => index % every === 0);
};
