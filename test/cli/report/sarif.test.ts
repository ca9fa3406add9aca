import assert from 'node:assert/strict';
import type { Log, ReportingDescriptor, Result } from 'sarif';
import { folder, overLimit, wheal } from '../run.ts';

async function sarif(files: Readonly<Record<string, string>>): Promise<Log> {
  const { out } = await wheal(['check', '.', '--format', 'sarif'], { cwd: folder(files) });
  return JSON.parse(out) as Log;
}

const rulesOf = ({ runs }: Log): readonly ReportingDescriptor[] => runs[0]?.tool.driver.rules ?? [];

const ruleOf = (log: Log, { ruleIndex }: Result): ReportingDescriptor | undefined =>
  rulesOf(log)[ruleIndex ?? -1];

const level = /^(error|warning|note)$/;

// The members that SARIF 2.1.0 (OASIS Standard, 27 March 2020) requires: sections 3.13, 3.14, 3.18, 3.19, 3.27, 3.49.
describe('SARIF 2.1.0', () => {
  it('has the required members', async () => {
    const log = await sarif({ 'a.wheal.yaml': overLimit });
    assert.equal(log.version, '2.1.0');
    const [run] = log.runs;
    assert.equal(run?.tool.driver.name, 'wheal');
    assert.equal(typeof run.tool.driver.version, 'string');
    assert.equal(run.columnKind, 'utf16CodeUnits');
    for (const rule of rulesOf(log)) {
      assert.ok(rule.id && rule.shortDescription?.text && rule.help?.text, rule.id);
      assert.match(String(rule.defaultConfiguration?.level), level);
    }
    const ids = rulesOf(log).map(({ id }) => id);
    assert.equal(new Set(ids).size, ids.length, 'each rule once');
    for (const result of run.results ?? []) {
      assert.ok(result.message.text);
      assert.equal(ruleOf(log, result)?.id, result.ruleId);
      assert.match(String(result.level), level);
      // Section 3.27.23: of a run either every result has suppressions or none.
      assert.ok(Array.isArray(result.suppressions));
    }
  });

  it('points with lines and columns from 1, to all places', async () => {
    const log = await sarif({ 'a.wheal.yaml': overLimit });
    const result = log.runs[0]?.results?.find(({ ruleId }) => ruleId === 'dose/over-limit');
    assert.deepEqual(result?.locations?.[0]?.physicalLocation, {
      artifactLocation: { uri: 'a.wheal.yaml' },
      region: { startLine: 9, startColumn: 55, endLine: 9, endColumn: 60 },
    });
    assert.equal(result.relatedLocations?.[0]?.physicalLocation?.region?.startLine, 8);
    assert.ok(result.relatedLocations[0].message?.text);
  });

  it('names the page of each check, absolutely, by the address that is asked for', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const driver = async (...more: string[]): Promise<Log['runs'][number]['tool']['driver'] | undefined> => {
      const { out } = await wheal(['check', '.', '--format', 'sarif', ...more], { cwd });
      return (JSON.parse(out) as Log).runs[0]?.tool.driver;
    };
    const helpUri = (rules: ReportingDescriptor[] | undefined): string | undefined =>
      rules?.find(({ id }) => id === 'dose/over-limit')?.helpUri;
    const own = await driver();
    assert.equal(own?.informationUri, 'urn:wheal');
    assert.equal(helpUri(own.rules), 'urn:wheal:check:dose/over-limit');
    const asked = await driver('--pages', 'https://intranet.example/checks');
    assert.equal(asked?.informationUri, 'https://intranet.example/checks/');
    assert.equal(helpUri(asked.rules), 'https://intranet.example/checks/dose/over-limit.md');
    assert.equal((await wheal(['check', '.', '--pages', 'checks'], { cwd })).code, 2);
  });

  it('gives each result a fingerprint that lines above it do not change, and no two the same', async () => {
    const prints = async (text: string): Promise<readonly string[]> => {
      const log = await sarif({ 'a.wheal.yaml': text });
      return (log.runs[0]?.results ?? []).map(
        ({ ruleId, partialFingerprints }) => `${ruleId} ${partialFingerprints?.['wheal/v1']}`,
      );
    };
    const procedure = overLimit.slice(overLimit.indexOf('  - site'));
    const before = await prints(`${overLimit}${procedure}`);
    assert.ok(before.length > 5);
    assert.equal(new Set(before).size, before.length);
    for (const one of before) assert.match(one, / [0-9a-f]{16}$/);
    assert.deepEqual(await prints(`# a remark\n\n${overLimit}${procedure}`), before);
  });

  it('encodes paths as references', async () => {
    const log = await sarif({ 'room 1/50% #é.wheal.yaml': overLimit });
    const uris = (log.runs[0]?.results ?? []).map(
      (result) => result.locations?.[0]?.physicalLocation?.artifactLocation?.uri,
    );
    assert.deepEqual([...new Set(uris)], ['room%201/50%25%20%23%C3%A9.wheal.yaml']);
  });

  it('reports a file that can not be read, with a rule', async () => {
    const log = await sarif({ 'a.wheal.yaml': 'a\u0000b' });
    const [result] = log.runs[0]?.results ?? [];
    assert.ok(result);
    assert.equal(ruleOf(log, result)?.id, result.ruleId);
    assert.equal(result.level, 'error');
    assert.equal(result.locations?.[0]?.physicalLocation?.region?.startLine, 1);
  });

  it('is whole where nothing was found', async () => {
    const { out } = await wheal(['check', '-', '--format', 'sarif'], { cwd: folder({}), input: '' });
    assert.ok(Array.isArray((JSON.parse(out) as Log).runs[0]?.results));
  });
});
