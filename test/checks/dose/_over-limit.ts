import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags } from '../tester.ts';

export const says = (code: string, marked: string, ...parts: readonly string[]): void => {
  const [finding] = flags(code, marked);
  const message = messageOf(finding!);
  assert.ok(message.split(' ').length <= 35, message);
  for (const part of parts) assert.ok(message.includes(part), `${message}\nhas no: ${part}`);
};
