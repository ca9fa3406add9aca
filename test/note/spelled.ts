import type { Reading, Remark, Respelling } from '../../src/note/values/reading.ts';

/** The remarks of a reading in a short form: `quantity/trailing-zero [1.0] -> 1`, with `!` where the fix is sure. */
export function remarksOf(text: string, { remarks }: Reading<unknown>): readonly string[] {
  return remarks.map((remark) => {
    const code = remark.form === undefined ? remark.code : `${remark.code}/${remark.form}`;
    return `${code} [${text.slice(remark.from, remark.to)}]${fixOf(remark)}`;
  });
}

function fixOf({ data }: Remark): string {
  if (data === undefined) return '';
  const { instead, sure } = data as Respelling;
  return ` -> ${instead.join(' | ')}${sure ? '!' : ''}`;
}
