import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { isDanger } from '../../src/checks/danger.ts';
import { catalogue } from '../../src/checks/index.ts';
import { practiceIndex } from '../../src/note/read.ts';
import { pagePath } from '../../src/build/pages.ts';

/** Whether a practice file has a key, `overdue.result` being one inside of another. */
function isSetting(path: string): boolean {
  let map = practiceIndex.get('practice');
  return path.split('.').every((part) => {
    const key = map?.byName.get(part);
    map = key?.map === undefined ? undefined : practiceIndex.get(key.map);
    return key !== undefined;
  });
}

describe('where sources differ', () => {
  it('knows which keys a practice file has', () => {
    assert.ok(isSetting('overdue.result') && !isSetting('overdue.nothing') && !isSetting('nothing'));
  });

  it('says so for each check whose reason mentions it', () => {
    const mentioned = catalogue.filter(({ why }) =>
      /\bsources differ\b|limits .*differ from country/i.test(why),
    );
    assert.ok(mentioned.length > 5);
    assert.deepEqual(
      mentioned.filter(({ sourcesDiffer }) => sourcesDiffer === undefined).map(({ code }) => code),
      [],
    );
  });

  for (const check of catalogue) {
    const { code, sourcesDiffer } = check;
    if (sourcesDiffer === undefined) continue;
    const { how, settings } = sourcesDiffer;
    it(`the page of ${code} says which is followed, and the setting`, () => {
      for (const one of settings) assert.ok(isSetting(one), one);
      if (isDanger(check)) assert.ok(!settings.includes('severities'), 'a danger cannot be turned off');
      const page = readFileSync(pagePath(code), 'utf8');
      assert.ok(page.includes(how));
      for (const setting of settings) assert.ok(page.includes(`\`${setting}\``), setting);
    });
  }
});
