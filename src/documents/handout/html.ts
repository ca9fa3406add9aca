import { htmlPage, listHtml, tag } from '../html.ts';
import { figureHtml } from '../pictures/picture.ts';
import type { Handout } from './model.ts';

/** Shorter drawings, so that the usual handout is one sheet. */
const style =
  'section { break-inside: avoid; } h2 { margin-top: 0.7em; } @media print { body { line-height: 1.25; } svg { max-height: 60mm; } }';

/** The handout as a page that is alone. */
export function handoutHtml(handout: Handout): string {
  const { language, title, practice, header, whose, sections, foot, largePrint } = handout;
  const picture = handout.place();
  const body = [
    '<main>',
    '<header>',
    ...(practice === '' ? [] : [tag('p', practice)]),
    tag('h1', title),
    ...header.map((row) => tag('p', row)),
    '</header>',
    ...sections.map(
      ({ heading, items }) => `<section>\n${tag('h2', heading)}\n${listHtml(items)}\n</section>`,
    ),
    ...(picture === undefined ? [] : [figureHtml(picture)]),
    '</main>',
    `<footer>\n${foot.map((row) => tag('p', row)).join('\n')}\n</footer>`,
  ];
  return htmlPage(title, language, body.join('\n'), {
    foot: whose,
    large: largePrint,
    style,
  });
}
