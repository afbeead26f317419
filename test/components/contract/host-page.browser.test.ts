import { executeServerCommand, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { type ContractElement, ELEMENTS } from './elements.js';
import { LATE_PARTS } from './late-parts.js';
import {
  all,
  charted,
  clear,
  field,
  find,
  one,
  put,
  read,
  type Sheet,
  settled,
  textOf,
  type,
  unfold,
  until,
} from './stage.js';

/** What a page can say of its language, and what is no language at all. */
const LANGUAGES = [
  'en_US',
  'nl_NL',
  'fr',
  'pt_br',
  'en, de',
  '',
  'x',
  'english',
  'C',
  'fr-FR-u-nu-latn',
  'ar-EG',
  'fa',
];

/** Everything of an element that is read, seen or typed over. */
function written(element: Element): string[] {
  const attributes = ['aria-label', 'aria-valuetext', 'placeholder', 'title'];
  return all(element, '*').flatMap((part) => [
    ...[...part.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.textContent!),
    ...attributes.map((name) => part.getAttribute(name) ?? ''),
    part.matches('input') ? (part as HTMLInputElement).value : '',
  ]);
}

/** Opens the first dialog there is to open. */
async function openDialog(element: Sheet): Promise<void> {
  // A set of parts is added without one, where something else opens one.
  const opens = ['.own', '.paste', '.add-set'].flatMap((name) => find<HTMLButtonElement>(element, name) ?? []);
  opens[0]!.click();
  await until('a dialog is open', () => find(element, 'dialog[open]'));
  await settled(element);
}

/** Inherited properties, as CSS has them, each with a value that nobody wants in a calculator. */
const HOSTILE: Readonly<Record<string, string>> = {
  '-webkit-font-smoothing': 'antialiased',
  '-webkit-line-break': 'after-white-space',
  '-webkit-text-fill-color': 'rgb(1, 2, 3)',
  '-webkit-text-security': 'disc',
  '-webkit-text-stroke': '2px red',
  '-webkit-user-modify': 'read-write',
  '-webkit-user-select': 'none',
  'accent-color': 'lime',
  'border-collapse': 'separate',
  'border-spacing': '9px',
  'caption-side': 'bottom',
  'caret-color': 'transparent',
  'caret-shape': 'block',
  'color-interpolation': 'linearrgb',
  cursor: 'wait',
  direction: 'rtl',
  'dominant-baseline': 'hanging',
  'empty-cells': 'hide',
  'fill-opacity': '0.2',
  'font-family': 'cursive',
  'font-feature-settings': '"smcp"',
  'font-kerning': 'none',
  'font-optical-sizing': 'none',
  'font-palette': 'dark',
  'font-size': '10px',
  'font-size-adjust': '0.9',
  'font-stretch': '75%',
  'font-style': 'italic',
  'font-synthesis-weight': 'none',
  'font-variant-caps': 'small-caps',
  'font-variant-ligatures': 'none',
  'font-variant-numeric': 'oldstyle-nums',
  'font-variation-settings': '"wght" 300',
  'font-weight': '300',
  'forced-color-adjust': 'none',
  'hyphenate-character': '"="',
  hyphens: 'auto',
  'image-rendering': 'pixelated',
  'letter-spacing': '5px',
  'line-break': 'anywhere',
  'line-height': '3',
  'list-style-position': 'inside',
  'list-style-type': 'square',
  orphans: '7',
  'overflow-wrap': 'anywhere',
  'paint-order': 'stroke',
  quotes: 'none',
  'ruby-align': 'center',
  'ruby-position': 'under',
  'shape-rendering': 'crispEdges',
  'speak-as': 'digits',
  stroke: 'lime',
  'stroke-dasharray': '1 9',
  'stroke-width': '9px',
  fill: 'lime',
  'tab-size': '1',
  'text-align': 'right',
  'text-align-last': 'justify',
  'text-anchor': 'end',
  'text-combine-upright': 'all',
  'text-decoration-skip-ink': 'none',
  'text-emphasis': 'dot red',
  'text-emphasis-position': 'under left',
  'text-indent': '3em',
  'text-orientation': 'upright',
  'text-rendering': 'geometricPrecision',
  'text-shadow': '1px 1px 2px red',
  'text-spacing-trim': 'space-all',
  'text-transform': 'uppercase',
  'text-underline-offset': '9px',
  'text-underline-position': 'under',
  'text-wrap': 'nowrap',
  'text-wrap-style': 'balance',
  'user-select': 'none',
  'white-space': 'pre',
  widows: '7',
  'word-break': 'break-all',
  'word-spacing': '9px',
  'writing-mode': 'vertical-rl',
};
const NAMES = Object.keys(HOSTILE).flatMap((name) =>
  CSS.supports(name, HOSTILE[name]!)
    ? ({ '-webkit-text-stroke': ['-webkit-text-stroke-width', '-webkit-text-stroke-color'] }[name] ?? [name])
    : [],
);

/** Where a part stands, by names and classes. */
function placeOf(part: Element): string {
  const name = ({ localName, classList }: Element) => [localName, ...[...classList].sort()].join('.');
  return part.parentElement ? `${placeOf(part.parentElement)} > ${name(part)}` : name(part);
}
/** The styles in which parts stand at each place: the same picture may have a word more where it is wider. */
function stylesIn(element: Element): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const part of all(element, '*')) {
    const style = getComputedStyle(part);
    for (const name of NAMES) {
      const at = `${placeOf(part)} ${name}`;
      found.set(at, (found.get(at) ?? new Set()).add(style.getPropertyValue(name)));
    }
  }
  return found;
}
/** What is styled on the second page as it is nowhere on the first. */
const leaks = (plain: Map<string, Set<string>>, hostile: Map<string, Set<string>>): string[] =>
  [...hostile].flatMap(([at, styles]) =>
    [...styles].filter((style) => plain.get(at)?.has(style) === false).map((style) => `${at}: ${style}`),
  );

