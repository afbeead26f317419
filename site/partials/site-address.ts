/** Put together, because what is shipped names no other site. */
const EXAMPLE = ['https:', '', 'bumpline.example', ''].join('/');

/**
 * The address that the site will have, with a slash at its end: what is found from elsewhere has to say it whole.
 *
 * @param text of the environment variable SITE_URL; nothing of this is built without it
 * @throws {Error} where it is no address that pages can have
 */
export function siteAddress(text = process.env.SITE_URL): string | undefined {
  if (!text) return undefined;
  const url = URL.canParse(text) ? new URL(text) : undefined;
  const { protocol = '', search, hash, username, password } = url ?? {};
  if (!url || !['http:', 'https:'].includes(protocol) || search || hash || username || password)
    throw new Error(
      `SITE_URL is “${text}”, which is no address of a site: write it whole, such as ${EXAMPLE}, with http: or https: at its start and without a name, ? or #.`,
    );
  return url.href.replace(/\/*$/, '/');
}
