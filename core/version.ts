/** The version of this build, the same as package.json's: copies of one version on a page share one worker. */
export const VERSION = '0.1.0';
