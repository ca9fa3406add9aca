/** What a check's page is made of. Imports nothing that is generated, so that a fresh clone can be built. */

/** After the head, which is generated. */
export const headEnd = '<!-- /head -->';

/** What of a page is written by hand: its examples. */
export const byHand = (page: string): string =>
  page.slice(page.indexOf(headEnd) + headEnd.length).trimStart();
