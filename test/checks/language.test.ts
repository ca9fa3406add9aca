/** The words that people read: plain English of a US clinic, and short where something is dangerous. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { catalogue } from '../../src/checks/index.ts';

/** Words that were retired, each with the plain one. What is between backquotes is a key or a word of the note. */
const retired: readonly (readonly [pattern: RegExp, plain: string])[] = [
  [/\bmend(?:s|ed)?\b/i, 'fix'],
  [/\bbehind\b/i, 'after'],
  [/\bblanks?\b/i, 'space'],
  [/\brows?\b/i, 'line or entry'],
  [/\bstands?\b/i, 'is'],
  [/\btells? of\b|\btold of\b/i, 'mentions, reports'],
  [/\bmisspelt\b/i, 'misspelled'],
  [/\bcan not\b/i, 'cannot'],
  [/\banew\b/i, 'again'],
  [/\breckon(?:s|ed)?\b/i, 'counted, calculated'],
  [/\bfor want of\b/i, 'for lack of'],
  [/\bakin\b/i, 'related'],
  [/\blies?\b/i, 'is'],
  [/\bin order\b(?! of)/i, 'within the limit, safe'],
  [/\bweigh (?:a|an|another|less|whether)\b/i, 'consider'],
];

const words = (text: string): readonly string[] =>
  text
    .replace(/\{\w+\}|`[^`]*`/g, 'x')
    .split(/\s+/)
    .filter((word) => /\w/.test(word));

function assertPlain(text: string, where: string): void {
  const own = text.replace(/`[^`]*`|\{\w+\}/g, 'x');
  for (const [pattern, plain] of retired)
    assert.doesNotMatch(own, pattern, `${where}: write "${plain}" instead, in: ${text}`);
}

const labels = (file: string): readonly (readonly [string, string])[] =>
  Object.entries(JSON.parse(readFileSync(file, 'utf8')) as Record<string, string>);

describe('the language', () => {
  for (const { code, title, why, messages } of catalogue)
    it(`of ${code} is plain`, () => {
      assertPlain(title, `title of ${code}`);
      assertPlain(why, `why of ${code}`);
      for (const [form, message] of Object.entries(messages)) assertPlain(message, `${code}, ${form}`);
    });

  it('of labels of the editor is plain', () => {
    for (const [key, text] of labels('package.nls.json')) assertPlain(text, key);
    for (const [, text] of labels('src/editor/l10n/bundle.l10n.json')) assertPlain(text, 'a label');
  });

  it('of a message takes at most 40 words, what the note fills in not counted', () => {
    for (const { code, messages } of catalogue)
      for (const [form, message] of Object.entries(messages))
        assert.ok(words(message).length <= 40, `${code}, ${form}: ${words(message).length} words`);
  });

  it('of a danger takes at most 35', () => {
    for (const { code, severity, messages } of catalogue)
      for (const [form, message] of Object.entries(severity === 'error' ? messages : {}))
        assert.ok(words(message).length <= 35, `${code}, ${form}: ${words(message).length} words`);
  });
});
