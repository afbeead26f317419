import type { Vector3 } from '../../core/linkage/corner.js';
import { type Drawing, ghost, type Item, type Point } from '../drawing/items.js';
import { arc } from '../drawing/outline.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import type { DrawnWheels } from './drawn-wheels.js';

/** Half of the piece of arch that is drawn at a place, radians. */
const PIECE = 0.09;
/** How far outside of its place a value stands, mm. */
const ASIDE_MM = 62;
const ROOM_MM = 40;

const STATES = { clears: 'yours', close: 'next', touches: 'problem' } as const;

/** The wheel in its arch, seen square from outside, at a travel; each place with its smallest gap as a button. */
export function sideView(
  { answer, asked, poses, before, after, places }: DrawnWheels,
  travel: number,
  selected: number | undefined,
  display: Display,
): Drawing {
  const { isLeft } = asked;
  // Seen from outside, a left wheel's front is on the left.
  const page = ([x, , z]: Vector3): Point => [isLeft ? -x : x, z];
  const centre = page(poses.at(travel).centre);
  const home = page(poses.at(asked.measuredAt ?? 0).centre);
  const items: Item[] = [
    { kind: 'circle', at: centre, radius: after.section.freeRadius, fill: 'tyre' },
    { kind: 'circle', at: centre, radius: after.section.lip.r, weight: 'narrow', fill: 'sheet' },
    { kind: 'circle', at: centre, radiusPx: 3, fill: 'solid' },
    { kind: 'circle', at: centre, radius: before.section.freeRadius, ...ghost },
    { kind: 'note', row: 0, align: isLeft ? 'start' : 'end', text: isLeft ? `← ${NAMES.front}` : `${NAMES.front} →` },
  ];
  const chips: Item[] = [];
  places.forEach((one, index) => {
    const found = answer.places[index]!;
    const at = page(one.at(poses, travel));
    const away: Point = [at[0] - home[0], at[1] - home[1]];
    const radius = Math.hypot(...away) || 1;
    const angle = Math.atan2(away[1], away[0]);
    const isTight = found.verdict === 'close' || found.verdict === 'touches';
    const points = [
      ...arc(home, radius, angle - PIECE, angle + PIECE, 5),
      ...arc(home, radius + 14, angle + PIECE, angle - PIECE, 5),
    ];
    const ink = found.verdict === 'touches' ? 'contact' : isTight ? 'limit' : 'ink';
    if (one.place.fixedTo === 'body') {
      items.push({
        kind: 'path',
        points,
        closed: true,
        hatch: isTight,
        ink,
        ...(index !== selected && { weight: 'narrow' }),
      });
    } else {
      items.push({
        kind: 'circle',
        at,
        radiusPx: 5,
        ink,
        fill: 'sheet',
        ...(index !== selected && { weight: 'narrow' }),
      });
    }
    const text = show(Math.round(found.decisive.gap), 'travel', display).replace(/\s?mm$/, '');
    const outward = one.place.fixedTo === 'body' ? radius + ASIDE_MM : radius;
    const spot: Point = [home[0] + (away[0] / radius) * outward, home[1] + (away[1] / radius) * outward];
    chips.push({
      kind: 'chip',
      key: String(index),
      text,
      at,
      home: spot,
      along: 'right',
      state: found.verdict ? STATES[found.verdict] : 'yours',
      label: `${placeName(one.place, isLeft)}, ${verdictText(found)}, ${NAMES.smallest}`,
    });
  });
  const all = [...items, ...chips].flatMap((item) => (item.kind === 'chip' ? [item.home] : []));
  const reach = after.section.freeRadius + ROOM_MM;
  const rights = [...all.map(([right]) => right), home[0] - reach, home[0] + reach];
  const ups = all.map(([, up]) => up);
  return {
    title: `${NAMES.side} ${asked.places.length} ${NAMES.placesSeen}`,
    items: [...items, ...chips],
    extent: [
      [Math.min(...rights), home[1] - after.section.lip.r * 0.45],
      [Math.max(...rights), Math.max(...ups, home[1] + reach) + 10],
    ],
  };
}
