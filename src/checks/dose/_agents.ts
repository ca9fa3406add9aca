import type { Finding, Fix, Report } from '../../note/tree/finding.ts';
import { type Nearest } from '../../note/text/nearest.ts';
import { wordFix } from '../word-fix.ts';

export const meant = (near: Nearest | undefined): Partial<Report> =>
  near === undefined ? {} : { form: 'near', data: near };

export const fix = (_place: unknown, { start, end, data }: Finding): readonly Fix[] => {
  if (data === undefined) return [];
  const near = data as Nearest;
  return [wordFix(near.word, near, [{ start, end, text: near.word }])];
};
