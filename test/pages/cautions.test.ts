import { describe, expect, test } from 'vitest';
import { FINE_SHEETS } from '../../components/bumpline-clearance/fitment-sheets.js';
import { CAUTIONS } from '../../components/element/cautions.js';
import { MARGIN_BODYWORK_MM, MARGIN_CHASSIS_MM } from '../../core/answers/clearance-request.js';
import { AUSTRIA, CLEARANCE_EXAMPLE, CLEARANCE_GUIDES } from '../../core/wheel/clearance-guides.js';
import { projectFiles, withoutComments } from '../house-rules.mjs';
import { blocksOf } from '../safe-words.mjs';
import { inside, page, sitePages, textOf } from './site-source.js';

/*
 * Cautions stand on the pages where the hand is. What each has to say: HSE "Working under vehicles" and leaflet INDG434 (axle stands,
 * chocks, jacks), DGUV Regel 109-008 4.17 (spring compressors); the rest is common practice without a source. That no page asks for a
 * corner to be jacked into its stop: test/house-rules.mjs.
 */

const spaced = (text: string) => text.replace(/[\s\u00a0]+/g, ' ');
const plain = (markup: string) => spaced(textOf(markup));

/** All cautions of a page's section. */
function cautionsIn(path: string, section: string): string {
  const html = page(`${path}/index.html`);
  const from = html.indexOf(`aria-labelledby="${section}"`);
  if (from < 0) throw new Error(`No section ${section} in ${path}.`);
  const body = html.slice(from, html.indexOf('</section>', from));
  return [...body.matchAll(/<div class="caution">([\s\S]*?)<\/div>/g)].map(([, text]) => plain(text!)).join('\n');
}

const STANDS = /[Aa]xle stands \(jack stands\)[^.]*jacking points/;
const JACK_ALONE =
  /only a jack holds|never a jack alone|[Nn]obody inside, nobody under it|Nobody sits in the car or goes under it/;
const BOTH_OUT = /[Ss]pring (?:<em>)?and bump stop out/;
const LEADS = /[Ll]evel-sensor links,? (?:and )?adaptive-damper leads/;
const NO_FURTHER = /no further|no higher/;
const MARK = /(?:the|a) mark (?:on the sill )?moves/;
const NOBODY = /[Nn]obody (?:is )?under the car or beside the arm/;
const COMPRESSOR = /at least half of its circumference/;
const KILLS = /compressed spring can kill/;
const CARRIED = /carries the arm/;

