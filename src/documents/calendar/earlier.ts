import { plain } from '../one-line.ts';

/** An entry of an earlier calendar of ours, as it is taken out again. */
export interface EarlierEntry {
  readonly uid: string;
  /** The first day, as the calendar has it: `20260312`. */
  readonly start: string;
  readonly summary: string;
  readonly sequence: number;
}

/** How entries are named here, so that nothing of another program is ever taken out. */
export const uidEnding = '@wheal';

/** The entries of an earlier calendar that are not canceled there, by their UID; those of other programs are left out. */
export function entriesIn(text: string): ReadonlyMap<string, EarlierEntry> {
  const found = new Map<string, EarlierEntry>();
  let fields: Map<string, string> | undefined;
  for (const line of text.replace(/\r?\n[ \t]/g, '').split(/\r?\n/)) {
    if (line === 'BEGIN:VEVENT') fields = new Map();
    else if (line === 'END:VEVENT') {
      const entry = fields === undefined ? undefined : entryOf(fields);
      if (entry !== undefined) found.set(entry.uid, entry);
      fields = undefined;
    } else if (fields !== undefined) {
      const colon = line.indexOf(':');
      const name = line.slice(0, colon);
      if (colon > 0 && !fields.has(name)) fields.set(name, line.slice(colon + 1));
    }
  }
  return found;
}

function entryOf(fields: ReadonlyMap<string, string>): EarlierEntry | undefined {
  const uid = fields.get('UID') ?? '';
  const start = fields.get('DTSTART;VALUE=DATE') ?? '';
  if (!uid.endsWith(uidEnding) || !/^\d{8}$/.test(start) || fields.get('STATUS') === 'CANCELLED')
    return undefined;
  const sequence = Number(fields.get('SEQUENCE') ?? '0');
  return {
    uid: plain(uid),
    start,
    summary: plain(fields.get('SUMMARY') ?? ''),
    sequence: Number.isSafeInteger(sequence) && sequence >= 0 ? sequence : 0,
  };
}
