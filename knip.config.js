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
  // Run by path from src/build/test.mjs; the last two are there for a schema and a program that they hold.
  ignoreDependencies: ['c8', 'dependency-cruiser', '@microsoft/jest-sarif', '@microsoft/sarif-multitool'],
  // Of the system.
  ignoreBinaries: ['groff', 'mkfifo', 'parallel', 'strace'],
};
