import { words } from '../quantity/words.js';

/** English words of a link that cannot be read. */
export const LINK_PROBLEM = words('document/link-problem', {
  newer:
    'This link was made by a newer version. Reload the page, or ask for the numbers themselves; until then the example is shown.',
  damaged: 'This link is damaged, perhaps cut short on its way. Ask for it again; until then the example is shown.',
});

/** What happened to a link that carries no car that can be read, and what to do. */
export const linkProblemText = (reason: keyof typeof LINK_PROBLEM): string => LINK_PROBLEM[reason];
