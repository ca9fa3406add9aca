import { summaryHtml } from './summary/html.ts';
import { summaryMarkdown } from './summary/markdown.ts';
import type { SummaryModel } from './summary/model.ts';
import { summaryText } from './summary/text.ts';

export { summaryOf } from './summary/summary.ts';
export type { NoSummary, SummaryModel } from './summary/model.ts';

export type SummaryFormat = 'text' | 'markdown' | 'html' | 'json';

/** How each form of a summary is written. JSON is the model itself. */
export const summaryForms: Readonly<Record<SummaryFormat, (model: SummaryModel) => string>> = {
  text: summaryText,
  markdown: summaryMarkdown,
  html: summaryHtml,
  json: (model) => `${JSON.stringify(model, null, 2)}\n`,
};
