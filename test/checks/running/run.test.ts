import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Check } from '../../../src/checks/check.ts';
import { isDanger, isFixed, refusals } from '../../../src/checks/danger.ts';
import { messageOf } from '../../../src/checks/index.ts';
import { maxFindings, runChecks, withSeverity, type Judgement } from '../../../src/checks/running/run.ts';
import { withAcceptance } from '../../../src/checks/acceptance.ts';
import type { Finding, Report, Severity } from '../../../src/note/tree/finding.ts';
import { readNote, type Source } from '../../../src/note/read.ts';
import type { Note } from '../../../src/note/generated/types.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

const fake = (code: string, severity: Severity, find: NonNullable<Check['find']>): Check => ({
  code,
  severity,
  title: 'A check made for this test',
  why: 'It finds what the test wants.',
  sources: [{ source: 'format', mark: 'format' }],
  messages: { main: 'found' },
  find,
});

/** Finds each place where a word is. */
const word = (code: string, severity: Severity, text: string, own?: Severity): Check =>
  fake(code, severity, ({ source }) =>
    [...source.text.matchAll(new RegExp(text, 'g'))].map(({ index }): Report => ({
      at: { start: index, end: index + text.length },
      ...(own === undefined ? {} : { severity: own }),
    })),
  );

const run = (
  text: string,
  checks: readonly Check[],
  severities: Readonly<Record<string, Severity | 'off'>> = {},
): Judgement =>
  runChecks(checks, readNote(text), {
    tables: { ...referenceTables, severities: new Map(Object.entries(severities)) },
    today: '2026-03-02',
  });

const severitiesOf = ({ findings }: Judgement): readonly Severity[] =>
  findings.map(({ severity }) => severity);

const note = `visit: 2026-03-02
procedures:
  - site: left ear
    remarks: odd
    anesthetic:
      - {agent: lidocaine, lot: odd}
  - site: right ear
    remarks: odd
`;

describe('running the checks', () => {
  it('gives findings in the order of the text', () => {
    const { findings } = run(note, [
      word('record/b', 'warning', 'right ear'),
      word('record/a', 'error', 'left ear'),
    ]);
    assert.deepEqual(
      findings.map(({ code }) => code),
      ['record/a', 'record/b'],
    );
  });

  it('takes the severity of the report before that of the check, and that of the practice before both', () => {
    const check = word('record/a', 'warning', 'left ear', 'information');
    assert.deepEqual(severitiesOf(run(note, [check])), ['information']);
    assert.deepEqual(severitiesOf(run(note, [check], { 'record/a': 'error' })), ['error']);
    assert.deepEqual(severitiesOf(run(note, [check], { 'record/a': 'off' })), []);
  });

  it('lets a practice neither turn off nor lower a danger', () => {
    for (const code of ['dose/a', 'allergy/a', 'device/a', 'specimen/wrong-medium']) {
      for (const severity of ['off', 'warning', 'hint'] as const)
        assert.deepEqual(
          severitiesOf(run(note, [word(code, 'error', 'left ear')], { [code]: severity })),
          ['error'],
          `${code} ${severity}`,
        );
      // What is only worth a look may be turned off in these families too.
      assert.deepEqual(severitiesOf(run(note, [word(code, 'warning', 'left ear')], { [code]: 'off' })), []);
    }
    assert.deepEqual(
      severitiesOf(run(note, [word('specimen/other', 'error', 'left ear')], { 'specimen/other': 'off' })),
      [],
    );
  });

  it('keeps the other checks when one throws, and says which one was lost without a word of the note', () => {
    const broken = fake('record/broken', 'hint', ({ source }) => {
      throw new Error(source.text);
    });
    const { findings, failures } = run(note, [broken, word('record/a', 'hint', 'left ear')]);
    const lost = findings.filter(({ code }) => code === 'record/check-failed');
    assert.deepEqual(
      lost.map(({ start, end, severity, args }) => ({ start, end, severity, args })),
      [{ start: 0, end: 0, severity: 'error', args: { check: 'record/broken' } }],
    );
    assert.match(messageOf(lost[0]!), /record\/broken/);
    assert.doesNotMatch(JSON.stringify(lost), /left ear/);
    assert.ok(findings.some(({ code }) => code === 'record/a'));
    assert.deepEqual(
      failures.map(({ check }) => check),
      ['record/broken'],
    );
  });

  it('shows the gravest findings of too many, and one as grave as the gravest that it leaves out', () => {
    const many = (count: number): Check =>
      fake('record/many', 'information', () => Array(count).fill({ at: { start: 9, end: 12 } }) as Report[]);
    const error = word('record/a', 'error', 'right ear');
    assert.equal(run(note, [many(maxFindings)]).findings.length, maxFindings);
    const { findings } = run(note, [many(maxFindings + 7), error]);
    assert.equal(findings.length, maxFindings + 1);
    assert.ok(findings.some(({ code }) => code === 'record/a'));
    const [more] = findings;
    assert.equal(more?.code, 'record/more-findings');
    assert.equal(more.severity, 'information');
    assert.deepEqual(more.args, { shown: maxFindings, more: 8 });
    const errors = fake('record/a', 'error', () =>
      Array.from({ length: maxFindings + 1 }, () => ({ at: { start: 0, end: 1 } })),
    );
    assert.equal(run(note, [errors]).findings[0]?.severity, 'error');
  });
});

