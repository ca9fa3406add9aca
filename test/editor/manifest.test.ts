import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { grammar } from '../../src/build/grammar.ts';
import { strings, stringsFile } from '../../src/build/strings.ts';

const root = join(import.meta.dirname, '..', '..');
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const dataOf = (path: string): unknown => JSON.parse(textOf(path));

interface Manifest {
  readonly contributes: {
    readonly commands: readonly {
      readonly command: string;
      readonly title: string;
      readonly category?: string;
    }[];
    readonly menus: Readonly<Record<string, readonly { readonly command: string }[]>>;
    readonly problemPatterns: readonly { readonly regexp: string }[];
    readonly configuration?: unknown;
    readonly walkthroughs: readonly {
      readonly steps: readonly {
        readonly description: string;
        readonly completionEvents: readonly string[];
      }[];
    }[];
  };
}

const manifest = dataOf('package.json') as Manifest;
const { commands, menus, walkthroughs } = manifest.contributes;
const nls = dataOf('package.nls.json') as Record<string, string>;
const contributed = commands.map(({ command }) => command);

/** The commands that code registers. */
const registered = [...textOf('src/editor/commands/index.ts').matchAll(/'(wheal\.\w+)':/g)].map(
  ([, id]) => id!,
);
/** Registered, but only for links and fixes of our own. */
const internal = ['wheal.afterFix'];

