import { expect } from 'vitest';

/** What stands in the pictures of a page: each is an `<svg>` whose title has the id `<id>-title`. */
export function picturesOf(html: string) {
  const figure = (id: string) => {
    const start = html.lastIndexOf('<svg', html.indexOf(`id="${id}-title"`));
    return html.slice(start, html.indexOf('</svg>', start));
  };
  /** Places of each path that is named. */
  const drawn = (id: string) =>
    Object.fromEntries(
      [...figure(id).matchAll(/<path[^>]* data-line="([^"]*)" d="M([^"Z]*)Z?"/g)].map(([, name, d]) => [
        name!,
        d!.split('L').map((pair) => pair.split(' ').map(Number)),
      ]),
    );
  return {
    labels: (id: string) => [...figure(id).matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, label]) => label!),
    /** Those paths and no others, each place to the one decimal that is written. */
    expectDrawn(id: string, expected: Record<string, (readonly [number, number])[]>) {
      const found = drawn(id);
      expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
      for (const [name, places] of Object.entries(expected)) {
        expect(found[name], name).toHaveLength(places.length);
        places.forEach((place, i) => {
          for (const axis of [0, 1] as const)
            expect(Math.abs(found[name]![i]![axis]! - place[axis]), `${name} ${i}`).toBeLessThan(0.06);
        });
      }
    },
  };
}
