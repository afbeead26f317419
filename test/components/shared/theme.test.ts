import { describe, expect, it } from 'vitest';
import { theme } from '../../../components/theme/theme.js';

/* Contrast: WCAG 2.2, relative luminance and contrast ratio; 1.4.3 (4.5:1 for text) and 1.4.11 (3:1 for graphics). */

const channel = (value: number) => (value <= 0.03928 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);

function luminance(hex: string): number {
  const full = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, '$&$&') : hex;
  const [red, green, blue] = [1, 3, 5].map((at) => channel(Number.parseInt(full.slice(at, at + 2), 16) / 255));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

const COLOUR =
  /--_([\w-]+):\s*(?:var\([^,]+,\s*)?(?:light-dark\((#[0-9a-f]{3,6}),(#[0-9a-f]{3,6})\)|(#[0-9a-f]{3,6}))/gi;

/** Palettes in the order in which the sheet states them: by the page's scheme in two of one statement. */
function palettes(): Record<string, string>[] {
  const found: Record<string, string>[] = [];
  for (const block of theme.cssText.match(/\{[^{}]*--_paper[^{}]*\}/g) ?? []) {
    const colours = [...block.matchAll(COLOUR)];
    for (const which of colours.length === 0 ? [] : colours[0]![4] ? [4] : [2, 3]) {
      found.push(Object.fromEntries(colours.map((colour) => [colour[1]!, colour[which]!])));
    }
  }
  return found;
}
const NAMES = ['light', 'light by scheme', 'dark by scheme', 'dark by preference', 'dark by attribute', 'print'];

describe('the colours of the theme', () => {
  const all = palettes();
  it('are stated for light, dark (by the page’s scheme, and for browsers that cannot tell it) and print', () => {
    expect(all).toHaveLength(NAMES.length);
    expect(all[1]).toEqual(all[0]);
    for (const dark of [all[3], all[4]]) expect(dark).toEqual(all[2]);
  });
  it.each(palettes().map((palette, i) => [NAMES[i], palette] as const))('hold their contrast, %s', (_, palette) => {
    for (const ground of ['paper', 'sheet']) {
      for (const text of ['ink', 'soft', 'now', 'before', 'limit', 'contact', 'next']) {
        expect(contrast(palette[text]!, palette[ground]!), `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5);
      }
    }
    expect(contrast(palette.now!, palette['now-wash']!), 'now on its wash').toBeGreaterThanOrEqual(4.5);
    expect(contrast(palette.ink!, palette['limit-wash']!), 'ink on the limit wash').toBeGreaterThanOrEqual(4.5);
  });
});
