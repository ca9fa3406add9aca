/** yaml-language-server with the plain schema of a note: what somebody has without Wheal. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { LanguageService } from 'yaml-language-server/lib/esm/languageservice/yamlLanguageService.js';

export const incumbent = 'yaml-language-server';

export type Document = Parameters<LanguageService['doHover']>[0];
export type Place = Parameters<LanguageService['doHover']>[1];

const require = createRequire(import.meta.url);

interface Documents {
  readonly create: (uri: string, language: string, version: number, text: string) => Document;
}

let documents: Documents | undefined;
let version = 0;

/** A document that was never seen before, so that nothing is answered from memory. */
export function documentOf(text: string): Document {
  documents ??= (
    createRequire(require.resolve(`${incumbent}/package.json`))('vscode-languageserver-textdocument') as {
      readonly TextDocument: Documents;
    }
  ).TextDocument;
  version += 1;
  return documents.create(`file:///${version}.yaml`, 'yaml', version, text);
}

const schemaFile = join(import.meta.dirname, '..', '..', 'schemas', 'note.schema.json');

/** The service, which knows nothing of notes but their schema. Loaded when it is started, so that it takes no memory from what is measured before. */
export function startIncumbent(file = schemaFile): LanguageService {
  const { getLanguageService } = require(`${incumbent}/lib/umd/languageservice/yamlLanguageService.js`) as {
    readonly getLanguageService: (given: unknown) => LanguageService;
  };
  const schema: unknown = JSON.parse(readFileSync(file, 'utf8'));
  const service = getLanguageService({
    schemaRequestService: (uri: string) => Promise.reject(new Error(`${uri} is not fetched`)),
    workspaceContext: { resolveRelativePath: (path: string) => path },
  });
  service.configure({
    validate: true,
    hover: true,
    completion: true,
    schemas: [{ uri: 'file:///note.schema.json', fileMatch: ['*'], schema }],
  });
  return service;
}
