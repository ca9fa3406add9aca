import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { pagePath, renewed, sourceFileOf } from '../../src/build/pages.ts';
import { catalogue, checkPractice, messageOf } from '../../src/checks/index.ts';
import { checkFailed, moreFindings, notRecorded } from '../../src/checks/record/judging.ts';
import type { Finding } from '../../src/note/tree/finding.ts';
import { readPractice } from '../../src/note/read.ts';
import { tablesFrom } from '../../src/practice/tables.ts';
import { examplesUnder, type Example } from './examples.ts';
import { assertWords, judgeBy } from './tester.ts';

/** What is found in an example; the examples of checks of the practice file are practice files. */
const findings = (code: string, { text, today, practice }: Example): readonly Finding[] =>
  code.startsWith('practice/') && practice === undefined
    ? checkPractice(readPractice(text), { trusted: code !== 'practice/loosening-ignored' })
    : judgeBy(
        code,
        text,
        practice === undefined ? { today } : { today, tables: tablesFrom(readPractice(practice)) },
      );

/** Reported by the runner about its own work, or put together of others: no note brings them about. */
const withoutExamples: ReadonlySet<string> = new Set([checkFailed.code, moreFindings.code, notRecorded.code]);

describe('pages of the checks', () => {
  for (const check of catalogue) {
    describe(check.code, () => {
      const path = pagePath(check.code);
      const page = existsSync(path) ? readFileSync(path, 'utf8') : '';

      it('has a page whose head is that of the check', () => {
        assert.notEqual(page, '', `${path} is missing`);
        assert.equal(page, renewed(page, check), 'run npm run generate');
        assert.ok(page.includes(`\nSource: \`${sourceFileOf(check.code)}\`\n`));
      });

      if (withoutExamples.has(check.code)) return;

      it('shows bad examples that it finds', () => {
        const bad = examplesUnder(page, 'Bad');
        assert.ok(bad.length > 0, 'no bad example');
        for (const example of bad) {
          const own = findings(check.code, example).filter(({ code }) => code === check.code);
          assert.ok(own.length > 0, example.text);
          own.forEach(assertWords);
        }
      });

      it('shows good examples that it does not find', () => {
        const good = examplesUnder(page, 'Good');
        assert.ok(good.length > 0, 'no good example');
        for (const example of good) {
          assert.deepEqual(
            findings(check.code, example)
              .filter(({ code }) => code === check.code)
              .map(messageOf),
            [],
            example.text,
          );
        }
      });
    });
  }
});