const RISKY: [path: string, section: string, step: string, words: RegExp[]][] = [
  [
    'how-much-bump-is-left',
    'before-you-drive',
    'a corner through its travel',
    [
      STANDS,
      JACK_ALONE,
      BOTH_OUT,
      KILLS,
      LEADS,
      CARRIED,
      NO_FURTHER,
      MARK,
      NOBODY,
      /measured at the hub/,
      /brake hoses/,
    ],
  ],
  ['how-much-bump-is-left', 'how-lowered', 'height-adjustable dampers', [BOTH_OUT, /thread must stay engaged/]],
  ['how-much-bump-is-left', 'trimmed', 'a trimmed stop', [/can break the damper/]],
  ['how-much-bump-is-left', 'two-ends', 'on the stop in a turn', [/stiffens at once/]],
  [
    'springs-loads-and-frequencies',
    'droop',
    'a spring loose in droop',
    [/leave its seat/, /Brake hose, sensor lead and driveshaft/, KILLS, COMPRESSOR],
  ],
  [
    'will-it-clear-at-full-bump',
    'before-you-drive',
    'full bump by hand',
    [STANDS, JACK_ALONE, BOTH_OUT, KILLS, NO_FURTHER, MARK, NOBODY, /from outside the car/, /brake hoses/],
  ],
  [
    'will-it-clear-at-full-bump',
    'tyre-and-rim',
    'wheels and spacers',
    [/thread engaged/, /load index/, /centred/, /brake caliper/],
  ],
  [
    'cards/clearance',
    'steps',
    'measuring behind the wheel, the gap, the strut apart',
    [STANDS, JACK_ALONE, /brakes cold/, KILLS, COMPRESSOR],
  ],
  [
    'height-or-part',
    'costs',
    'a longer stud, joints apart, full bump by hand',
    [
      /[Ee]ngineered parts only/,
      /end of its swing/,
      /neither bind nor touch the rim/,
      CARRIED,
      /taper lets go/,
      BOTH_OUT,
      NO_FURTHER,
      /alignment/,
    ],
  ],
  [
    'what-a-lower-ball-joint-does',
    'stud',
    'a longer stud',
    [
      /[Ee]ngineered parts only/,
      /tie-rod end/,
      /end of its swing/,
      /neither bind nor touch the rim/,
      /self-locking nuts/,
      /licensed inspector/,
    ],
  ],
  [
    'measure-your-own-camber-curve',
    'procedure',
    'reading a curve',
    [
      /lifts the car off its stands/,
      /[Bb]oth come out/,
      NO_FURTHER,
      /damper bottoms/,
      /spring can kill/,
      CARRIED,
      NOBODY,
    ],
  ],
  [
    'cards/camber-curve',
    'steps',
    'a corner through its travel',
    [
      STANDS,
      JACK_ALONE,
      /chocked/,
      COMPRESSOR,
      CARRIED,
      NO_FURTHER,
      /damper bottoms/,
      /rigid tube/,
      /meets abruptly/,
      MARK,
      NOBODY,
    ],
  ],
  [
    'cards/camber-curve',
    'before-you-drive',
    'putting it together',
    [/Bump stop back on the rod/, /level-sensor links and damper leads on/, /tightened last/, /alignment/],
  ],
  [
    'camber-in-the-turn',
    'measure',
    'a photo of the rolled car, cable ties',
    [
      /never while driving on the road/,
      /closed course/,
      /Somebody else takes the picture/,
      /engine off, parking brake on, wheels chocked, the car on its wheels\. No part of you goes under it/,
      /clear of brake hose, sensor lead and tyre/,
    ],
  ],
  [
    'camber-in-the-turn',
    'target',
    'much camber',
    [/inner edges of the tyres/, /lengthens braking/, /have a qualified shop set the alignment before you drive/],
  ],
  [
    'ways-to-add-camber',
    'fitting',
    'parts that hold the wheel on',
    [
      /only parts made for the car, with every bolt to the maker’s torque/,
      /clamp force alone, so use bolts made for it and new nuts/,
      /bent, heated or welded can break/,
      /driveshaft, brake hose and rim included/,
      /No joint may reach the end of its swing/,
      /full thread engagement/,
      /[Aa]lignment set by a qualified shop before you drive/,
      /licensed inspector/,
    ],
  ],
  [
    'the-wheel-that-steers-itself',
    'measure',
    'a corner through its travel',
    [BOTH_OUT, NO_FURTHER, /damper bottoms/, CARRIED, NOBODY],
  ],
  [
    'the-wheel-that-steers-itself',
    'cures',
    'tie-rod ends and shims',
    [
      /[Ee]ngineered parts only/,
      /thread engaged/,
      /self-locking nut, or a new cotter pin/,
      /full lock both ways and at full droop/,
      /[Aa]lignment set by a qualified shop/,
      /licensed inspector/,
    ],
  ],
  [
    'cards/tape',
    'car',
    'under a car with a tape',
    [/Level, hard floor/, /Never under a car on a jack/, /chocked in front and behind/, /Nobody inside/],
  ],
  [
    'cards/tape',
    'steps',
    'hands near brake, spring and fan',
    [/from beside the wheel/, /leave out/, /brake is hot/, /loosen nothing/, /fan can start/, /nut on top/],
  ],
  [
    'what-lowering-does-to-camber',
    'before-you-drive',
    'changing springs, full bump by hand',
    [STANDS, JACK_ALONE, COMPRESSOR, LEADS, BOTH_OUT, NO_FURTHER],
  ],
];

