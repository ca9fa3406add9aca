import { adviceSources } from './advice.ts';
import { aftercareSources } from './aftercare.ts';
import { closureSources } from './closure.ts';
import { dangerSources } from './danger.ts';
import { doseSources } from './dose.ts';
import { followUpSources } from './follow-up.ts';
import { notationSources } from './notation.ts';
import { recordSources } from './record.ts';
import { siteSources } from './site.ts';

/** What each source key means, as it is cited. One file for each topic, so that two people can add sources at once. */
const sources: ReadonlyMap<string, string> = new Map(
  [
    adviceSources,
    doseSources,
    siteSources,
    closureSources,
    dangerSources,
    recordSources,
    notationSources,
    aftercareSources,
    followUpSources,
  ].flatMap((topic) => Object.entries(topic)),
);

/** The citation of a source key. @throws Error for a key that no topic has */
export function citation(key: string): string {
  const text = sources.get(key);
  if (text === undefined) throw new Error(`no source is called ${key}`);
  return text;
}
