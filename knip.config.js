export default {
  entry: [
    'src/build/**/*.{ts,mjs}',
    'src/cli/entry/wheal.ts',
    'src/cli/entry/main-*.ts',
    'src/cli/entry/worker.ts',
    'src/editor/extension.ts',
    'src/editor/panel/client.ts',
    'src/checks/*/*.ts',
    'test/**/*.test.ts',
    // Run by path until free words are read by clause.
    'test/bench/*.ts',
  ],
  project: ['src/**/*.{ts,mjs}', 'test/**/*.ts', '!test/host/**'],
  ignoreExportsUsedInFile: true,
  // Run by path from src/build/test.mjs; the last one is there for the schema that it holds.
  ignoreDependencies: ['c8', 'dependency-cruiser', '@microsoft/jest-sarif'],
  // Of the system.
  ignoreBinaries: ['groff', 'mkfifo', 'strace'],
};
