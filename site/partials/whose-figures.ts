/** Before the first section of the text, where some of its figures follow the reader's car (site/follow-car.ts). */
const WORDS =
  '<p class="whose-figures"><span class="of-example">Figures in the text are the example car’s, until you enter your own.</span><span class="of-reader">Figures <span class="yours">like this</span> are your car’s. All others are the example car’s.</span></p>\n';

/** Says whose the figures of a page are that has `data-yours`. */
export function withWhoseFigures(article: string): string {
  if (!/ data-yours="/.test(article)) return article;
  return article.replace('<nav class="contents"', `${WORDS}<nav class="contents"`);
}
