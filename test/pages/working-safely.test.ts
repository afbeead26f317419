import { describe, expect, test } from 'vitest';
import { inside, page, textOf, wordsRead } from './site-source.js';
import { GIVEN } from './worked-safety.js';

/*
 * The one page of general cautions: every hazard of every job stands on it, in the section that articles and cards link to. What each has
 * to say: HSE "Working under vehicles" and leaflet INDG434, DGUV Regel 109-008 4.17; the rest is common practice, no source.
 */

const html = page('working-safely/index.html');
const spaced = (markup: string) => textOf(markup).replace(/[\s\u00a0]+/g, ' ');
const section = (id: string) => spaced(inside(html, 'section', `aria-labelledby="${id}"`));
const cautionsOf = (id: string) =>
  [...inside(html, 'section', `aria-labelledby="${id}"`).matchAll(/<div class="caution">([\s\S]*?)<\/div>/g)]
    .map(([, text]) => spaced(text!))
    .join('\n');

const HAZARDS: Record<string, RegExp[]> = {
  stands: [
    /hard, level ground/,
    /Chock the wheels that stay down/,
    /axle stands \(jack stands\) under the car’s jacking points[^.]*on both sides/,
    /only a jack holds/,
    /Nobody sits inside/,
    /firm shove/,
    /Put the phone away/,
    /wait until the brakes are cold/,
    /fan can start on its own/,
    /What you cannot reach, leave out/,
  ],
  spring: [
    /can kill/,
    /nut on top of a strut/,
    /compressor made for that coil[^.]*at least half of its circumference/,
    /separate threaded rods with short claws/,
    /hand tools only/,
    /out of the spring’s line/,
    /take the strut to a workshop/,
    /gas damper pushes its rod out/,
    /come loose while the wheel hangs/,
  ],
  'through-its-travel': [
    /spring and bump stop out first\. With either in, the jack lifts the car off its stands/,
    /lock the steering straight ahead[^.]*\. To look at full lock, leave it free/,
    /Leave each nut on with all its threads engaged/,
    /level-sensor links and adaptive-damper leads, and the anti-roll bar’s links on both sides/,
    /just enough for the arm to swing without twisting the rubber/,
    /The jack, a stand or a strap to the body carries the arm at all times, most of all while a joint is apart/,
    /brake hose, sensor lead and driveshaft must neither carry weight nor be stretched/,
    /stop while a finger still finds slack in each\. Note hub to arch there, and let the arm down no further/,
    /If the mark moves[^.]*quit at once/,
    /the height that was worked out and no further/,
    /Nobody is under the car or beside the arm/,
    /rubber top mount moves/,
    /one word for stop/,
    /only when everybody’s hands are clear of the arm, the spring seats and the arch/,
    /taper lets go suddenly/,
  ],
  'full-bump': [
    /never permission to drive/,
    /spring and bump stop out/,
    /stop would be solid/,
    /the smaller the figure, the further up the wheel/,
    /the tyre meets the liner at 297 mm\. Stop at whichever comes first: the larger figure/,
    /just past the bump stop’s figure the damper bottoms[^.]*lifts the car off its stands/,
    /Past the tyre’s figure it lifts the car by the tyre/,
    /you may put a rigid tube[^.]*as long as the solid stop/,
    /It meets abruptly/,
    /replaces neither the height nor the mark/,
    /With the engine off and the jack at rest, reach in through the open door, take off the strap and release the lock\. Do not get in or lean on the car/,
    /If you cannot reach them so, leave out full lock/,
    /from outside the car/,
    /hands out of the arch/,
    /brake hoses, sensor lead/,
    /reach the end of its swing/,
    /full droop and look again\. Stop before a hose or lead pulls tight/,
  ],
  'after-a-new-height': [
    /bump stop is back on the rod, and any tube is off it/,
    /Anti-roll bar, level-sensor links and damper leads are on/,
    /Fit new self-locking nuts/,
    /Tighten bolts through rubber last/,
    /hub to arch at all four corners/,
    /Alignment, toe first\. Have a qualified shop/,
    /Headlamp aim/,
    /cameras and radar/,
    /load-sensing brake valve/,
    /Ground clearance/,
    /stiffens that axle at once/,
  ],
  parts: [
    /bends its stud harder/,
    /Fit engineered parts only, never a spacer or a home-made stud/,
    /end of its swing sooner/,
    /neither bind nor touch the rim at full droop, full bump and full lock/,
    /everything that ends travel/,
    /clamp force alone\. Use bolts made for it, new nuts and the maker’s torque/,
    /bent, heated or welded can break\. Use only a part made and machined for it/,
    /brake caliper must fit/,
    /Use a plate made for it, and tighten every bolt to the maker’s torque/,
    /can then hit metal inside and break/,
    /thread must stay engaged/,
    /no longer protects arch/,
    /inner edges of the tyres and lengthens braking/,
  ],
  steering: [
    /takes the steering with it/,
    /Fit engineered parts made for the car only, shims included/,
    /Stack no washers, bend nothing, weld nothing/,
    /Engage as much thread as the maker asks for/,
    /new self-locking nut, or a new split pin/,
    /full lock both ways, at full droop and at full bump/,
    /Have a qualified shop set the alignment before you drive/,
  ],
  wheels: [
    /rim widths that the tyre’s maker approves/,
    /Load index and speed symbol/,
    /engage as much thread as the car’s maker asks for, but must not reach parts behind the hub/,
    /centred on the hub/,
    /by hand before you drive/,
    /bare wiring, and seams that rust/,
  ],
  driving: [
    /never while driving on the road/,
    /closed course, by its rules/,
    /Somebody else takes the picture, from where spectators may stand/,
    /engine off, parking brake on, wheels chocked, the car on its wheels\. No part of you goes under it/,
    /clear of brake hose, sensor lead and tyre/,
  ],
  rules: [/your own authority or a licensed inspector before you buy/, /your insurer/],
};