describe('a file that is refused as a whole', () => {
  const refusedBy = (code: string): Judgement => {
    const source: Source<Note> = { ...readNote(note), problems: [{ code, at: { start: 0, end: 0 } }] };
    const checks = [
      word('record/a', 'error', 'left ear'),
      word('shape/other', 'error', 'left ear'),
      fake(code, 'error', ({ problems }) => problems(code)),
    ];
    return runChecks(checks, source, { tables: referenceTables, today: undefined });
  };

  for (const code of refusals) {
    it(`${code} is the only finding, and no dose is given`, () => {
      const { findings, dose } = refusedBy(code);
      assert.deepEqual(
        findings.map((finding) => finding.code),
        [code],
      );
      assert.equal(dose, null);
    });
  }

  it('is asked no more than how it is written where it holds no note', () => {
    const { findings, dose } = run('- a\n- b\n', [
      fake('record/a', 'error', () => [{ at: { start: 0, end: 1 } }]),
      fake('yaml/a', 'error', () => [{ at: { start: 0, end: 1 } }]),
    ]);
    assert.ok(findings.every(({ code }) => code.startsWith('yaml/')));
    assert.equal(dose, null);
  });
});

describe('accepting a finding', () => {
  const accept = '{check: record/a, reason: seen, by: K.O.}';
  const odd = word('record/a', 'error', 'odd');
  const places = {
    'in the procedure': [
      note.replace('    remarks: odd\n', `    accepted: [${accept}]\n    remarks: odd\n`),
      ['information', 'information', 'error'],
    ],
    'in the injection': [
      note.replace('lot: odd', `lot: odd, accepted: [${accept}]`),
      ['error', 'information', 'error'],
    ],
    'in the visit': [`${note}accepted: ${accept}\n`, ['information', 'information', 'information']],
  } as const;

  for (const [where, [text, severities]] of Object.entries(places)) {
    it(`${where} makes it information there and nowhere else`, () => {
      const { findings } = run(text, [odd]);
      assert.deepEqual(
        findings.map(({ severity }) => severity),
        severities,
      );
      for (const { severity, accepted } of findings)
        assert.deepEqual(accepted, severity === 'information' ? { reason: 'seen', by: 'K.O.' } : undefined);
    });
  }

  it('counts for a specimen and for an event', () => {
    const text = `visit: 2026-03-02
procedures:
  - {site: left ear, specimen: {label: odd, accepted: [${accept}]}, remarks: odd}
events:
  - {on: 2026-03-03, signs: odd, accepted: [${accept}]}
`;
    assert.deepEqual(severitiesOf(run(text, [odd])), ['information', 'error', 'information']);
  });

  it('counts for what is missing, which is reported at the key before the map', () => {
    const missing = fake('record/a', 'warning', ({ note: { procedures = [] } }) =>
      procedures.map(({ head }) => ({ at: head })),
    );
    const text = `visit: 2026-03-02\nprocedures: {site: left ear, accepted: [${accept}]}\n`;
    assert.deepEqual(severitiesOf(run(text, [missing])), ['information']);
  });

  for (const without of ['{check: record/a, by: K.O.}', '{check: record/a, reason: ??}', '{reason: seen}'])
    it(`does not count as ${without}`, () => {
      assert.deepEqual(severitiesOf(run(`${note}accepted: [${without}]\n`, [odd])), [
        'error',
        'error',
        'error',
      ]);
    });

  it('leaves a danger an error, and marks it', () => {
    const text = `${note}accepted: [{check: dose/a, reason: seen, by: K.O.}]\n`;
    const { findings } = run(text, [word('dose/a', 'error', 'left ear')]);
    assert.deepEqual(
      findings.map(({ severity, accepted }) => ({ severity, accepted })),
      [{ severity: 'error', accepted: { reason: 'seen', by: 'K.O.' } }],
    );
  });
});

describe('properties of severities and acceptance', () => {
  const severity = fc.constantFrom<Severity>('error', 'warning', 'information', 'hint');
  const finding = fc.record({
    code: fc.constantFrom(
      'dose/over-limit',
      'dose/near-limit',
      'allergy/agent',
      'device/current',
      'specimen/wrong-medium',
      'specimen/missing',
      'record/a',
      'yaml/empty',
      'yaml/syntax',
    ),
    severity,
    start: fc.nat(50),
    end: fc.nat(50),
    form: fc.constant('main'),
    args: fc.constant({}),
    related: fc.constant([]),
  });
  const wanted = fc.option(fc.oneof(severity, fc.constant<'off'>('off')), { nil: undefined });

  it('no acceptance changes the severity of a danger or adds a finding that was not there', () => {
    fc.assert(
      fc.property(finding, fc.nat(50), fc.nat(50), (one: Finding, start, end) => {
        const byCode = new Map([[one.code, { reason: 'seen', by: 'K.O.' }]]);
        const after = withAcceptance(one, [{ start, end, byCode }]);
        const inside = one.start >= start && one.end <= end;
        assert.equal(after.accepted !== undefined, inside);
        if (isDanger(one) || isFixed(one) || !inside) assert.equal(after.severity, one.severity);
        else assert.equal(after.severity, one.severity === 'hint' ? 'hint' : 'information');
        const accepted = inside ? { accepted: byCode.get(one.code) } : {};
        assert.deepEqual({ ...after }, { ...one, severity: after.severity, ...accepted });
      }),
    );
  });

  it('no severity of a practice hides or lowers a danger, or what says that not all was judged', () => {
    fc.assert(
      fc.property(finding, wanted, (one: Finding, severityWanted) => {
        const after = withSeverity(one, severityWanted);
        if (isFixed(one)) assert.equal(after, one);
        else if (severityWanted === 'off') assert.equal(after, undefined);
        else assert.equal(after?.severity, severityWanted ?? one.severity);
      }),
    );
  });
});
