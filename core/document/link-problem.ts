/** What happened to a link that carries no car that can be read, and what to do. */
export const linkProblemText = (reason: 'newer' | 'damaged'): string =>
  reason === 'newer'
    ? 'This link was made by a newer version. Reload the page, or ask for the numbers themselves; until then the example is shown.'
    : 'This link is damaged, perhaps cut short on its way. Ask for it again; until then the example is shown.';
