import { reservedHeight } from '../../components/delivery/reserved-heights.mjs';
import { framedIn, frameSnippet } from './framed.js';
import { escaped } from './partial.js';

/* What a page says of itself to programs that come from elsewhere, and what they fetch then: all of it by whole addresses. */

/** How wide a frame is where nobody says: as an article's text, px. */
const WIDTH_PX = 640;
/** For how long a copy may be kept, s. */
const DAY_S = 86_400;

/** Where an article's oEmbed document is, below the site's address. */
export const oEmbedPath = (path: string): string => `oembed/${path.replace(/\/$/, '')}.json`;

/**
 * What a page on which somebody pastes an article's address may show in its place: oEmbed 1.0, "rich".
 *
 * @param site the site's address
 * @param article what stands on the article's page
 * @returns undefined where the article has no element
 */
export function oEmbed(site: string, title: string, article: string): Record<string, unknown> | undefined {
  const found = framedIn(article);
  if (!found) return undefined;
  const size = { width: WIDTH_PX, height: reservedHeight(found.tag, WIDTH_PX) };
  return {
    type: 'rich',
    version: '1.0',
    title,
    provider_name: 'Bumpline',
    provider_url: site,
    cache_age: DAY_S,
    html: frameSnippet(title, site + found.path, size),
    ...size,
  };
}

/** For the head of a page that is found under an address; '' where the site has none. @param site the site's address */
export const canonical = (site: string | undefined, path: string): string =>
  site ? `<link rel="canonical" href="${escaped(site + path)}">` : '';

/**
 * The same for a page's head, with what chat programs show of it, and where its oEmbed document is.
 *
 * @param article what stands on the page, where it is one
 */
export function publishedHead(
  site: string | undefined,
  { path, title, description }: { path: string; title: string; description: string },
  article: string | undefined,
): string {
  if (!site) return '';
  const about = { title, description, url: site + path };
  const lines = [
    canonical(site, path),
    ...Object.entries(about).map(([name, text]) => `<meta property="og:${name}" content="${escaped(text)}">`),
  ];
  if (article !== undefined && framedIn(article))
    lines.push(
      `<link rel="alternate" type="application/json+oembed" href="${escaped(site + oEmbedPath(path))}" title="${escaped(title)}">`,
    );
  return lines.join('\n  ');
}