const sources = readdirSync(join(root, 'src/editor'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => textOf(join('src/editor', name)))
  .join('\n');

describe('the manifest', () => {
  it('names every command that the code has, and no other', () => {
    assert.deepEqual([...contributed, ...internal].sort(), [...registered].sort());
  });

  it('has each of its texts in the file of texts, and no text that it does not use', () => {
    const used = [...textOf('package.json').matchAll(/"%([^%"]+)%"/g)].map(([, key]) => key!);
    assert.deepEqual([...new Set(used)].sort(), Object.keys(nls).sort());
    for (const { title, category } of commands) {
      assert.match(title, /^%.+%$/);
      assert.equal(category, 'Wheal');
    }
  });

  it('puts only commands that there are into menus, links and steps', () => {
    const inMenus = Object.values(menus).flatMap((menu) => menu.map(({ command }) => command));
    const steps = walkthroughs.flatMap(({ steps }) => steps);
    const linked = [...JSON.stringify(nls).matchAll(/command:(wheal\.\w+)/g)].map(([, id]) => id!);
    const awaited = steps.flatMap(({ completionEvents }) =>
      completionEvents
        .map((event) => event.replace('onCommand:', ''))
        .filter((id) => id.startsWith('wheal.')),
    );
    for (const id of [...inMenus, ...linked, ...awaited]) assert.ok(registered.includes(id), id);
    assert.equal(steps.length, 5);
    const called = [...sources.matchAll(/'(wheal\.[a-z]\w+)'/g)].map(([, id]) => id!);
    const things = new Set([
      'wheal.status',
      'wheal.open',
      'wheal.item',
      'wheal.look',
      'wheal.group',
      'wheal.panel',
    ]);
    for (const id of called.filter((one) => !things.has(one))) assert.ok(registered.includes(id), id);
  });

  it('hides in the palette what needs a note or a folder, where there is none', () => {
    const always = [
      'wheal.aboutCheck',
      'wheal.doseBeforeNeedle',
      'wheal.draftNote',
      'wheal.help',
      'wheal.newNote',
      'wheal.openSample',
      'wheal.showOpen',
    ];
    const hidden = new Map(
      menus['commandPalette']?.map((item) => [item.command, (item as { readonly when?: string }).when]),
    );
    assert.deepEqual(contributed.filter((id) => hidden.get(id) === undefined).sort(), always);
  });

  it('says of a note nothing to the log, and asks for nothing outside', () => {
    const logged = [...sources.matchAll(/\b(?:log|console)\.\w+\(.*\)/g)].map(([call]) => call);
    assert.deepEqual(logged, ['log.error(`check failed: ${check}`)']);
    assert.doesNotMatch(
      sources,
      /\bfetch\(|XMLHttpRequest|WebSocket|sendBeacon|Telemetry|asExternalUri|openExternal/,
    );
  });

  it('has no setting that nothing reads: severities, spelling and limits are those of the practice file', () => {
    assert.equal(manifest.contributes.configuration, undefined);
    assert.doesNotMatch(sources, /getConfiguration\((?!'editor', )/);
  });

  it('takes findings out of what the command line writes', () => {
    const [pattern] = manifest.contributes.problemPatterns;
    const found = new RegExp(pattern!.regexp).exec(
      'samples/over.wheal.yaml:24:17  error  450 mg [of lidocaine] are  too much.  [dose/over-limit]',
    );
    assert.deepEqual(found?.slice(1), [
      'samples/over.wheal.yaml',
      '24',
      '17',
      'error',
      '450 mg [of lidocaine] are  too much.',
      'dose/over-limit',
    ]);
  });
});

describe('what the editor says', () => {
  it('stands in the bundle for translators (npm run generate writes it)', () => {
    assert.deepEqual(dataOf(stringsFile.slice(root.length + 1)), strings());
  });
});

describe('the grammar', () => {
  const made = grammar();

  it('is that of the schemas (npm run generate writes it)', () => {
    assert.deepEqual(dataOf('src/editor/wheal.tmLanguage.json'), made);
  });

  const { injections } = made as {
    readonly injections: Readonly<
      Record<string, { readonly patterns: readonly { readonly match: string }[] }>
    >;
  };
  const patterns = Object.values(injections).flatMap((one) => one.patterns);
  /** What the patterns find in a line, in turn: the first that fits at the earliest place. */
  const marked = (row: string): readonly string[] => {
    const found: string[] = [];
    for (let at = 0; at < row.length;) {
      const [first] = patterns
        .map(({ match }) => {
          const pattern = new RegExp(match.replace('(?i)', ''), match.startsWith('(?i)') ? 'giu' : 'gu');
          pattern.lastIndex = at;
          return pattern.exec(row);
        })
        .filter((one) => one !== null)
        .sort((a, b) => a.index - b.index);
      if (first === undefined) break;
      found.push(first[0]);
      at = first.index + first[0].length;
    }
    return found;
  };

  const cases: readonly (readonly [string, readonly string[]])[] = [
    ['visit: 2026-03-02 10:05', ['visit', '2026-03-02 10:05']],
    ['  - site: left upper back', ['site']],
    ['    haemostasis: pressure', ['haemostasis']],
    ['    metod: deep shave', []],
    ['{agent: lidocaine, volume: 1.5 mL}', ['agent', 'volume', '1.5 mL']],
    ['epinephrine: 1:100,000', ['epinephrine', '1:100,000']],
    ['buffered: 9:1', ['buffered', '9:1']],
    ['concentration: 1%', ['concentration', '1%']],
    ['size: 9 x 8 mm', ['size', '9 x 8 mm']],
    ['weight: ??', ['weight', '??']],
    ['time-out: 10:12', ['time-out', '10:12']],
    ['id: C-20417', ['id']],
    ['lesion: a papule, 4 mm, why??', ['lesion', '4 mm']],
  ];
  for (const [row, expected] of cases)
    it(`marks ${expected.length === 0 ? 'nothing' : expected.join(' and ')} in "${row}"`, () => {
      assert.deepEqual(marked(row), expected);
    });
});

describe('the language configuration', () => {
  const { comments, onEnterRules, folding } = dataOf('src/editor/language-configuration.json') as {
    readonly comments: { readonly lineComment: string };
    readonly folding: { readonly offSide: boolean };
    readonly onEnterRules: readonly {
      readonly beforeText: string;
      readonly action: { readonly indent: string; readonly appendText: string };
    }[];
  };

  /** What is in the line that Enter begins after a line: its indentation, and what a rule adds. */
  const next = (row: string): string => {
    const rule = onEnterRules.find(({ beforeText }) => new RegExp(beforeText).test(row));
    assert.equal(rule?.action.indent ?? 'none', 'none');
    return `${/^ */.exec(row)?.[0] ?? ''}${rule?.action.appendText ?? ''}`;
  };

  for (const [row, begun] of [
    ['  - site: left cheek', '    '],
    ['- site: left cheek', '  '],
    ['  - anesthetic:', '      '],
    ['    specimen: # of the rim', '      '],
    ['      - gauze', '      - '],
    ['    method: punch', '    '],
    ['      - {agent: lidocaine, volume: 1 mL}', '      '],
    ['# to do:', ''],
  ] as const)
    it(`begins ${JSON.stringify(begun)} behind "${row}"`, () => {
      assert.equal(next(row), begun);
    });

  it('comments with #, and folds by indentation', () => {
    assert.deepEqual([comments.lineComment, folding.offSide], ['#', true]);
  });
});

describe('the pages that the editor opens', () => {
  it('are there', () => {
    for (const [, path] of sources.matchAll(/'\/(editor\/[\w/-]+\.md)'/g))
      assert.ok(existsSync(join(root, 'src', path!)), path);
  });
});
