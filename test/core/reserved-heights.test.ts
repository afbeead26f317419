import { describe, expect, it } from 'vitest';
import { reservedHeight, reservedHeights, reservingStyles } from '../../components/delivery/reserved-heights.mjs';
import elements from '../../components/elements.json' with { type: 'json' };

/* The room that an element keeps before it comes: measured in em at some widths, and a style sheet that says the same. */

const tags = (elements as { tag: string; article?: string }[]).filter(({ article }) => article).map(({ tag }) => tag);
const { widths, heights, languages } = reservedHeights();
const cases = tags.flatMap((tag) => Object.keys(heights[tag] ?? {}).map((show) => [tag, show] as const));
const styles = reservingStyles();

/** px that a rule of the style sheet comes to in an element of some width, where an em has 16 px: what a browser does with `calc`. */
function computed(value: string, width: number): number {
  const number = (text: string) => (text.endsWith('cqi') ? (parseFloat(text) / 100) * width : parseFloat(text) * 16);
  const sum = (text: string) =>
    text
      .split(' - ')
      .map(number)
      .reduce((a, b) => a - b);
  const [first, ...terms] = value.replace(/^calc\((.*)\)$/, '$1').split(' + ');
  return terms.reduce((total, term) => {
    const [, slope, low, middle, high] = /^(-?[\d.]+)\*clamp\(([^,]+),([^,]+),([^,]+)\)$/.exec(term)!;
    return total + Number(slope) * Math.min(Math.max(number(low!), sum(middle!)), number(high!));
  }, number(first!));
}

/** The measured height at a width, both em: a line between two, and the last beyond. */
function between(row: readonly number[], at: number): number {
  const next = widths.findIndex((one) => one >= at);
  if (next <= 0) return next < 0 ? row.at(-1)! : row[0]!;
  const share = (at - widths[next - 1]!) / (widths[next]! - widths[next - 1]!);
  return row[next - 1]! + share * (row[next]! - row[next - 1]!);
}

it('other languages than English have the same parts of the same elements measured', () => {
  expect(Object.keys(languages)).toEqual(['de']);
  for (const other of Object.values(languages)) {
    expect(Object.keys(other)).toEqual(tags);
    for (const tag of tags) expect(Object.keys(other[tag]!)).toEqual(Object.keys(heights[tag]!));
  }
});

it('heights are kept for every element that answers, at ten widths and more, for the whole and for each part', () => {
  expect(Object.keys(heights)).toEqual(tags);
  expect(widths.length).toBeGreaterThanOrEqual(10);
  expect([...widths].sort((a, b) => a - b)).toEqual(widths);
  for (const tag of tags) {
    const rows = Object.entries(heights[tag]!);
    expect(rows.map(([show]) => show).slice(0, 2)).toEqual(['', 'sentence']);
    for (const [show, row] of rows) {
      expect(row, `${tag} ${show}`).toHaveLength(widths.length);
      for (const height of row) expect(height).toBeGreaterThan(10);
    }
    // More is higher than less.
    for (const [, row] of rows.slice(2))
      row.forEach((height, i) => {
        expect(height).toBeGreaterThan(heights[tag]!.sentence![i]!);
      });
  }
});

describe.each(cases)('the height kept for <%s show="%s">', (tag, show) => {
  const row = heights[tag]![show]!;

  it('is the measured one, a line between two, and the last beyond', () => {
    widths.forEach((width, i) => {
      expect(reservedHeight(tag, width * 16, show)).toBe(Math.round(row[i]! * 16));
    });
    const [a, b] = [widths[2]!, widths[3]!];
    expect(reservedHeight(tag, 8 * (a + b), show)).toBe(Math.round(8 * (row[2]! + row[3]!)));
    expect(reservedHeight(tag, 100, show)).toBe(Math.round(row[0]! * 16));
    expect(reservedHeight(tag, 5000, show)).toBe(Math.round(row.at(-1)! * 16));
  });

  it.each(['en', ...Object.keys(languages)])(
    'is said by the style sheet in %s, at every width, within ten pixels and hardly ever too little',
    (language) => {
      const isOther = language !== 'en';
      const measured = isOther ? languages[language]![tag]![show]! : row;
      const rules = [
        ...styles.matchAll(/^:is\((bumpline-.*?),\[data-bumpline([^{]*)::before\{height:([^}]*)\}$/gm),
      ].filter(([, selector, rest]) => {
        if (!selector!.startsWith(tag) || /[\w-]/.test(selector![tag.length] ?? '')) return false;
        if (rest!.includes(`:lang(${language})`) !== isOther || rest!.includes(':lang(') !== isOther) return false;
        const words = show.split(' ').filter(Boolean);
        const [yes, no = ''] = selector!.split(':not(');
        const asked = (text: string) => [...text.matchAll(/\[show~=(\w+) i\]/g)].map(([, word]) => word!);
        return asked(yes!).every((word) => words.includes(word)) && !asked(no).some((word) => words.includes(word));
      });
      expect(rules).toHaveLength(1);
      for (let width = 200; width < 1400; width += 7) {
        const said = computed(rules[0]![3]!, width);
        const kept = between(measured, width / 16) * 16;
        expect(said - kept, `${width} px`).toBeGreaterThan(-3);
        expect(said - kept, `${width} px`).toBeLessThan(11);
      }
    },
  );
});

it('reservedHeight takes the words of `show` in any order and case, and names what was not measured', () => {
  expect(reservedHeight('bumpline-lowering', 360, 'Chart  sentence')).toBe(
    reservedHeight('bumpline-lowering', 360, 'sentence chart'),
  );
  expect(reservedHeight('bumpline-lowering', 360, 'chart')).toBe(
    reservedHeight('bumpline-lowering', 360, 'sentence chart'),
  );
  expect(() => reservedHeight('bumpline-static-camber', 360, 'drawing')).toThrow('bumpline-static-camber');
  expect(() => reservedHeight('bumpline-car', 360)).toThrow('bumpline-car');
});
