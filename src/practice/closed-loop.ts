import type { Practice } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { byGravity } from '../note/tree/severity.ts';
import type { Severity } from '../note/tree/finding.ts';
import type { Range } from '../note/tree/tree.ts';
import type { WordTable } from '../note/words/word-table.ts';
import { terms } from '../reference/follow-up.ts';
import type { SiteRow } from '../reference/sites.ts';
import type { PracticeSutureWindow } from '../reference/suture-windows.ts';
import type { Args } from '../note/tree/finding.ts';
import type { Faults } from './faults.ts';
import { approvalOf, type Approval } from './limits.ts';
import { publishedDays, usualOverdue, type Overdue, type SeverityWord } from './settings.ts';

/**
 * The checks by which nothing that was sent or promised is lost, with their own severities; a test holds them to the
 * catalogue, which is above this floor.
 */
export const closedLoop: ReadonlyMap<string, Severity> = new Map([
  ['follow-up/attempts-only', 'error'],
  ['follow-up/no-plan', 'warning'],
  ['follow-up/not-told', 'error'],
  ['follow-up/result-of-another-site', 'warning'],
  ['follow-up/result-overdue', 'error'],
  ['follow-up/specimen-not-sent', 'warning'],
  ['follow-up/step-not-done', 'warning'],
  ['follow-up/sutures-overdue', 'warning'],
]);

/** A setting by which the practice follows what is open less closely than is usual, and who means it. */
export interface LoosenedFollowUp {
  readonly what: string;
  readonly own: string;
  readonly usual: string;
  readonly approval: Approval;
}

/** Terms and windows longer than this many times the usual ones need an approval. */
const most = 2;

/** Holds the settings of follow-up to the usual ones: what is looser needs an approval, and is not used without. */
export class ClosedLoop {
  readonly loosened: LoosenedFollowUp[] = [];
  private readonly approval: Approval | undefined;

  constructor(
    private readonly practice: Practice,
    private readonly trusted: boolean,
    private readonly faults: Faults,
  ) {
    this.approval = approvalOf(practice.followUpApproved);
  }

  /** The severities that may be used. */
  severities(wanted: ReadonlyMap<string, SeverityWord>): ReadonlyMap<string, SeverityWord> {
    const [first] = this.practice.severities ?? [];
    if (!this.trusted && first !== undefined) {
      this.faults.add('loosening-ignored', first, {}, 'severities');
      return new Map();
    }
    const places = new Map((this.practice.severities ?? []).map((entry) => [entry.name, entry]));
    return new Map(
      [...wanted].filter(([code, own]) => {
        const usual = closedLoop.get(code);
        if (usual === undefined || (own !== 'off' && byGravity(own, usual) <= 0)) return true;
        return this.allows(places.get(code) ?? this.practice, 'severity', { what: code, own, usual });
      }),
    );
  }

  /** The terms that may be used; the usual one where its own is too long. */
  overdue(wanted: Overdue): Overdue {
    const used: { -readonly [Key in keyof Overdue]: Overdue[Key] } = { ...wanted };
    for (const { key, leaf, what, usual, unit } of termsOf(this.practice)) {
      const own = wanted[key];
      // What is out of proportion has a fault of its own.
      if (leaf === undefined || own === undefined || own !== leaf.value || own <= most * usual) continue;
      if (!this.allows(leaf, 'term', { what, own: `${own} ${unit}`, usual: `${usual} ${unit}` }))
        Object.assign(used, { [key]: usualOverdue[key] });
    }
    return used;
  }

  /** The windows that may be used. */
  windows(
    wanted: readonly PracticeSutureWindow[],
    sites: WordTable<SiteRow>,
  ): readonly PracticeSutureWindow[] {
    return wanted.filter(({ site, to }) => {
      const usual = publishedDays(site, sites)?.last;
      if (usual === undefined || to <= most * usual) return true;
      const at = this.practice.sutureWindows?.find((one) => one.to?.value === to)?.to ?? this.practice;
      return this.allows(at, 'window', {
        what: `stitches of the ${site}`,
        own: `day ${to}`,
        usual: `day ${usual}`,
      });
    });
  }

  private allows(at: Range, form: string, args: { what: string; own: string; usual: string }): boolean {
    if (this.approval === undefined) this.faults.add('looser-follow-up', at, args satisfies Args, form);
    else if (!this.trusted) this.faults.add('loosening-ignored', at, args satisfies Args, 'followUp');
    else this.loosened.push({ ...args, approval: this.approval });
    return this.approval !== undefined && this.trusted;
  }
}

interface Term {
  readonly key: keyof Overdue;
  readonly leaf: Leaf<number> | undefined;
  readonly what: string;
  readonly usual: number;
  readonly unit: string;
}

const termsOf = ({ overdue }: Practice): readonly Term[] => [
  {
    key: 'result',
    leaf: overdue?.result,
    what: 'a result is overdue',
    usual: usualOverdue.result,
    unit: 'working days',
  },
  {
    key: 'fungalCulture',
    leaf: overdue?.fungalCulture,
    what: 'a fungal culture is overdue',
    usual: usualOverdue.fungalCulture,
    unit: 'days',
  },
  {
    key: 'mycobacterialCulture',
    leaf: overdue?.mycobacterialCulture,
    what: 'a mycobacterial culture is overdue',
    usual: usualOverdue.mycobacterialCulture,
    unit: 'days',
  },
  {
    key: 'telling',
    leaf: overdue?.telling,
    what: 'telling a result is overdue',
    usual: terms.telling.count,
    unit: 'working days',
  },
  {
    key: 'cancer',
    leaf: overdue?.cancer,
    what: 'telling a diagnosis that can’t wait is overdue',
    usual: terms.tellingUrgent.count,
    unit: 'working days',
  },
  {
    key: 'attempts',
    leaf: overdue?.attempts,
    what: 'a letter is proposed',
    usual: usualOverdue.attempts,
    unit: 'tries',
  },
];
