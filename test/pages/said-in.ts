/** What stands in a sentence as one reads it, with the values of its fields. To be evaluated in a page, so it needs nothing around it. */
export function saidIn(node: Node): string {
  const walk = document.createTreeWalker(node, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  let said = '';
  for (let at = walk.nextNode(); at; at = walk.nextNode())
    said += at instanceof HTMLInputElement ? at.value : at instanceof Text ? at.data : '';
  return said;
}
