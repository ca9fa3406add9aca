import assert from 'node:assert/strict';
import { folder, wheal, type Ran } from '../run.ts';

const dose = (line: string, cwd?: string): Promise<Ran> =>
  wheal(['dose', ...line.split(' ').filter((word) => word !== '')], cwd === undefined ? {} : { cwd });

const lidocaine = '--agent lidocaine --concentration 1% --weight 62kg';

describe('wheal dose', () => {
  it('says how much, which limit binds, and the source', async () => {
    const { code, out, err } = await dose(lidocaine);
    assert.equal(code, 0);
    assert.equal(err, '');
    for (const part of [
      '27.9 mL',
      '279 mg',
      '4.5 mg/kg at 62 kg',
      'US prescribing information',
      'an adult is assumed',
      'Decision support',
    ])
      assert.ok(out.includes(part), `${part}\n${out}`);
  });

  it('gives exactly the JSON of the design', async () => {
    const { code, out } = await dose(`${lidocaine} --format json`);
    assert.equal(code, 0);
    const json = JSON.parse(out) as Record<string, unknown>;
    assert.deepEqual(Object.keys(json), ['wheal', 'maxMg', 'maxMl', 'boundBy', 'source', 'advisories']);
    assert.deepEqual([json['maxMg'], json['maxMl'], json['boundBy']], [279, 27.9, 'weight']);
    assert.match(String(json['source']), /US prescribing information/);
    for (const advisory of json['advisories'] as object[])
      assert.deepEqual(Object.keys(advisory), ['maxMg', 'maxMl', 'source']);
  });

  it('takes ages, pounds and epinephrine, and cuts instead of rounding', async () => {
    const json = async (line: string): Promise<readonly unknown[]> => {
      const { out } = await dose(`${line} --format json`);
      const { maxMg, maxMl } = JSON.parse(out) as { maxMg: number; maxMl: number };
      return [maxMg, maxMl];
    };
    assert.deepEqual(await json('--agent lidocaine --concentration 1% --weight 7kg --age 7mo'), [21, 2.1]);
    assert.deepEqual(await json('--agent lidocaine --concentration 1% --weight 48kg --age 64'), [216, 21.6]);
    // 137 lb are 62.1421… kg, so 434.9950… mg.
    assert.deepEqual(
      await json('--agent lidocaine --concentration 1% --epinephrine 1:100,000 --weight 137lb'),
      [434.99, 43.4],
    );
    assert.deepEqual(
      await json('--agent lignocaine --concentration 20mg/mL --epinephrine none --weight 62kg'),
      [279, 13.9],
    );
  });

  it('lists the guideline for a child as advised', async () => {
    const { out } = await dose('--agent lidocaine --concentration 1% --weight 20kg --age 6 --format json');
    const { maxMg, advisories } = JSON.parse(out) as { maxMg: number; advisories: { maxMg: number }[] };
    assert.equal(maxMg, 60);
    assert.equal(advisories[0]?.maxMg, 40);
  });

  it('says that weak epinephrine does not count', async () => {
    const { out } = await dose(`${lidocaine} --epinephrine 1:400,000`);
    assert.ok(out.includes('279 mg') && out.includes('too weak'), out);
  });

  it('asks about a weight that does not fit the age', async () => {
    const { out } = await dose('--agent lidocaine --concentration 1% --weight 44kg --age 5');
    assert.match(out, /Check weight and age: 14\.3 to 28\.9 kg/);
  });

  it('goes by the practice file of the working directory', async () => {
    const root = folder({ 'practice.wheal.yaml': 'limits:\n  - {agent: lidocaine, max-mg-per-kg: 3}\n' });
    const { out } = await dose(lidocaine, root);
    assert.ok(out.includes('18.6 mL') && out.includes('practice.wheal.yaml'), out);
  });

  it('answers wrong usage with one line and exit code 2', async () => {
    for (const [line, says] of [
      ['', '--agent'],
      ['--agent lidocaine --concentration 1%', '--weight'],
      ['--agent lidocaine --weight 62kg', '--concentration'],
      ['--agent lidocane --concentration 1% --weight 62kg', 'did you mean lidocaine'],
      ['--agent lidocaine --concentration 1% --weight 62', "can't be read"],
      ['--agent lidocaine --concentration 1% --weight', '--weight needs a value'],
      ['--agent lidocaine --concentration 1% --weight -3kg', '--weight needs a value'],
      ['--agent lidocaine --concentration 1% --weight=-3kg', "can't be read"],
      ['--agent lidocaine --concentration 1% --weight 6200kg', 'proportion'],
      ['--agent lidocaine --concentration 1% --weight 40kg', 'age is needed'],
      ['--agent lidocaine --concentration 1% --epinephrine much --weight 62kg', '--epinephrine'],
      // 1:1,000 for 1:100,000 would be a hundred times the epinephrine.
      ['--agent lidocaine --concentration 1% --epinephrine 1:1000 --weight 62kg', 'stronger than 1:50,000'],
      [
        '--agent articaine --concentration 4% --epinephrine 1:100,000 --weight 14kg --age 3',
        'no limit is known',
      ],
      ['--agent lidocaine-prilocaine --concentration 2.5% --weight 62kg', 'amount and area'],
      [`${lidocaine} note.wheal.yaml`, 'note.wheal.yaml'],
      [`${lidocaine} --format yaml`, '--format'],
    ] as const) {
      const { code, out, err } = await dose(line);
      assert.equal(code, 2, line);
      assert.equal(out, '');
      assert.equal(err.split('\n').length, 2, err);
      assert.ok(err.includes(says), `${says}\n${err}`);
    }
  });
});