describe('cautions of the pages', () => {
  test.each(RISKY)('%s, %s: %s', (path, section, _, words) => {
    const said = cautionsIn(path, section);
    for (const part of words) expect(said).toMatch(part);
  });

  test('the home page says the worst of it before anybody crawls under', () => {
    const said = plain(inside(page('index.html'), 'div', 'class="caution"'));
    for (const part of [STANDS, JACK_ALONE, /spring and bump stop out/, NO_FURTHER]) expect(said).toMatch(part);
  });

  test('what pulls, tells or gives is said at the step that takes the spring out', () => {
    const steps = plain(inside(page('cards/camber-curve/index.html'), 'ol', 'class="steps narrow-pictures"'));
    for (const part of [
      /the bump stop with it/,
      /level-sensor links and adaptive-damper leads/,
      /just enough for the arm to swing without twisting the rubber/,
      /rubber top mount moves, so measure travel at the hub/,
      /the height where the stop would be solid, and no further/,
    ])
      expect(steps).toMatch(part);
  });

  test('none can be folded away', () => {
    for (const { path, html } of sitePages())
      for (const [, folded] of html.matchAll(/<details\b[^>]*>([\s\S]*?)<\/details>/g))
        expect(folded, path).not.toContain('class="caution"');
  });
});

describe('what authorities say of the room round a wheel', () => {
  const article = plain(page('will-it-clear-at-full-bump/index.html'));

  test.each(CLEARANCE_GUIDES)('$place is in the article’s list of sources, word for word, with its date', (guide) => {
    const [source, read] = guide.source.split(/\. (?=[A-Z])/);
    expect(article).toContain(
      spaced(`${guide.place}, ${guide.what}: ${guide.says}; ${guide.dated}: ${source}. ${read}.`),
    );
  });

  test('is the same sentence in the caution and beside both margins, with where the default comes from', () => {
    expect(CAUTIONS.wheelRules).toContain(CLEARANCE_EXAMPLE);
    expect(CLEARANCE_EXAMPLE).toContain(AUSTRIA.says);
    for (const [key, margin] of [
      ['marginBodywork', MARGIN_BODYWORK_MM],
      ['marginChassis', MARGIN_CHASSIS_MM],
    ] as const) {
      const { howTo } = FINE_SHEETS.find((sheet) => sheet.key === key)!;
      expect(spaced(howTo)).toContain(`${margin} mm is common practice, no source.`);
      expect(howTo).toContain(CLEARANCE_EXAMPLE);
    }
    const margins = `${MARGIN_BODYWORK_MM} mm to bodywork and ${MARGIN_CHASSIS_MM} mm to chassis parts`;
    expect(article).toContain(`asks for ${margins}`);
    expect(article).toContain(`Common practice, no source: ${margins}`);
  });

  test('is nowhere told in other figures', () => {
    const shipped = projectFiles().filter(({ path }) => /^(?:core|components|site)\/|^[A-Z]+\.md$/.test(path));
    const told = shipped.flatMap((file) =>
      blocksOf({ path: file.path, text: withoutComments(file) })
        .map(({ text }) => spaced(text).trim())
        .filter((text) => /Austria|inspection body/.test(text) && /\b(?:5|10) mm\b/.test(text))
        .map((text) => `${file.path}: ${text}`),
    );
    expect(
      told.filter(
        (text) => !/no authority’s text|common practice, no source/.test(text) && !text.includes('larger than 5 mm'),
      ),
    ).toEqual([]);
  });
});

test.each(sitePages())('numbers of sources in site/$path are those of its own list', ({ html }) => {
  const list = /<ol class="sources">([\s\S]*?)<\/ol>/.exec(html)?.[1] ?? '';
  const ids = [...list.matchAll(/<li id="(source-[^"]*)"/g)].map(([, id]) => id!);
  for (const [, id, number] of html.matchAll(/<a href="#(source-[^"]*)">\[(\d+)\]<\/a>/g))
    expect(`${id} ${ids.indexOf(id!) + 1}`).toBe(`${id} ${number}`);
  for (const id of ids) expect(html, `${id} is referred to`).toContain(`href="#${id}"`);
});
