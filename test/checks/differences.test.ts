import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { differenceOf, differences } from '../../src/checks/differences.ts';
import { isDanger } from '../../src/checks/danger.ts';
import { catalogue, checkOf } from '../../src/checks/index.ts';
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
  it('names checks that there are, each once, and settings that there are', () => {
    const codes = differences.flatMap((row) => row.codes);
    assert.equal(new Set(codes).size, codes.length);
    for (const code of codes) assert.ok(checkOf(code) !== undefined, code);
    for (const { settings } of differences) for (const one of settings) assert.ok(isSetting(one), one);
    assert.ok(!isSetting('overdue.nothing') && !isSetting('nothing'));
  });

  it('has a row for each check that says so itself', () => {
    const told = catalogue.filter(({ why }) => /\bsources differ\b|limits .*differ from country/i.test(why));
    assert.ok(told.length > 5);
    assert.deepEqual(
      told.filter(({ code }) => differenceOf(code) === undefined).map(({ code }) => code),
      [],
    );
  });

  it('offers to turn off no danger', () => {
    for (const { codes, settings } of differences)
      for (const code of codes)
        if (isDanger(checkOf(code)!)) assert.ok(!settings.includes('severities'), code);
  });

  for (const { codes, how, settings } of differences)
    for (const code of codes)
      it(`the page of ${code} says which is followed, and the setting`, () => {
        const page = readFileSync(pagePath(code), 'utf8');
        assert.ok(page.includes(how));
        for (const setting of settings) assert.ok(page.includes(`\`${setting}\``), setting);
      });
});
