/** Runs mocha inside an extension host and reports each test, and at the end the result, as tagged lines. */
import 'mocha/mocha.js';
import * as vscode from 'vscode';

interface Failed extends Error {
  readonly actual?: unknown;
  readonly expected?: unknown;
}

const say = (line: string): void => {
  for (const one of line.split('\n')) console.log(`suite| ${one.replaceAll('%', '%%')}`);
};

// Mocha calls a reporter with `new`.
function TaggedLines(runner: Mocha.Runner): void {
  runner.on('suite', ({ title }) => {
    if (title !== '') say(title);
  });
  runner.on('pass', ({ title, duration }) => {
    say(`  ok ${title} (${duration ?? 0} ms)`);
  });
  runner.on('fail', ({ title }, error: Failed) => {
    say(`  FAILED ${title}\n${error.stack ?? error.message}`);
    if ('expected' in error) say(`actual ${show(error.actual)}\nexpected ${show(error.expected)}`);
  });
}

const show = (value: unknown): string => (value === undefined ? 'undefined' : JSON.stringify(value));

/** Runs the tests that `load` declares; rejects if one fails. */
export function start(load: () => void): Promise<void> {
  mocha.setup({ ui: 'bdd', timeout: 120_000, reporter: TaggedLines as never });
  say(
    `VS Code ${vscode.version}, ${vscode.env.appHost}, ${vscode.env.uiKind === vscode.UIKind.Desktop ? 'desktop' : 'browser'}`,
  );
  load();
  return new Promise((resolve, reject) => {
    // The one of the class: that of the instance is for a page, and reads its address.
    const runner = Mocha.prototype.run.call(mocha, (failures) => {
      const { tests = 0, passes = 0, pending = 0 } = runner.stats ?? {};
      say(`RESULT ${JSON.stringify({ tests, passes, failures, pending })}`);
      if (failures === 0) resolve();
      else reject(new Error(`${failures} tests failed`));
    });
  });
}
