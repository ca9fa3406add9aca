import type { Related } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';

export const siteIn = ({ site }: Procedure): readonly Related[] =>
  site === undefined ? [] : [{ start: site.start, end: site.end, form: 'site', args: { site: site.text } }];
