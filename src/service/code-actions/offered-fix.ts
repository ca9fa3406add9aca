import type { Finding, Fix } from '../../note/tree/finding.ts';

/** A fix with the finding that it fixes. Its edits are made for `analysis.text` and fit no other text. */
export interface OfferedFix extends Fix {
  readonly code: string;
  readonly finding: Finding;
  /**
   * `mend` takes the finding away. `fill` puts in what is missing as `??`, `accept` an acceptance with `??` for its
   * reason, and `plan` an event with `??` for what is to be done: a person has to write there.
   */
  readonly does: 'mend' | 'fill' | 'accept' | 'plan';
}
