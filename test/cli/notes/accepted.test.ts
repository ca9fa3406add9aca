import assert from 'node:assert/strict';
import type { Log } from 'sarif';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

// 26 mL of plain 1% are 260 mg of 279 mg at 62 kg.
const near = inLimit.replaceAll('1 mL', '13 mL');
const reason = 'two large areas in one visit';
const acceptedAs = (note: string, code: string): string =>
  `${note}accepted: [{check: ${code}, reason: ${reason}, by: K.O.}]\n`;

interface Reported {
  readonly code: string;
  readonly severity: string;
  readonly accepted?: { readonly reason: string; readonly by: string };
}

async function findingsOf(input: string): Promise<{ code: number; findings: readonly Reported[] }> {
  const { code, out } = await wheal(['check', '-', '--format', 'json'], { cwd: folder({}), input });
  const { files } = JSON.parse(out) as { files: { findings: readonly Reported[] }[] };
  return { code, findings: files[0]?.findings ?? [] };
}

describe('accepted findings', () => {
  it('are information, with the reason, in JSON', async () => {
    const { code, findings } = await findingsOf(acceptedAs(near, 'dose/near-limit'));
    const finding = findings.find((one) => one.code === 'dose/near-limit');
    assert.equal(finding?.severity, 'information');
    assert.deepEqual(finding.accepted, { reason, by: 'K.O.' });
    assert.equal(code, 0);
  });

  it('stay errors where they are dangers', async () => {
    const { code, findings } = await findingsOf(acceptedAs(overLimit, 'dose/over-limit'));
    const finding = findings.find((one) => one.code === 'dose/over-limit');
    assert.equal(finding?.severity, 'error');
    assert.equal(finding.accepted?.reason, reason);
    assert.equal(code, 1);
  });

  it('are marked and counted in text', async () => {
    const { out } = await wheal(['check', '-'], {
      cwd: folder({}),
      input: acceptedAs(near, 'dose/near-limit'),
    });
    assert.match(out, /^ {6}accepted by K\.O\.: two large areas in one visit$/m);
    assert.match(out, /\(1 accepted\)/);
  });

  it('are suppressed in SARIF, but not where they stay errors', async () => {
    const suppressionsOf = async (note: string, code: string): Promise<unknown> => {
      const { out } = await wheal(['check', '-', '--format', 'sarif'], {
        cwd: folder({}),
        input: acceptedAs(note, code),
      });
      return (JSON.parse(out) as Log).runs[0]?.results?.find(({ ruleId }) => ruleId === code)?.suppressions;
    };
    assert.deepEqual(await suppressionsOf(near, 'dose/near-limit'), [
      { kind: 'inSource', status: 'accepted', justification: reason },
    ]);
    assert.deepEqual(await suppressionsOf(overLimit, 'dose/over-limit'), []);
  });
});