test.each(Object.entries(HAZARDS))('#%s tells every hazard of that work', (id, words) => {
  const said = section(id);
  for (const part of words) expect(said).toMatch(part);
});

test.each([
  ['stands', /only a jack holds/],
  ['spring', /can kill/],
  ['through-its-travel', /[Ss]pring and bump stop out/],
  ['full-bump', /damper bottoms/],
  ['steering', /takes the steering with it/],
  ['driving', /never while driving on the road/],
] as const)('the worst of #%s stands in a caution', (id, words) => {
  expect(cautionsOf(id)).toMatch(words);
});

test('every section that others link to is there, in the order of the work', () => {
  const ids = [...html.matchAll(/<h2 id="([^"]*)"/g)].map(([, id]) => id);
  expect(ids).toEqual([...Object.keys(HAZARDS), 'sources']);
});

describe('it defers', () => {
  test('to the workshop manual, to the law, and to a workshop', () => {
    const opening = spaced(html.slice(0, html.indexOf('<nav')));
    for (const part of [/workshop manual/, /the law where you live/, /licensed workshop/])
      expect(opening).toMatch(part);
  });
  test('and nothing but the sources is folded away', () => {
    expect(html.match(/<details/g)).toHaveLength(1);
    expect(inside(html, 'section', 'aria-labelledby="sources"')).toContain('<details>');
  });
});

test('the height of the example comes from figures that stand there', () => {
  const said = section('full-bump');
  const { gap, stopLength, motionRatio, hubToArch, drop } = GIVEN;
  expect(said).toContain(
    `a gap of ${gap} mm on the damper’s rod and a stop of ${stopLength} mm, solid at half its length`,
  );
  expect(said).toContain(`(${gap} + ${stopLength / 2}) ÷ ${motionRatio}`);
  expect(said).toContain(`Hub to arch is ${hubToArch} mm at stock height`);
  expect(said).toContain(`After a drop of ${drop} mm it would be`);
});

test('a reader scrolls through at most 2000 words', () => {
  expect(wordsRead(html)).toBeLessThanOrEqual(2000);
});
