// The house: an import points from a floor to one that is earlier in this list, never back.
const order = [
  'reference',
  'note',
  'schema',
  'limits',
  'practice',
  'dose',
  'followup',
  'checks',
  'draft',
  'documents',
  'service',
  'editor',
];
const core = order.slice(0, -1).join('|');
// Dose and follow-up are side by side.
const above = (folder, index) =>
  [...order.slice(index + 1), ...(folder === 'followup' ? ['dose'] : [])].join('|');

/** The rooms of a floor in their order; the files at its top come last. */
const rooms = {
  note: ['text', 'tree', 'values', 'words', 'yaml'],
  service: ['analysis', 'edits', 'code-actions', 'diagnostics', 'hover', 'completion', 'follow-up'],
  cli: ['terminal', 'options', 'notes', 'report', 'threads', 'fixing', 'commands', 'entry'],
  editor: ['host', 'notes', 'papers', 'panel', 'drafts', 'open-items', 'folder', 'commands', 'features'],
};
const roomRules = Object.entries(rooms).flatMap(([floor, names]) =>
  names.map((room, index) => ({
    name: `${floor}-${room}-imports-one-way`,
    severity: 'error',
    from: { path: `^src/${floor}/${room}/` },
    to: {
      path: [
        ...names.slice(index + 1).map((later) => `^src/${floor}/${later}/`),
        `^src/${floor}/[^/]+\\.ts$`,
      ],
    },
  })),
);

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    ...order.map((folder, index) => ({
      name: `${folder}-imports-one-way`,
      severity: 'error',
      from: { path: `^src/${folder}/` },
      to: { path: `^src/(${[above(folder, index), 'cli', 'build'].filter(Boolean).join('|')})/` },
    })),
    ...roomRules,
    {
      name: 'checks-running-last',
      comment: 'A check knows nothing of how the checks of a file are run.',
      severity: 'error',
      from: { path: '^src/checks/(?!running/|index\\.ts$)' },
      to: { path: '^src/checks/running/' },
    },
    {
      name: 'note-signature-last',
      comment: 'Signatures are made over notes that were read: the one room of the note above its top.',
      severity: 'error',
      from: { path: '^src/note/(?!signature/)' },
      to: { path: '^src/note/signature/' },
    },
    {
      name: 'cli-below-service',
      severity: 'error',
      comment: 'But for the fixes, which are those of the editor.',
      from: { path: '^src/cli/', pathNot: '^src/cli/fixing/fixer.ts$' },
      to: { path: '^src/(service|editor|build)/' },
    },
    {
      name: 'tables-not-reference',
      comment: 'Everything above practice asks its tables, so that what a practice adds counts everywhere.',
      severity: 'error',
      from: { path: '^src/(dose|followup|checks|draft|documents|service|editor|cli)/' },
      to: { path: '^src/reference/', pathNot: '^src/reference/sources/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'yaml-in-one-folder',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/note/' },
      to: { path: 'node_modules/yaml/' },
    },
    {
      name: 'core-is-pure',
      severity: 'error',
      from: { path: `^src/(${core})/` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-without-editor',
      severity: 'error',
      from: { path: `^src/(${core}|cli)/` },
      to: { path: 'vscode' },
    },
    {
      name: 'runtime-packages',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/build/' },
      to: { path: 'node_modules/', pathNot: 'node_modules/(yaml|date-fns|diff|@types/(node|vscode))/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.js', '.mjs', '.json'] },
  },
};
