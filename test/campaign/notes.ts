import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../src/checks/index.ts';
import { pagePath } from '../../src/build/pages.ts';

/** The invented notes of the samples, which a campaign begins from. */
export const samples: readonly string[] = readdirSync('samples')
  .filter((name) => /(?<!practice)\.wheal\.yaml$/.test(name))
  .map((name) => readFileSync(join('samples', name), 'utf8'));

const dangerFamilies = /^(?:dose|allergy|device)\/|^specimen\/wrong-medium$/;

/** The bad examples of the pages of dangers, each with the code that it shows. */
export const dangers: readonly { readonly code: string; readonly text: string }[] = catalogue
  .filter(({ code }) => dangerFamilies.test(code))
  .flatMap(({ code }) => {
    const page = readFileSync(pagePath(code), 'utf8');
    const bad = page.split(/^## /m).find((part) => part.startsWith('Bad\n')) ?? '';
    return [...bad.matchAll(/^```yaml\n([\s\S]*?)^```$/gm)].map(([, text = '']) => ({ code, text }));
  });
