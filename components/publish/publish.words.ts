import type { OverBase } from '../../core/readings/over-base.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';

interface Values {
  quantity: ReadingQuantity;
  by?: OverBase['by'];
}

const ANGLES = { camber: 'Camber', toe: 'Toe' } as const;
const FIGURES = { dials: ['front dial', 'rear dial'], tape: ['front, tape', 'rear, tape'] } as const;
const WAYS = { up: ', going up', down: ', going down' } as const;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Words over the columns of a table of readings, as a page's reader knows them. */
export const READINGS_HEADS = {
  travel: 'Wheel travel (mm)',
  parts: 'Parts',
  pass: 'Pass',
  direction: 'Direction',
  body: 'Body reference (mm)',
  /** In a cell of its own, with the way that the wheel went. */
  passGoing: (pass: string, going: 'up' | 'down' | undefined): string =>
    (going ? `${pass}${WAYS[going]}` : pass).replace(/^, /, ''),
  /** Over the value of a pass, or over its two figures. */
  values({ quantity, by }: Values, of: string, going: 'up' | 'down' | undefined): string[] {
    const way = going ? WAYS[going] : '';
    if (!by) return [`${of || ANGLES[quantity]}${way} (°)`];
    return FIGURES[by].map((figure) => `${capital(of ? `${of}${way}, ${figure}` : `${figure}${way}`)} (mm)`);
  },
} as const;
