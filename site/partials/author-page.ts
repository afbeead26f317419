/** Below the site's address. */
const PATH = 'snippet-builder/';

/** A tag of an element that answers something, and no text about one. */
const ELEMENT = /<bumpline-(?!car\b)[a-z-]+(?=[\s>])/g;

/** An article whose elements lead to the page on which an author makes a snippet of them. @param root of the site, from the article */
export const withAuthorPage = (article: string, root: string): string =>
  article.replace(ELEMENT, (tag) => `${tag} author-page="${root}${PATH}"`);
