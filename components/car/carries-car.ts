/*
 * What has to be known of a fragment before `fragment.ts`, which reads it, has come: the shell and the first answer ask. The site's
 * pages ask the same in `site/partials/head.html`, before any script has come.
 */

/** Whether a fragment carries a car, or what was one. */
export const carriesCar = (hash: string): boolean => /[#&]car=/.test(hash);

/** The same, meant for one of the page's cars by its number. */
export const carriesNumbered = (hash: string): boolean => /[#&]at=\d+&car=/.test(hash);
