import { isOver } from '../../dose/arithmetic.ts';
import { limitPer, sessionsOf, type InjectedDose, type Session } from '../../dose/injected.ts';
import { mgText } from '../../dose/words.ts';
import type { Report } from '../../note/tree/finding.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check } from '../check.ts';
import { injectedOf } from './_injected.ts';

/** A session that is over its limit, at the injection with which it went over. */
function overSession({ row, doses, mg }: Session): readonly Report[] {
  const limit = limitPer(row, 'session');
  if (limit === undefined || !isOver(mg, limit.mg)) return [];
  let sum = 0;
  const last = doses.find((dose) => isOver((sum += dose.mg ?? 0), limit.mg)) ?? doses.at(-1)!;
  const related = doses
    .filter((dose) => dose !== last && dose.mg !== undefined)
    .map(({ at, mg: part = 0 }) => ({
      start: at.start,
      end: at.end,
      form: 'part',
      args: { mg: mgText(part) },
    }));
  const args = { drug: row.name, mg: mgText(mg), limit: mgText(limit.mg), over: mgText(mg - limit.mg) };
  return [{ at: last.entry.volume ?? last.at, args, related }];
}

/** More on a square centimeter than trials had. */
function overArea({ entry, at, row, mg, cm2 }: InjectedDose): readonly Report[] {
  const limit = row && limitPer(row, 'cm2');
  if (limit === undefined || mg === undefined || cm2 === undefined || !isOver(mg, limit.mg * cm2)) return [];
  const args = {
    drug: row?.name ?? '',
    mg: mgText(mg),
    area: formatNumber(cm2),
    limit: mgText(limit.mg),
    per: mgText(mg / cm2),
  };
  return [{ at: entry.volume ?? at, form: 'area', args }];
}

export const check: Check = {
  code: 'dose/injected-over-limit',
  severity: 'warning',
  title: 'More of an injected drug than is usual for a session or an area',
  why: 'Triamcinolone thins the skin around a scar, and what is absorbed acts on the whole body. The sum of a day is compared with 40 mg, each site with 20 mg/cm² where its area is written. Both are for adults; the label of the 10 mg/mL product also asks for sites a centimeter apart. That of 40 mg/mL is for muscle and joints, though guidelines name it for keloids, so the strength is not reported.',
  sources: [
    { source: 'triamcinolone-session', mark: 'Q2' },
    { source: 'keloid-trials-2023', mark: 'Q' },
    { source: 'us-label-triamcinolone', mark: 'Q' },
  ],
  messages: {
    main: '{over} mg over the {limit} mg of a session: {mg} mg of {drug} in all. Check strength and volume. If it was given, tell the clinician and leave more time before the next session.',
    area: '{per} mg of {drug} on each cm², and no trial had more than {limit}: {mg} mg on {area} cm². Check strength, volume and area; if it was given, watch for thin skin.',
    part: '{mg} mg here',
  },
  alternatives: { readAs: [] },
  sourcesDiffer: {
    how: 'Trials gave at most 20 to 80 mg a session, secondary pages 40, one 150. The 40 mg is followed; no source was found for children.',
    settings: ['severities'],
  },
  find(subject) {
    const doses = injectedOf(subject);
    return [...sessionsOf(doses).flatMap(overSession), ...doses.flatMap(overArea)];
  },
};
