import type { AnySource } from '../../core/curve-sources/source.js';

/** What the alignment sheet is about: the links of a corner, where there are any, and how far below stock height they were measured, mm. */
export interface AlignedLinks {
  source: AnySource;
  measuredAt: number;
}
