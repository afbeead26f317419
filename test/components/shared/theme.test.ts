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

/** Palettes in the order in which the sheet states them. */
function palettes(): Record<string, string>[] {
  const found: Record<string, string>[] = [];
  for (const block of theme.cssText.match(/\{[^{}]*--_paper[^{}]*\}/g) ?? []) {
    const colours = [...block.matchAll(/--_([\w-]+):\s*(?:var\([^,]+,\s*)?(#[0-9a-f]{3,6})/gi)];
    if (colours.length > 0) found.push(Object.fromEntries(colours.map(([, name, hex]) => [name!, hex!])));
  }
  return found;
}

describe('the colours of the theme', () => {
  const all = palettes();
  it('are stated for light, dark (preferred and forced) and print', () => {
    expect(all).toHaveLength(4);
    expect(all[1]).toEqual(all[2]);
  });
  it.each(palettes().map((palette, i) => [['light', 'dark', 'dark by attribute', 'print'][i], palette] as const))(
    'hold their contrast, %s',
    (_, palette) => {
      for (const ground of ['paper', 'sheet']) {
        for (const text of ['ink', 'soft', 'now', 'before', 'limit', 'contact', 'next']) {
          expect(contrast(palette[text]!, palette[ground]!), `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5);
        }
      }
      expect(contrast(palette.now!, palette['now-wash']!), 'now on its wash').toBeGreaterThanOrEqual(4.5);
      expect(contrast(palette.ink!, palette['limit-wash']!), 'ink on the limit wash').toBeGreaterThanOrEqual(4.5);
    },
  );
});
