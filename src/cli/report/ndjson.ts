import { safeJson } from '../../documents/safe-json.ts';

/**
 * Records of several kinds, each as JSON in a line of its own, so that outputs can be put after each other.
 * @param head what every record begins with
 * @param records by the name of the list that they are in where all is one JSON
 */
export const ndjsonOf = (head: object, records: Readonly<Record<string, readonly object[]>>): string =>
  Object.entries(records)
    .flatMap(([record, all]) => all.map((one) => `${safeJson({ wheal: 1, record, ...head, ...one })}\n`))
    .join('');
