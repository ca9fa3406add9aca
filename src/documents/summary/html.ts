import { escapedHtml, htmlPage, listHtml, tag } from '../html.ts';
import { joined } from '../from-note.ts';
import { figureHtml } from '../pictures/picture.ts';
import { paragraph, sectionsOf, title, type SummaryModel, type SummaryPictures } from './model.ts';

/** The summary as a page that is alone. */
export function summaryHtml(model: SummaryModel): string {
  const pictures = model.pictures();
  const figure = (name: keyof SummaryPictures | undefined): readonly string[] => {
    const picture = name && pictures[name];
    return picture === undefined ? [] : [figureHtml(picture)];
  };
  const body = [
    '<main>',
    tag('h1', title),
    listHtml(model.header.map(({ text }) => text)),
    ...model.alerts.map((alert) => `<p class="alert">${escapedHtml(alert)}</p>`),
    ...model.procedures.flatMap(({ title: name, facts }) => [tag('h2', name), tag('p', paragraph(facts))]),
    ...figure('place'),
    ...sectionsOf(model).flatMap(({ heading, rows, picture }) => [
      tag('h2', heading),
      listHtml(rows),
      ...figure(picture),
    ]),
    '</main>',
    tag('footer', model.caution),
  ];
  return htmlPage(title, 'en', body.join('\n'), { foot: footOf(model) });
}

/** Whose it is, for the foot of every page. */
const footOf = ({ header }: SummaryModel): string => {
  const fact = (topic: string): string | undefined => header.find((one) => one.topic === topic)?.text;
  return joined([fact('chart') ?? 'No chart number', fact('visit')]) ?? title;
};
