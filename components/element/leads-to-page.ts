/** Whether an address that an attribute names leads to a page. One that came by a link (`?toe-page=javascript:…`) may be anything. */
export const leadsToPage = (address: string): boolean =>
  /^(?:https?|file):$/.test(Object.assign(document.createElement('a'), { href: address }).protocol);
