/*
 * What the study of random invented cars found, for the page on predicting parts: medians of struts with the rack behind, a lower joint
 * with its rod, three seeds of 500 cars, points known to 5 mm (standard deviation), three passes of 17 heights with a gauge of 0.05°. As
 * `node test/bench/run.mjs learn` prints them, which throws where they do not hold; predict-page.test.ts draws some of the same cars.
 */

/** How readings were taken: gauge and tape just as they say; with the usual allowances; the same, passes up and down in turn. */
export const WAYS = ['exact', 'upwards', 'alternating'] as const;
export type ReadWay = (typeof WAYS)[number];
/** Bump over which the change is asked, mm. */
export const AT = [25, 50] as const;

export interface StudiedRow {
  /** Median half-widths of 95 %, degrees: of the tape alone, and with the readings; the median of how many times narrower. */
  tape: number;
  learnt: number;
  narrower: number;
  /** Of 100 true changes within the band. */
  covered: number;
}

export const STUDIED_ROWS: Record<ReadWay, Record<(typeof AT)[number], StudiedRow>> = {
  exact: {
    25: { tape: 0.1033, learnt: 0.0127, narrower: 8.04, covered: 96.5 },
    50: { tape: 0.2171, learnt: 0.0259, narrower: 8.29, covered: 95.9 },
  },
  upwards: {
    25: { tape: 0.1036, learnt: 0.0304, narrower: 3.41, covered: 95.6 },
    50: { tape: 0.2177, learnt: 0.063, narrower: 3.44, covered: 95.9 },
  },
  alternating: {
    25: { tape: 0.1031, learnt: 0.0182, narrower: 5.66, covered: 94.5 },
    50: { tape: 0.2165, learnt: 0.0375, narrower: 5.76, covered: 95.0 },
  },
};

/** Root mean square errors at 25 mm of bump, degrees: of the stock curve moved by 1.1 times the joint's height, and of the links. */
export const STUDIED_PLAIN: Record<ReadWay, { plain: number; links: number }> = {
  exact: { plain: 0.0149, links: 0.0062 },
  upwards: { plain: 0.0218, links: 0.0152 },
  alternating: { plain: 0.0173, links: 0.0095 },
};

/** By data-name. */
export function workedStudy(): Record<string, { unit: string; value: () => number }> {
  return Object.fromEntries(
    WAYS.flatMap((way) => [
      ...AT.flatMap((mm) => {
        const { tape, learnt, narrower } = STUDIED_ROWS[way][mm];
        return [
          [`study.${way}-tape-${mm}`, { unit: '°', value: () => tape }],
          [`study.${way}-learnt-${mm}`, { unit: '°', value: () => learnt }],
          [`study.${way}-narrower-${mm}`, { unit: '', value: () => narrower }],
        ] as const;
      }),
      [`study.${way}-plain`, { unit: '°', value: () => STUDIED_PLAIN[way].plain }],
      [`study.${way}-links`, { unit: '°', value: () => STUDIED_PLAIN[way].links }],
    ]),
  );
}
