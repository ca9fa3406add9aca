import assert from 'node:assert/strict';
import { checkOf } from '../../src/checks/index.ts';
import { limits } from '../../src/reference/limits.ts';
import { differences, type Difference, type Fact } from './published/facts.ts';
import { parseCsv, rowsOf, topics } from './published/files.ts';
import { factsOfFile } from './published/of-files.ts';
import { factsOfTables } from './published/of-tables.ts';

const published = topics.flatMap((topic) => factsOfFile(topic, rowsOf(topic)));
const spoken = new Set(published.map(({ key }) => key));
const product = topics.flatMap((topic) => factsOfTables(topic, spoken));
const listed = rowsOf('disagreements');

const sameAs = (one: Difference) => (row: Difference) =>
  row.id === one.id && row.product === one.product && row.published === one.published;

const listedDifferences: readonly Difference[] = listed.map((row) => ({
  id: row['id']!,
  product: row['product']!,
  published: row['published']!,
}));

const told = ({ id, product: ours, published: theirs }: Difference): string => {
  if (theirs === '')
    return `${id}: the tables say ${ours}, and no row of the files in test/reference/published does: write it down there from its source`;
  if (ours === '') return `${id}: a source says ${theirs}, and no row of the tables does`;
  return `${id}: the tables say ${ours}, a source says ${theirs}`;
};

describe('every published number, transcribed twice', () => {
  const found = differences(product, published);

  it('is the same in the tables and in the files, both ways', () => {
    const unlisted = found.filter((one) => !listedDifferences.some(sameAs(one)));
    assert.deepEqual(unlisted.map(told), []);
  });

  it('disagrees where the list says so and nowhere else', () => {
    const settled = listedDifferences.filter((one) => !found.some(sameAs(one)));
    assert.deepEqual(
      settled.map(({ id }) => `${id}: no longer disagrees like this; strike it from disagreements.csv`),
      [],
    );
  });

  it('would not go unseen if it were another', () => {
    const unseen = product.filter((fact) => {
      const altered: Fact = { ...fact, value: `${fact.value}0` };
      const others = product.filter((one) => one.key === fact.key && one !== fact);
      const theirs = published.filter(({ key }) => key === fact.key);
      return differences([...others, altered], theirs).every((one) => listedDifferences.some(sameAs(one)));
    });
    assert.deepEqual(unseen, []);
  });

  it('is looked for in the source whose mg/kg is taken beside a label that has a cap only', () => {
    const borrowed = limits.filter(({ mgPerKgFrom }) => mgPerKgFrom !== undefined);
    assert.notEqual(borrowed.length, 0);
    for (const { agent, epinephrine, mgPerKg, mgPerKgFrom } of borrowed) {
      assert.equal(mgPerKgFrom, 'wikem-local-anesthetics');
      const row = rowsOf('limits').find(
        (one) =>
          one['agent'] === agent &&
          one['authority'] === 'WikEM' &&
          one['epinephrine'] === (epinephrine ? 'yes' : 'no') &&
          one['quantity'] === 'dose per weight',
      );
      assert.equal(row?.['value'], String(mgPerKg), agent);
    }
  });
});

describe('the files of published numbers', () => {
  it('name source, mark and day of each number once', () => {
    for (const topic of topics) {
      const rows = rowsOf(topic);
      assert.equal(new Set(rows.map(({ id }) => id)).size, rows.length, topic);
      for (const row of rows) {
        for (const column of ['quantity', 'value', 'source'])
          assert.notEqual(row[column], '', `${topic}, ${row['id']}: ${column}`);
        assert.match(row['mark']!, /^(?:Q|Q2|M|C)$/);
        assert.match(row['seen']!, /^\d{4}-\d\d-\d\d$/);
        assert.match(row['read_by']!, /^(?:transcriber|earlier reading|after comparison)$/);
      }
    }
  });

  it('say of each known disagreement what it is and why', () => {
    assert.equal(new Set(listed.map(({ id }) => id)).size, listed.length);
    for (const row of listed) {
      assert.match(row['kind']!, /^(?:own choice|not judged|in a check|not read again)$/, row['id']);
      assert.notEqual(row['why'], '', row['id']);
      if (row['kind'] === 'in a check') {
        const code = /`([a-z-]+\/[a-z-]+)`/.exec(row['why']!)?.[1] ?? '';
        assert.notEqual(checkOf(code), undefined, row['id']);
      }
    }
  });

  it('are read as RFC 4180 has it', () => {
    assert.deepEqual(parseCsv('a,b\r\n"1,5","say ""x"""\r\n,2\n'), [
      { a: '1,5', b: 'say "x"' },
      { a: '', b: '2' },
    ]);
    assert.throws(() => parseCsv('a,b\n1\n'), /Not as long/);
    assert.throws(() => parseCsv('a\n"1" x\n'), /Not CSV/);
  });
});

describe('a comparison of numbers', () => {
  const any = (value: string, from?: number, below?: number): Fact => ({
    key: 'k',
    value,
    ...(from === undefined ? {} : { from }),
    ...(below === undefined ? {} : { below }),
  });

  it('takes a row for everybody for the same as one for children and one for adults', () => {
    assert.deepEqual(differences([any('7')], [any('7', 0, 216), any('7', 216)]), []);
  });

  it('names the ages at which the two differ', () => {
    assert.deepEqual(differences([any('7', 144)], [any('7', 216)]), [
      { id: 'k / 12 to 18 years', product: '7', published: '' },
    ]);
    assert.deepEqual(differences([any('7')], [any('7', 0, 12), any('6', 12, 24), any('6', 24)]), [
      { id: 'k / from 1 years', product: '7', published: '6' },
    ]);
  });

  it('names a row without its twin, on either side', () => {
    assert.deepEqual(differences([], [any('7')]), [{ id: 'k', product: '', published: '7' }]);
    assert.deepEqual(differences([any('7')], []), [{ id: 'k', product: '7', published: '' }]);
  });
});