/** With everything open that is styled. */
async function wholeOf(element: Sheet): Promise<Map<string, Set<string>>> {
  await unfold(element);
  find(element, '.chart')?.scrollIntoView();
  await charted(element);
  await openDialog(element);
  const styles = stylesIn(element);
  find<HTMLDialogElement>(element, 'dialog[open]')!.close();
  await settled(element);
  return styles;
}

const ROOTS = [document.documentElement, document.body];
const restore = () => {
  for (const element of ROOTS) element.removeAttribute('style');
  document.documentElement.removeAttribute('dir');
};

/** The value that stands first on a slider, and the one that stands last, by where they are drawn. */
function expectLeftToRight(element: Sheet): void {
  for (const slider of all(element, '.slider')) {
    const input = slider.querySelector('input')!;
    expect(getComputedStyle(input).direction).to.equal('ltr');
    const box = input.getBoundingClientRect();
    for (const mark of slider.querySelectorAll<HTMLElement>('.slider-mark')) {
      const at = Number(mark.style.getPropertyValue('--at'));
      expect(mark.getBoundingClientRect().left - box.left).to.be.closeTo(14 + at * (box.width - 28), 3);
    }
  }
}

const CONTRACT: Record<string, (record: ContractElement) => Promise<void>> = {
  async 'answers alike whatever language the page says it is in, and writes its numbers in that of its own words'(
    record,
  ) {
    const { tag } = record;
    const expected = await one(record);
    await unfold(expected);
    const [figure, texts] = [read(record, expected), written(expected)];
    expect(texts.some((text) => /\d\.\d/.test(text))).to.equal(true);
    for (const language of LANGUAGES) {
      const [element] = await put(tag, `<div lang="${language}"><${tag}></${tag}></div>`);
      await unfold(element!);
      expect(element!.state, language).to.equal('example');
      expect(read(record, element!), language).to.equal(figure);
      expect(
        written(element!).filter((text) => /\d,\d/.test(text)),
        language,
      ).to.deep.equal([]);
      const hasDrawing = !('hasNoDrawing' in LATE_PARTS[tag as keyof typeof LATE_PARTS]);
      for (const part of ['.sentence', '.cautions.first', '.body', ...(hasDrawing ? ['svg'] : [])])
        expect(find(element!, part)?.checkVisibility(), `${language}: ${part}`).to.equal(true);
    }
  },

  async 'takes a comma and a point on a German page, and reads back what it shows'(record) {
    const { tag } = record;
    const [element] = await put(tag, `<div lang="de_DE"><${tag}></${tag}></div>`);
    await type(element!, `${record.numbers[0]},5`);
    const [figure, shown] = [read(record, element!), field(element!).value];
    expect(shown).to.match(new RegExp(`^${record.numbers[0]},5`));
    await type(element!, record.numbers[1]);
    expect(read(record, element!)).not.to.equal(figure);
    await type(element!, shown);
    expect(read(record, element!)).to.equal(figure);
    expect(field(element!).value).to.equal(shown);
  },

  async 'runs from left to right, in English, on a page that runs the other way'(record) {
    const { tag } = record;
    const ways: [attributes: string, own: string, set?: () => void][] = [
      ['', '', () => document.documentElement.setAttribute('dir', 'rtl')],
      ['', '', () => document.body.style.setProperty('direction', 'rtl')],
      ['dir="rtl" lang="ar"', ''],
      ['style="direction: rtl"', ''],
      ['', 'dir="rtl"'],
      ['', 'style="direction: rtl; unicode-bidi: bidi-override"'],
    ];
    for (const [attributes, own, set] of ways) {
      set?.();
      const [element] = await put(tag, `<div ${attributes}><${tag} ${own}></${tag}></div>`);
      await unfold(element!);
      const turned = all(element!, '*').filter((part) => getComputedStyle(part).direction !== 'ltr');
      expect(turned.map(({ outerHTML }) => outerHTML.slice(0, 80))).to.deep.equal([]);
      const overridden = all(element!, '*').filter((part) => getComputedStyle(part).unicodeBidi === 'bidi-override');
      expect(overridden).to.deep.equal([]);
      for (const part of ['.sheet', '[role=status]'])
        expect(find(element!, part)!.closest('[lang]')?.getAttribute('lang')).to.equal('en');
      expectLeftToRight(element!);
      expect(element!.scrollWidth).to.be.at.most(360);
      await openDialog(element!);
      const dialog = find(element!, 'dialog[open]')!;
      expect(getComputedStyle(dialog).direction).to.equal('ltr');
      expect(dialog.closest('[lang]')?.getAttribute('lang')).to.equal('en');
      restore();
    }
  },

  async 'leaves the author’s own words their direction, language and type'(record) {
    const { tag } = record;
    const words = '<p class="own">מילים</p><table><tr><td>?</td></tr></table>';
    const bad = tag === 'bumpline-clearance' ? 'wheel-before="big"' : '';
    const style = 'font: italic 20px/2 serif; direction: rtl';
    const [element] = await put(
      tag,
      `<div lang="he" dir="rtl" style="${style}"><${tag} ${bad} corner-kind="">${words}</${tag}></div>`,
    );
    const own = element!.querySelector<HTMLElement>('.own')!;
    const shown = () => {
      const { direction, fontStyle, fontSize, lineHeight } = getComputedStyle(own);
      return [direction, fontStyle, fontSize, lineHeight];
    };
    const before = document.createElement('div');
    before.dir = 'rtl';
    before.style.cssText = style;
    before.innerHTML = '<p>מילים</p>';
    document.body.append(before);
    const expected = getComputedStyle(before.firstElementChild!);
    const page = [expected.direction, expected.fontStyle, expected.fontSize, expected.lineHeight];
    before.remove();
    expect(element!.state).to.equal('problem');
    expect(own.checkVisibility()).to.equal(true);
    expect(shown()).to.deep.equal(page);
  },

  async 'takes over no inherited style: not of the root, of body, of what is around it, nor of a rule for every element'(
    record,
  ) {
    const { tag } = record;
    // On a page set in columns of upright lines a box is as wide as it is told to be.
    const width = 'width: 360px';
    const plain = await wholeOf(await one(record, `style="${width}"`));
    const style = Object.entries(HOSTILE)
      .map(([name, value]) => `${name}: ${value}`)
      .join('; ');
    for (const element of ROOTS) element.style.cssText = style;
    const [element] = await put(tag, `<div style='${style}'><${tag} style='${width}; ${style}'></${tag}></div>`);
    expect(getComputedStyle(element!).wordBreak).to.equal('break-all');
    const hostile = await wholeOf(element!);
    restore();
    expect([...plain.keys()].filter((at) => hostile.has(at)).length).to.be.greaterThan(0.9 * plain.size);
    expect(leaks(plain, hostile)).to.deep.equal([]);
  },

  async 'is hidden with what it stands in, and by its own style; shown again by it'(record) {
    const { tag } = record;
    const [hidden, own, shown] = (
      await put(
        tag,
        `<div style="visibility: hidden"><${tag}></${tag}><${tag} style="visibility: visible"></${tag}></div><${tag} style="visibility: hidden"></${tag}>`,
      )
    ).toSorted((a, b) => Number(a.style.visibility === 'visible') - Number(b.style.visibility === 'visible')) as [
      Sheet,
      Sheet,
      Sheet,
    ];
    for (const element of [hidden, own])
      expect(find(element, '.sentence')!.checkVisibility({ visibilityProperty: true })).to.equal(false);
    expect(find(shown, '.sentence')!.checkVisibility({ visibilityProperty: true })).to.equal(true);
  },

  async 'has no text in the colour of what is behind it in forced colours, light or dark, dialog and all'(record) {
    for (const scheme of ['light', 'dark']) {
      await executeServerCommand('media-features', [
        { name: 'forced-colors', value: 'active' },
        { name: 'prefers-color-scheme', value: scheme },
      ]);
      expect(matchMedia('(forced-colors: active)').matches).to.equal(true);
      const element = await one(record);
      await unfold(element);
      const main = find<HTMLButtonElement>(element, '.button.main');
      await openDialog(element);
      const ground = (part: Element): string => {
        for (let at: Element | null = part; at; at = at.parentElement) {
          const { backgroundColor } = getComputedStyle(at);
          if (!/, 0\)$/.test(backgroundColor)) return backgroundColor;
        }
        return colourOf('Canvas');
      };
      const lost = all(element, '*')
        .filter((part) => !part.closest('svg') && part.checkVisibility())
        .filter((part) => [...part.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && textOf(node) !== ''))
        .filter((part) => {
          const { color, forcedColorAdjust } = getComputedStyle(part);
          // Where colours are forced, text stands on a plate of the canvas' colour, whatever is behind it.
          return color === (forcedColorAdjust === 'none' ? ground(part) : colourOf('Canvas'));
        });
      expect(lost.map((part) => part.outerHTML.slice(0, 100))).to.deep.equal([]);
      if (main && !main.disabled) {
        const { color, backgroundColor } = getComputedStyle(main);
        expect([color, backgroundColor]).to.deep.equal([colourOf('HighlightText'), colourOf('Highlight')]);
      }
    }
  },
};

function colourOf(name: string): string {
  const probe = document.createElement('p');
  probe.style.cssText = `color: ${name}; forced-color-adjust: none`;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

describe('every element on a page that is not ours, at 360 × 780', () => {
  const { error } = console;
  before(() => setViewport({ width: 360, height: 780 }));
  beforeEach(() => {
    console.error = () => {};
  });
  afterEach(async () => {
    clear();
    restore();
    console.error = error;
    await executeServerCommand('media-features', []);
  });

  for (const record of ELEMENTS) {
    describe(`<${record.tag}>`, () => {
      for (const [contract, check] of Object.entries(CONTRACT)) it(contract, () => check(record)).timeout(120_000);
    });
  }
});
