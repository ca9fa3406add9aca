import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  closeSync,
  constants,
  cpSync,
  existsSync,
  mkdtempSync,
  openSync,
  readFileSync,
  readSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inLimit, overLimit } from '../run.ts';
import { buildProgram } from './program.ts';

/** The command as a process of its own, bundled for this test, since dist/ may be old or missing. */
describe('the wheal command as a process', () => {
  const root = mkdtempSync(join(tmpdir(), 'wheal-built-'));
  const program = join(root, 'wheal.cjs');
  const many = join(root, 'many');
  const asOf = ['--as-of', '2026-04-30'];
  after(() => {
    rmSync(root, { recursive: true, force: true });
  });

  before(async () => {
    await buildProgram(root);
    cpSync('samples', many, { recursive: true });
    cpSync('test/fixtures/lean', join(many, 'lean'), { recursive: true });
    for (let at = 0; at < 100; at++)
      writeFileSync(
        join(many, `${at}.wheal.yaml`),
        inLimit.replace('C-1', `C-${at % 70}`).replace('1 mL', `${1 + at / 100} mL`),
      );
    // Half of the limit each, in the first and in the last portion.
    for (const [at, name] of ['0half', 'lean/half-0', 'half-z'].entries())
      writeFileSync(
        join(many, `${name}.wheal.yaml`),
        inLimit.replaceAll('1 mL', `${13 - at / 10} mL`).replace('C-1', 'H-1'),
      );
    writeFileSync(join(many, 'z.wheal.yaml'), '- a\n');
    writeFileSync(join(root, 'bad.wheal.yaml'), overLimit);
    writeFileSync(join(root, 'good.wheal.yaml'), inLimit);
  });

  const run = (
    argv: readonly string[],
    input = '',
  ): { status: number | null; stdout: string; stderr: string } =>
    spawnSync(process.execPath, [program, ...argv], { cwd: root, input, encoding: 'utf8' });

  it('answers with exit codes', () => {
    assert.equal(run(['check', 'bad.wheal.yaml']).status, 1);
    assert.equal(run(['check', 'missing']).status, 2);
    assert.equal(run(['--help']).status, 0);
    assert.equal(run([]).status, 2);
  });

  it('opens no connection and starts no other process, whatever it is asked', function () {
    this.timeout(120_000);
    const guard = join(root, 'guard.cjs');
    writeFileSync(guard, guarded);
    for (const argv of [
      ['check', '.'],
      ['check', 'bad.wheal.yaml', '--format', 'sarif'],
      ['summary', 'good.wheal.yaml', '--format', 'html'],
      ['handout', 'good.wheal.yaml', '--format', 'eml'],
      ['requisition', 'good.wheal.yaml', '--format', 'html'],
      ['schedule', '.', '--format', 'ics'],
      ['open', '.'],
      ['specimens', '.'],
      ['verify', '.'],
      ['checks'],
      ['--help'],
    ]) {
      const { stderr } = spawnSync(process.execPath, ['--require', guard, program, ...argv], {
        cwd: root,
        encoding: 'utf8',
      });
      assert.doesNotMatch(stderr, /REACHED OUT/, argv.join(' '));
    }
    const { stderr } = spawnSync(
      process.execPath,
      ['--require', guard, '-e', 'require("net").connect(9, "127.0.0.1").on("error", () => 0)'],
      { encoding: 'utf8' },
    );
    assert.match(stderr, /REACHED OUT/, 'the guard sees nothing');
  });

  it('asks the system for no socket, where its calls can be traced', function () {
    const trace = join(root, 'trace.txt');
    const traced = (argv: readonly string[]): string | undefined => {
      rmSync(trace, { force: true });
      const { error } = spawnSync(
        'strace',
        ['-f', '-qq', '-e', 'trace=socket,connect', '-o', trace, ...argv],
        {
          cwd: root,
        },
      );
      return error === undefined && existsSync(trace) ? readFileSync(trace, 'utf8') : undefined;
    };
    const found = traced([process.execPath, program, 'check', '.']);
    // Without a tracer the guard above is all there is.
    if (found !== undefined) assert.doesNotMatch(found, /\b(?:socket|connect)\(/);
  });

  it('reads standard input, and stops reading what is too large for a note', () => {
    assert.equal(run(['check', '-'], overLimit).status, 1);
    const large = run(['check', '-', '--format', 'json'], 'a: b\n'.repeat(1_000_000));
    assert.equal(large.status, 1);
    assert.equal(
      (JSON.parse(large.stdout) as { files: { findings: unknown[] }[] }).files[0]?.findings.length,
      1,
    );
  });

  it('reads signs beyond ASCII: ×, ², µ and dashes', () => {
    const signs = inLimit.replace(/^( *- )site: .*$/m, '$&\n    size: 9×8 mm');
    assert.notEqual(signs, inLimit);
    const { stdout } = run(['check', '-', '--format', 'json'], signs);
    const found =
      (JSON.parse(stdout) as { files: { findings: { code: string }[] }[] }).files[0]?.findings ?? [];
    assert.deepEqual(
      found.filter(({ code }) => code.startsWith('quantity/')),
      [],
    );
    const asked = [
      'dose',
      '--agent',
      'lidocaine',
      '--concentration',
      '1%',
      '--weight',
      '62kg',
      '--format',
      'json',
    ];
    const dose = (epinephrine: string): unknown =>
      (JSON.parse(run([...asked, '--epinephrine', epinephrine]).stdout) as { maxMg: number }).maxMg;
    assert.equal(dose('10 µg/mL'), dose('1:100,000'));
  });

  it('uses no colors where nobody looks', () => {
    assert.ok(!run(['check', 'bad.wheal.yaml']).stdout.includes('\u001b'));
  });

  it('does not complain where the reader has read enough', () => {
    if (process.platform === 'win32') return;
    const command = `"${process.execPath}" "${program}" checks --format json | head -c 10`;
    const { stderr, stdout } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
    assert.equal(stdout.length, 10);
    assert.equal(stderr, '');
  });

  it('does not complain where nobody hears what went wrong', () => {
    if (process.platform === 'win32') return;
    const command = `("${process.execPath}" "${program}" check missing; echo $? > code) 2>&1 | true; cat code`;
    for (let round = 0; round < 5; round++) {
      const { stdout } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
      assert.equal(stdout, '2\n');
    }
  });

  it('loses nothing of a long output, be it to a file, a slow reader, or a pipe that does not wait', async () => {
    if (process.platform === 'win32') return;
    const whole = run(['checks', '--format', 'json']).stdout;
    assert.ok(whole.length > 100_000, 'more than a pipe holds');
    const sh = (behind: string): string =>
      spawnSync('sh', ['-c', `"${process.execPath}" "${program}" checks --format json ${behind}`], {
        cwd: root,
        encoding: 'utf8',
        maxBuffer: 1e8,
      }).stdout;
    assert.equal(sh('> all.json; cat all.json'), whole);
    assert.equal(sh('| (sleep 0.3; cat)'), whole);
    assert.equal(await throughPipeThatDoesNotWait(['checks', '--format', 'json']), whole);
  });

  /** What a command writes to a pipe that says "later" when it is full. */
  async function throughPipeThatDoesNotWait(argv: readonly string[]): Promise<string> {
    const pipe = join(root, 'pipe');
    spawnSync('mkfifo', [pipe]);
    const from = openSync(pipe, constants.O_RDONLY | constants.O_NONBLOCK);
    const to = openSync(pipe, constants.O_WRONLY | constants.O_NONBLOCK);
    // Only of a descriptor above 2 is it left so.
    const command = `"${process.execPath}" "${program}" ${argv.join(' ')} >&3`;
    const child = spawn('sh', ['-c', command], { stdio: ['ignore', 'inherit', 'inherit', to] });
    const ended = once(child, 'exit');
    closeSync(to);
    const bytes = Buffer.alloc(4096);
    let text = '';
    const read = (): void => {
      try {
        for (let count = 1; count > 0; text += bytes.toString('latin1', 0, count))
          count = readSync(from, bytes);
      } catch (error) {
        assert.equal((error as NodeJS.ErrnoException).code, 'EAGAIN');
      }
    };
    // Read late, so that the pipe is full for a while.
    const timer = setInterval(read, 100);
    await ended;
    clearInterval(timer);
    read();
    closeSync(from);
    return Buffer.from(text, 'latin1').toString('utf8');
  }

  for (const [name, ...argv] of [
    ['check', '--format', 'text'],
    ['check', '--format', 'sarif'],
    ['open', '--format', 'json'],
    ['schedule', '--format', 'ics'],
    ['specimens', '--format', 'json', '--on', '2026-03-02'],
  ] as const)
    it(`gives the same by several threads as by one: wheal ${name} ${argv.join(' ')}`, function () {
      this.timeout(60_000);
      const by = (threads: string): { code: number | null; out: string; err: string } => {
        const { status, stdout, stderr } = spawnSync(
          process.execPath,
          [program, name, many, ...argv, '--threads', threads, ...(name === 'specimens' ? [] : asOf)],
          { cwd: root, encoding: 'utf8', maxBuffer: 1e8 },
        );
        // The moment of a calendar.
        return { code: status, out: stdout.replace(/^(?:DTSTAMP|LAST-MODIFIED):.*$/gm, ''), err: stderr };
      };
      const one = by('1');
      assert.ok(one.out.length > 1000, one.err);
      assert.deepEqual(by('2'), one);
    });

  it('counts notes of a day together whichever thread reads them', function () {
    this.timeout(60_000);
    const { stdout } = spawnSync(process.execPath, [program, 'check', many, '--threads', '2'], {
      cwd: root,
      encoding: 'utf8',
      maxBuffer: 1e8,
    });
    for (const name of ['0half', 'lean/half-0', 'half-z'])
      assert.match(stdout, new RegExp(`${name}\\.wheal\\.yaml.*\\[dose/over-limit`), name);
  });

  it('judges on the day of this machine where none is named', () => {
    const future = inLimit.replace('2026-03-02', '2999-03-02');
    assert.match(run(['check', '-'], future).stdout, /record\/date-in-future/);
  });

  it('never compiles text into code', () => {
    const { status, stderr } = spawnSync(
      process.execPath,
      ['--disallow-code-generation-from-strings', program, 'check', 'bad.wheal.yaml'],
      { cwd: root, encoding: 'utf8' },
    );
    assert.equal(stderr, '');
    assert.equal(status, 1);
  });
});

/** Tells of every way out of the process that is taken. */
const guarded = `
  const told = (what) => process._rawDebug('REACHED OUT: ' + what);
  const watch = (name, keys, of = (module) => module) => {
    const holder = of(require(name));
    for (const key of keys) {
      const own = holder[key];
      holder[key] = function (...given) {
        told(name + '.' + key);
        return own.apply(this, given);
      };
    }
  };
  watch('net', ['connect'], ({ Socket }) => Socket.prototype);
  watch('net', ['listen'], ({ Server }) => Server.prototype);
  watch('dgram', ['createSocket']);
  watch('dns', ['lookup', 'resolve']);
  watch('child_process', ['spawn', 'spawnSync', 'exec', 'execFile', 'fork']);
  globalThis.fetch = () => told('fetch');
`;
