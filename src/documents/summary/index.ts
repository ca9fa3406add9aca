import { safeJson } from '../safe-json.ts';
import type { Format } from '../format.ts';
import { summaryHtml } from './html.ts';
import { summaryMarkdown } from './markdown.ts';
import type { SummaryModel } from './model.ts';
import { summaryText } from './text.ts';

export { summaryOf } from './summary.ts';
export type { NoSummary, SummaryModel } from './model.ts';

export type SummaryFormat = 'text' | 'markdown' | 'html' | 'json';

/** The forms of a summary, the usual one first. JSON is the model itself. */
export const summaryFormats: Readonly<Record<SummaryFormat, Format<[SummaryModel]>>> = {
  text: { write: summaryText, ending: 'txt', title: 'Text' },
  markdown: { write: summaryMarkdown, ending: 'md', title: 'Markdown' },
  html: { write: summaryHtml, ending: 'html', title: 'HTML' },
  json: { write: (model) => `${safeJson(model, 2)}\n`, ending: 'json', title: 'JSON' },
};
