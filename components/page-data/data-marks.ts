/** A table of the example's own values shows what a page is about; it is not the page's data. */
export const DATA_TABLE = 'table:not([data-example])';
export const DATA_SCRIPT = 'script[type="application/json"]';
