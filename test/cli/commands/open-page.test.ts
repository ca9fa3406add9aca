import assert from 'node:assert/strict';
import { folder, inLimit, wheal } from '../run.ts';

describe('wheal open --format html', () => {
  it('writes a page', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    const { out } = await wheal(['open', '.', '--format', 'html', '--as-of', '2026-06-01'], { cwd });
    assert.match(out, /^<!DOCTYPE html>[^]*<h1>Open items as of 2026-06-01<\/h1>/);
  });
});
