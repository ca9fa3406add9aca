import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import PostalMime from 'postal-mime';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

describe('wheal handout', () => {
  it('writes text, a page and a mail draft in the language that is asked for', async () => {
    const cwd = folder({
      'a.wheal.yaml': inLimit,
      'practice.wheal.yaml': 'name: Example Skin\ntelephone: 555-0100\n',
    });
    const text = await wheal(['handout', 'a.wheal.yaml', '--language', 'es'], { cwd });
    assert.equal(text.code, 0);
    assert.equal(text.err, '');
    assert.match(text.out, /Example Skin[^]*Qué se hizo[^]*555-0100/);
    const html = await wheal(['handout', 'a.wheal.yaml', '--format', 'html'], { cwd });
    assert.match(html.out, /^<!DOCTYPE html>/);
    const mail = await PostalMime.parse(
      (await wheal(['handout', 'a.wheal.yaml', '--format', 'eml'], { cwd })).out,
    );
    assert.equal(mail.text?.trim(), (await wheal(['handout', 'a.wheal.yaml'], { cwd })).out.trim());
    // Many mail programs leave drawings out, so a mail has none.
    assert.match(html.out, /<figure>/);
    assert.equal(mail.html?.trim(), html.out.replace(/<figure>[^]*<\/figure>\n/, '').trim());
    assert.equal(mail.date, '2026-03-02T10:05:00.000Z');
  });

  it('reminds of health data in a mail, and never in the words for the patient', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'practice.wheal.yaml': 'telephone: 555-0100\n' });
    const { out, err } = await wheal(['handout', 'a.wheal.yaml', '--format', 'eml'], { cwd });
    assert.match(err, /health data/);
    assert.doesNotMatch(out.replaceAll('=\r\n', ''), /health data/);
  });

  it('says on standard error what to look at first', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const { code, out, err } = await wheal(['handout', 'a.wheal.yaml'], { cwd });
    assert.equal(code, 1);
    assert.match(out, /What was done/);
    assert.match(err, /error/);
    assert.match(err, /telephone/);
  });

  it('answers 1 and says why where there can be none, and writes nothing', async () => {
    const cwd = folder({
      'list.wheal.yaml': '- a\n',
      'binary.wheal.yaml': 'a\u0000',
      'empty.wheal.yaml': 'wheal: 1\nvisit: 2026-03-02\n',
    });
    for (const name of ['list.wheal.yaml', 'binary.wheal.yaml', 'empty.wheal.yaml']) {
      const { code, out, err } = await wheal(['handout', name, '--out', 'x.txt'], { cwd });
      assert.equal(code, 1, name);
      assert.equal(out, '');
      assert.match(err, new RegExp(`^wheal: no handout can be written for ${name}: [^\n]+\n$`));
    }
    assert.ok(!readdirSync(cwd).includes('x.txt'));
  });

  it('writes a file whole, and never replaces one without asking', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    const argv = ['handout', 'a.wheal.yaml', '--format', 'eml', '--out', 'a.eml'];
    assert.equal((await wheal(argv, { cwd })).code, 0);
    assert.match(readFileSync(join(cwd, 'a.eml'), 'utf8'), /^MIME-Version: 1\.0\r\nX-Unsent: 1\r\n/);
    assert.equal((await wheal(argv, { cwd })).code, 2);
  });

  const nothing: Readonly<Record<string, readonly string[]>> = {
    'no note': ['handout'],
    'an unknown format': ['handout', '-', '--format', 'pdf'],
    'a language that there is not': ['handout', '-', '--language', 'pl'],
    'a path that is not there': ['handout', 'nowhere.wheal.yaml'],
  };
  for (const [what, argv] of Object.entries(nothing))
    it(`answers 2 for ${what}`, async () => {
      const { code, err } = await wheal(argv, { cwd: folder({}), input: inLimit });
      assert.equal(code, 2);
      assert.match(err, /^wheal: [^\n]+\n$/);
    });
});
