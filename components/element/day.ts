import { languageTag } from '../../core/quantity/language.js';
import type { Display } from './sentence.js';

/** British English is what the words are written in; a page in another language has its own order of day and month. */
const DAY_FIRST = 'en-GB';

/** A day as people write it: 30 November 2026. */
export function dateText(iso: string, { language }: Display): string {
  const tag = languageTag(language);
  return new Date(`${iso}T12:00`).toLocaleDateString(tag === 'en' || tag.startsWith('en-US') ? DAY_FIRST : tag, {
    dateStyle: 'long',
  });
}

/** Today, as ISO 8601 writes it, where the page stands. */
export function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
