import 'axe-core';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { PasteHost } from './paste-host.js';
import './paste-host.js';
import { PasteSheet } from '../../../components/paste/paste-sheet.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;

/** Invented: heights in inches down the arch, three passes, as a careless spreadsheet saves them. */
const UGLY = `Invented car, front left, spring out, bar off;;;;;
Hub to arch;Camber;Camber;Camber;Body;Notes
(in);Pass 1 up;Pass 2 down;Pass 3 up;mm;
15 3/16;0,03;-0,09;0,06;112;
15;−0,10;−0,17;−0,06;112;
14 13/16;−0,20;−0,28;−0,22;112;checked bar
14 5/8;−0,35;−0,38;−0,28;112,5;
14 7/16;−0,41;;−0,38;112;
14 1/4;−0,52;−0,59;−0,4x7;112;
14 1/16;−0,55;−0,66;−0,55;112;
13 7/8;–0,68;−0,75;n/a;112;
13 11/16;−0,77;−0,82;−0,70;112;lunch

mean;−0,41;−0,45;−0,33;;
`;
/** The same by hand: inches, then camber in each pass, body. */
const BY_HAND: [number, (number | undefined)[], number][] = [
  [15.1875, [0.03, -0.09, 0.06], 112],
  [15, [-0.1, -0.17, -0.06], 112],
  [14.8125, [-0.2, -0.28, -0.22], 112],
  [14.625, [-0.35, -0.38, -0.28], 112.5],
  [14.4375, [-0.41, undefined, -0.38], 112],
  [14.25, [-0.52, -0.59, undefined], 112],
  [14.0625, [-0.55, -0.66, -0.55], 112],
  [13.875, [-0.68, -0.75, undefined], 112],
  [13.6875, [-0.77, -0.82, -0.7], 112],
];
/** mm in an inch, by definition. */
const INCH = 25.4;
const byHand = (zeroInches: number, cellD9?: number) =>
  BY_HAND.flatMap(([inches, values, body]) =>
    values.flatMap((value, i) => {
      const taken = inches === 14.25 && i === 2 ? cellD9 : value;
      const travel = Math.round((zeroInches - inches) * INCH * 1e9) / 1e9 + 0;
      return taken === undefined
        ? []
        : [{ travel, value: taken, pass: `Pass ${i + 1}`, going: i === 1 ? 'down' : 'up', body }];
    }),
  );

let element: PasteHost;
const $ = <E extends Element = HTMLElement>(selector: string): E => element.shadowRoot!.querySelector(selector) as E;
const all = (selector: string) => [...element.shadowRoot!.querySelectorAll<HTMLElement>(selector)];
const words = (node: Element | null) => (node?.textContent ?? '').replace(/[\s\u202f]+/g, ' ').trim();
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const focused = () => element.shadowRoot!.activeElement as HTMLElement | null;
const button = (name: string) => all('dialog button').find((one) => words(one).startsWith(name))!;
const cell = (row: number, column: number) => $(`.preview tbody tr:nth-child(${row}) > :nth-child(${column + 1})`);

/** Until nothing is being fetched, read or drawn. */
async function settled(): Promise<void> {
  const end = performance.now() + 3000;
  let before: string | undefined;
  let now: string | undefined;
  // Twice the same: on a slow machine the sheet may not have begun to read at the first look.
  do {
    before = now;
    await wait(20);
    await element.updateComplete;
    const summary = element.renderRoot.querySelector('#paste-summary');
    now = summary ? words(summary) : undefined;
  } while ((now !== before || now === 'Reading the sheet.') && performance.now() < end);
}
async function show(text?: string, change?: (host: PasteHost) => void): Promise<void> {
  document.querySelector('paste-host')?.remove();
  element = document.createElement('paste-host') as PasteHost;
  change?.(element);
  document.body.append(element);
  await element.updateComplete;
  if (text === undefined) return;
  element.sheet.open(text);
  await settled();
}
async function tap(target: HTMLElement): Promise<void> {
  target.click();
  await settled();
}
async function enter(field: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement, text: string, kind = 'change') {
  field.value = text;
  field.dispatchEvent(
    kind === 'change' ? new Event('change') : new InputEvent('input', { inputType: 'insertText', bubbles: true }),
  );
  await settled();
}
const overflow = () => {
  const dialog = $('dialog');
  return Math.max(
    document.documentElement.scrollWidth - document.documentElement.clientWidth,
    dialog.scrollWidth - dialog.clientWidth,
  );
};
const pasteOn = (target: Element, text: string) => {
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', text);
  const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, composed: true, cancelable: true });
  target.dispatchEvent(event);
  return event;
};
const dropOn = (target: Element, file: File) => {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(file);
  target.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, composed: true, cancelable: true }));
};

describe('a pasted sheet of readings', () => {
  before(() => setViewport({ width: 360, height: 780 }));
  after(() => {
    document.querySelector('paste-host')?.remove();
    return setViewport({ width: 1280, height: 800 });
  });

  it('sums an ugly paste up and accounts for every cell of it', async () => {
    await show(UGLY);
    expect(words($('#paste-summary'))).to.equal(
      '24 readings in 3 passes, −19.1 to +19.1 mm; 2 gaps; 1 cell cannot be read; 1 line is not a reading; 1 column is not used.',
    );
    expect(words(cell(1, 1))).to.equal('Invented car, front left, spring out, bar off, heading');
    expect(words(cell(4, 1))).to.equal('15 3/16→ −19.1 mm');
    // Only the kind of the marks differs: nothing is said beside it.
    expect(words(cell(4, 3))).to.equal('-0,09');
    expect(words(cell(8, 3))).to.equal('gap');
    expect(words(cell(11, 4))).to.equal('n/agap');
    expect(words(cell(9, 4))).to.equal('−0,4x7✗ cannot be read, Correct D9');
    expect(words(cell(12, 6))).to.equal('lunch, column not used');
    expect(words(cell(14, 1))).to.equal('meannot a reading');
    expect(words(cell(14, 2))).to.equal('−0,41no height');
    expect(words($('.unread'))).to.contain('D9: “−0,4x7” cannot be read as a number. Write it like');
    expect(all('.preview thead button').map(words)).to.deep.equal([
      'A Hub to arch ▾ in change',
      'B Camber ▾ °, Pass 1, up ↑ change',
      'C Camber ▾ °, Pass 2, down ↓ change',
      'D Camber ▾ °, Pass 3, up ↑ change',
      'E Body reference ▾ mm change',
      'F Not used ▾ change',
    ]);
  });

  it('takes exactly what the sheet says, by the height that is answered, in one step that undo takes back', async () => {
    await show(UGLY);
    const before = element.setup;
    // Nothing in the sheet says it: readings by a guess would be silently wrong.
    expect($<HTMLButtonElement>('#paste-take').disabled).to.equal(true);
    expect(words($('#paste-take'))).to.equal('First say which height is zero');
    expect($('#paste-assumed')).to.equal(null);
    // In the sheet's own inches, whatever the page counts in.
    await enter($<HTMLInputElement>('#answer-zero'), '14 1/16');
    await tap(button('Use these 24 readings'));
    expect(element.setup.readings).to.deep.equal(byHand(14.0625));
    expect($<HTMLDialogElement>('dialog').open).to.equal(false);
    expect(element.past).to.have.length(1);
    await wait(600);
    expect(words($('[role=status]'))).to.equal('24 readings in 3 passes taken from the sheet.');
    element.undo();
    expect(element.setup).to.equal(before);
    expect(element.isOwn).to.equal(false);
  });

  it('says what is assumed where the sheet names a height, and an assumption can be agreed to by a tap', async () => {
    await show('Height (mm)\tCamber\tNotes\n400\t0.31\t\n365\t-0.52\tride height\n341\t-0.93\t\n330\t-1.08\t\n');
    expect(words($('#paste-assumed'))).to.equal('Not answered, so assumed: 365 mm is zero.');
    await tap(button('365 mm assumed'));
    expect(focused()?.id).to.equal('answer-zero');
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('365');
    await tap(button('Use these 4'));
    expect(element.setup.readings.map(({ travel }) => travel)).to.deep.equal([-35, 0, 24, 35]);
  });

  it('says of a height that no wheel has from there what is wrong with it and keeps it', async () => {
    await show(UGLY);
    await enter($<HTMLInputElement>('#answer-zero'), '30');
    expect(words($('#wrong-zero'))).to.match(/is 30 in, which is not possible\. Enter .* in or less/);
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('30');
    expect($<HTMLButtonElement>('#paste-take').disabled).to.equal(true);
  });

  it('says of a height what is wrong with it and keeps it', async () => {
    await show(UGLY);
    await enter($<HTMLInputElement>('#answer-zero'), 'axle');
    expect(words($('#wrong-zero'))).to.match(/“axle” cannot be read as a number/);
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('axle');
    await tap(button('Close'));
    element.sheet.open();
    await settled();
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('axle');
  });

  it('has a cell corrected, left out, and put back as it was', async () => {
    await show(UGLY);
    await tap(button('Correct D9'));
    expect(focused()?.id).to.equal('panel-first');
    await enter($<HTMLInputElement>('#panel-first'), '−0,47');
    await sendKeys({ press: 'Enter' });
    await settled();
    expect($('.unread')).to.equal(null);
    expect(focused()?.id).to.equal('cell-8-3');
    expect(words(cell(9, 4))).to.equal('−0,47 −0,4x7 corrected, change D9');
    await enter($<HTMLInputElement>('#answer-zero'), '14 7/16');
    await tap($('#cell-8-3'));
    await tap(button('Leave it out'));
    expect(words($('#paste-summary'))).to.match(/^24 readings in 3 passes.*; 3 gaps/);
    await tap($('#cell-8-3'));
    await tap(button('As it was pasted'));
    expect(words($('#paste-summary'))).to.contain('1 cell cannot be read');
    await tap($('#cell-8-3'));
    await enter($<HTMLInputElement>('#panel-first'), '-0.47');
    await tap(button('Set'));
    await tap(button('Use these 25 readings'));
    expect(element.setup.readings).to.deep.equal(byHand(14.4375, -0.47));
  });

  it('asks what 1,500 and 1.30 are, and reads the whole sheet by the answer', async () => {
    // Invented, in degrees and minutes: nobody writes −0.45 and −1.00 side by side with the last place always there for nothing.
    await show('travel mm\tcamber\n1,500\t-1.30\n2,500\t-1.10\n3,500\t-0.50\n4,500\t-0.40\n');
    expect(words($('#question-comma'))).to.match(/^1,500 can be read in two ways/);
    expect(words(button('1.5 mm'))).to.equal('1.5 mm assumed');
    expect(words(cell(2, 1))).to.equal('1,500→ +1.5 mm ?, see the question');
    await tap(button('1500 mm'));
    expect(button('✓ 1500 mm').getAttribute('aria-pressed')).to.equal('true');
    expect(button('1.5 mm').getAttribute('aria-pressed')).to.equal('false');
    // No wheel travels so far.
    expect(words($('#paste-summary'))).to.contain('4 cells cannot be read');
    expect($<HTMLButtonElement>('#paste-take').disabled).to.equal(true);
    await tap(button('1.5 mm'));
    expect(words(button('−1.30°'))).to.equal('−1.30° assumed');
    await tap(button('−1°30′'));
    expect(words(cell(2, 2))).to.equal('-1.30→ −1.50°');
    await tap(button('Use these 4 readings'));
    expect(element.setup.readings.map(({ travel }) => travel)).to.deep.equal([1.5, 2.5, 3.5, 4.5]);
    // −1°30′, −1°10′, −0°50′, −0°40′
    for (const [i, minutes] of [90, 70, 50, 40].entries())
      expect(element.setup.readings[i]!.value).to.be.closeTo(-minutes / 60, 1e-12);
  });

  it('keeps a name that is typed for the set of a single column, and takes the readings under it', async () => {
    await show('0;-0.1\n10;-0.3\n20;-0.5\n30;-0.6\n');
    await tap($('#head-1'));
    const [set] = all('.panel input') as HTMLInputElement[];
    await enter(set!, 'Lower joint');
    expect((all('.panel input')[0] as HTMLInputElement).value).to.equal('Lower joint');
    await enter(all('.panel input')[1] as HTMLInputElement, 'Sunday');
    expect((all('.panel input')[1] as HTMLInputElement).value).to.equal('Sunday');
    await tap(button('Done'));
    await tap(button('Use these 4 readings'));
    expect(element.setup.name).to.equal('Lower joint');
    expect(element.setup.readings[0]!.pass).to.equal('Sunday');
  });

  it('lets the user say what a column holds, and lets the sheet say it again', async () => {
    // The heights stand second, in centimetres; the first column is no travel.
    await show('-0.1;-2;7\n-0.3;0;8\n-0.5;2;9\n-0.6;4;10\n');
    const columns = async (...roles: string[]) => {
      for (const [i, role] of roles.entries()) {
        await tap($(`#head-${i}`));
        await enter($<HTMLSelectElement>('#panel-first'), role);
        await tap(button('Done'));
        expect(focused()?.id).to.equal(`head-${i}`);
      }
    };
    await columns('value', 'travel', 'other');
    await tap($('#head-0'));
    await enter(all('.panel select')[1] as HTMLSelectElement, 'arcminutes');
    await enter(all('.panel select')[2] as HTMLSelectElement, 'down');
    await enter(all('.panel input')[1] as HTMLInputElement, 'Morning');
    expect(words($('#head-0'))).to.equal('A Camber ▾ ′, Morning, down ↓ change');
    expect(words(cell(4, 1))).to.equal('-0.6→ −0.01°');
    await tap(button('Done'));
    await tap($('#head-1'));
    await enter(all('.panel select')[1] as HTMLSelectElement, 'cm');
    expect(words(cell(4, 2))).to.equal('4→ +40 mm');
    await tap(button('Use these 4 readings'));
    expect(element.setup.readings).to.have.length(4);
    for (const [i, [travel, minutes]] of [
      [-20, -0.1],
      [0, -0.3],
      [20, -0.5],
      [40, -0.6],
    ].entries()) {
      const reading = element.setup.readings[i]!;
      expect(reading).to.include({ travel, pass: 'Morning', going: 'down' });
      expect(reading.value).to.be.closeTo(minutes! / 60, 1e-12);
    }
  });

  it('says that a sheet was turned, and which lines name a pass', async () => {
    await show('Travel;-20;-10;0;10\nCamber;-0,1;-0,2;-0,3;-0,35\n');
    expect(words($('.preview').previousElementSibling)).to.match(/^In your text the heights stand along a line/);
    expect(words($('#paste-summary'))).to.equal('4 readings, −20 to +10 mm.');
    await show('Pass 1 going up\n-20 -0.1\n0 -0.3\nPass 2 going down\n0 -0.33\n-20 #REF\n');
    expect(words($('.preview').previousElementSibling)).not.to.match(/along a line/);
    expect(words(cell(1, 1))).to.equal('Pass 1 going up→ Pass 1, up ↑');
    expect(words($('#paste-summary'))).to.equal('3 readings in 2 passes, −20 to 0 mm; 1 cell cannot be read.');
  });

  it('forgets what was said of a column when asked to', async () => {
    await show('travel;camber\n-20;-0.1\n0;-0.3\n20;-0.5\n');
    await tap($('#head-1'));
    await enter($<HTMLSelectElement>('#panel-first'), 'other');
    expect(words($('#paste-summary'))).to.contain('No readings yet');
    expect(words($('dialog .problem'))).to.equal(
      'No column is known to hold the camber. Press the head of the column that does.',
    );
    await tap(button('As the sheet says'));
    expect(words($('#paste-summary'))).to.equal('3 readings, −20 to +20 mm.');
  });

  it('adds to own readings as passes of their own, or replaces them, as is chosen; each is one step', async () => {
    const own = [
      { travel: 0, value: -0.5, pass: 'Pass 1' },
      { travel: 10, value: -0.6, pass: 'Pass 1' },
    ];
    const text = 'travel;Pass 1;Pass 2\n-20;-0.1;-0.2\n0;-0.3;-0.4\n';
    const start = (host: PasteHost) => {
      host.setup = { ...host.setup, readings: own, setAside: [1] };
      host.isOwn = true;
    };
    await show(text, start);
    await tap(button('Use these 4 readings'));
    expect(element.past).to.have.length(0);
    expect(words($('.assumed'))).to.equal('You have 2 readings of Invented parts already.');
    expect(words(focused())).to.equal('Add as further passes');
    await tap(button('Back'));
    expect(focused()?.id).to.equal('paste-take');
    await tap(button('Use these 4 readings'));
    await tap(button('Add as further passes'));
    expect(element.setup.readings.map(({ travel, value, pass }) => [travel, value, pass])).to.deep.equal([
      [0, -0.5, 'Pass 1'],
      [10, -0.6, 'Pass 1'],
      [-20, -0.1, 'Pass 3'],
      [-20, -0.2, 'Pass 2'],
      [0, -0.3, 'Pass 3'],
      [0, -0.4, 'Pass 2'],
    ]);
    expect(element.setup.setAside).to.deep.equal([1]);
    element.undo();
    expect(element.setup.readings).to.equal(own);

    await show(text, start);
    await tap(button('Use these 4 readings'));
    await tap(button('Replace them'));
    expect(element.setup.readings.map(({ value }) => value)).to.deep.equal([-0.1, -0.2, -0.3, -0.4]);
    expect(element.setup).not.to.have.property('setAside');
    expect(element.past).to.have.length(1);
  });

  it('keeps text, answers and columns when it is closed, and the text before when another comes', async () => {
    await show(UGLY);
    await enter($<HTMLInputElement>('#answer-zero'), '360');
    await tap(button('Close'));
    expect(element.setup.readings).to.have.length(1);
    await tap($('#open'));
    await settled();
    expect($<HTMLTextAreaElement>('#paste-text').value).to.equal(UGLY);
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('360');
    // The same sheet with another figure: what was said still holds.
    element.sheet.open(UGLY.replace('−0,4x7', '−0,47'));
    await settled();
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('360');
    expect(words($('#paste-summary'))).to.match(/^25 readings/);
    // Another sheet: it does not.
    element.sheet.open('hub to arch;camber\n400;-0.1\n390;-0.3\n380;-0.5\n');
    await settled();
    expect($<HTMLInputElement>('#answer-zero').value).to.equal('');
    await tap(button('Back to the text before'));
    expect($<HTMLTextAreaElement>('#paste-text').value).to.contain('−0,47');
  });
});

describe('a pasted sheet of several sets of parts', () => {
  before(() => setViewport({ width: 360, height: 780 }));
  after(() => {
    document.querySelector('paste-host')?.remove();
    return setViewport({ width: 1280, height: 800 });
  });
  const HEIGHTS = [-40, -30, -20, -10, 0, 10, 20, 30, 40];
  const stock = (t: number, k: number) => -0.6 - 0.013 * t + 1e-4 * t * t + 0.02 * Math.sin(7 * t + 3 * k);
  const lower = (t: number, k: number) => -0.5 - 0.018 * t + 1e-4 * t * t + 0.02 * Math.sin(5 * t + 2 * k);
  const two = (f: (t: number, k: number) => number, t: number) => [f(t, 1), f(t, 2)].map((value) => value.toFixed(2));
  const mean = (cells: string[]) => (cells.reduce((sum, cell) => sum + Number(cell), 0) / cells.length).toFixed(3);
  const NAMED = [
    'Travel (mm)\tStock 1\tStock 2\tStock avg\tLowered joint 1\tLowered joint 2\tavg',
    ...HEIGHTS.map((t) => {
      const [a, b] = [two(stock, t), two(lower, t)];
      return [t, ...a, mean(a), ...b, mean(b)].join('\t');
    }),
  ].join('\n');
  const NAMELESS = HEIGHTS.map((t) => [t, stock(t, 1).toFixed(2), lower(t, 1).toFixed(2)].join('\t')).join('\n');
  const named = () => element.car.setups!.map(({ name, readings }) => [name, readings.length]);

  it('shows what a sheet may look like before there is one', async () => {
    await show();
    await tap($('#open'));
    expect(words($('.sample caption'))).to.match(/invented/);
    expect(all('.sample th').map(words)).to.deep.equal(['Travel mm', 'Stock 1', 'Stock 2', 'Lower joint']);
    expect(overflow()).to.equal(0);
    await enter($<HTMLTextAreaElement>('#paste-text'), '−30:0.62, −20:0.33', 'input');
    expect(words($('#paste-summary'))).to.equal('2 readings, −30 to −20 mm.');
    expect($('.sample')).to.equal(null);
  });

  it('names the sets and their passes, and says which columns are averages', async () => {
    await show(NAMED);
    expect(words($('#paste-summary'))).to.equal(
      '36 readings in 2 sets of parts, −40 to +40 mm: Stock (18 readings in 2 passes) and Lowered joint (18 readings in 2 passes).',
    );
    expect(words($('#paste-derived'))).to.equal(
      'Column D, “Stock avg”, is the average of columns B and C: left out. Column G, “avg”, is the average of columns E and F: left out.',
    );
    expect(words($('#head-3'))).to.equal('D Worked out ▾ change');
    expect(words($('#head-4'))).to.equal('E Camber ▾ °, Lowered joint, Pass 1 change');
    expect($('.questions')).to.equal(null);
    await tap(button('Use these 2 sets of parts'));
    expect(named()).to.deep.equal([
      ['Stock', 18],
      ['Lowered joint', 18],
    ]);
    expect(element.past).to.have.length(1);
    await wait(600);
    expect(words($('[role=status]'))).to.equal('36 readings in 2 sets of parts taken from the sheet.');
  });

  it('asks about columns that differ, and the answer changes what is used', async () => {
    await show(NAMELESS);
    expect(words($('#question-sets'))).to.equal(
      'Columns B and C differ by more than their scatter allows. Two sets of parts, or passes of one?',
    );
    expect(words(button('Two sets of parts'))).to.equal('Two sets of parts assumed');
    expect(words($('#paste-assumed'))).to.equal('Not answered, so assumed: columns B and C are two sets of parts.');
    expect(words($('#paste-take'))).to.equal('Use these 2 sets of parts');
    await tap(button('Passes of one set'));
    expect(words($('#paste-summary'))).to.equal('18 readings in 2 passes, −40 to +40 mm.');
    expect(words($('#paste-take'))).to.equal('Use these 18 readings');
    await tap(button('Two sets of parts'));
    expect(words($('#head-2'))).to.equal('C Camber ▾ °, Set 2 change');
    await tap($('#head-2'));
    await enter(all('.panel input')[0] as HTMLInputElement, 'Lower joint');
    await tap(button('Done'));
    await tap(button('Use these 2 sets of parts'));
    expect(named()).to.deep.equal([
      ['Set 1', 9],
      ['Lower joint', 9],
    ]);
  });

  it('has sets named that the sheet does not name, and forgets a name that is cleared', async () => {
    await show(NAMELESS);
    const fields = () => all('.set-names input') as HTMLInputElement[];
    expect(all('.set-names span').map(words)).to.deep.equal([
      'Name of the parts in column B',
      'Name of the parts in column C',
    ]);
    await enter(fields()[0]!, 'Stock');
    expect(fields()).to.have.length(2);
    await enter(fields()[1]!, 'Lower joints');
    expect(words($('#paste-summary'))).to.contain('Stock (9 readings) and Lower joints (9 readings)');
    expect($('.questions')).to.equal(null);
    await enter(fields()[0]!, '');
    await enter(fields()[1]!, '');
    expect($('#question-sets')).not.to.equal(null);
    await enter(fields()[1]!, 'Lower joints');
    await tap(button('Use these 2 sets'));
    expect(named()).to.deep.equal([
      ['Set 1', 9],
      ['Lower joints', 9],
    ]);
  });

  for (const [width, height] of [
    [320, 640],
    [1280, 900],
  ] as const)
    it(`passes axe, and is no wider than its dialog, at ${width} px`, async () => {
      await setViewport({ width, height });
      for (const text of [NAMELESS, NAMED, '']) {
        await show(undefined);
        element.sheet.open(text);
        await settled();
        expect(overflow()).to.equal(0);
        const { violations } = await axe.run('paste-host', { rules: { region: { enabled: false } } });
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).to.deep.equal(
          [],
        );
      }
      await setViewport({ width: 360, height: 780 });
    });

  it('asks what becomes of readings that are there: one set is added as passes, beside them or in their place', async () => {
    const start = (host: PasteHost) => {
      host.setup = { ...host.setup, name: 'Mine', readings: [{ travel: 0, value: -0.5 }] };
      host.isOwn = true;
    };
    await show('travel;Longer arms\n-20;-0.1\n0;-0.3\n20;-0.6\n', start);
    await tap(button('Use these 3 readings'));
    await tap(button('Keep them, and add these as another set of parts'));
    expect(named()).to.deep.equal([
      ['Mine', 1],
      ['Longer arms', 3],
    ]);
    expect(element.setup.name).to.equal('Longer arms');

    await show(NAMED, start);
    await tap(button('Use these 2 sets of parts'));
    expect(all('.buttons button').map(words)).to.deep.equal([
      'Keep them, and add these sets beside them',
      'Replace them',
      'Back',
    ]);
    await tap(button('Replace them'));
    expect(named()).to.deep.equal([
      ['Stock', 18],
      ['Lowered joint', 18],
    ]);
    expect(element.setup.name).to.equal('Stock');
    element.undo();
    expect(named()).to.deep.equal([['Mine', 1]]);
  });
});

describe('ways into the sheet', () => {
  before(() => setViewport({ width: 360, height: 780 }));
  after(() => {
    document.querySelector('paste-host')?.remove();
    return setViewport({ width: 1280, height: 800 });
  });

  it('opens by a paste anywhere on the element, but leaves one figure to the field it is pasted into', async () => {
    await show();
    expect(pasteOn($('#field'), '-0.35').defaultPrevented).to.equal(false);
    expect($<HTMLDialogElement>('dialog').open).to.equal(false);
    expect(pasteOn($('#field'), '-20\t-0.35\n0\t-0.5').defaultPrevented).to.equal(true);
    await settled();
    expect($<HTMLDialogElement>('dialog').open).to.equal(true);
    expect(words($('#paste-summary'))).to.equal('2 readings, −20 to 0 mm.');
    expect(focused()?.id).to.equal('paste-title');
    // In its own text area a paste is the browser's; beside it another sheet takes the first one's place.
    expect(pasteOn($('#paste-text'), UGLY).defaultPrevented).to.equal(false);
    pasteOn($('#paste-title'), '-30\t-0.35\n0\t-0.5');
    await settled();
    expect(words($('#paste-summary'))).to.equal('2 readings, −30 to 0 mm.');
  });

  it('reads dropped files in the encodings of spreadsheets, and refuses what is no text', async () => {
    const text = 'travel;camber °\n-20;-0,1\n0;-0,3\n';
    const utf16 = new Uint8Array([
      0xff,
      0xfe,
      ...[...text].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
    ]);
    const western = new Uint8Array([...text].map((c) => c.charCodeAt(0)));
    for (const bytes of [utf16, western, new TextEncoder().encode(text)]) {
      await show();
      dropOn($('.sheet'), new File([bytes], 'invented.csv'));
      await settled();
      expect($<HTMLTextAreaElement>('#paste-text').value).to.equal(text);
      expect(words($('#paste-summary'))).to.equal('2 readings, −20 to 0 mm.');
    }
    dropOn($('dialog'), new File([new Uint8Array([80, 75, 3, 4, 0, 0])], 'invented.xlsx'));
    await settled();
    expect(words($('dialog [role=alert]'))).to.match(/^“invented.xlsx” is no text file. Save the sheet as CSV/);
    expect($<HTMLTextAreaElement>('#paste-text').value).to.equal(text);
  });

  it('says plainly when its reader cannot be fetched, keeps the text and tries again', async () => {
    let isOffline = true;
    const reader = import('../../../components/paste/sheet-reader.js');
    await show('-20;-0.1\n0;-0.3', (host) => {
      host.sheet = new PasteSheet(host, () => (isOffline ? Promise.reject(new Error('offline')) : reader));
    });
    expect(words($('dialog [role=alert]'))).to.match(/could not be fetched. Your text is kept./);
    expect($<HTMLTextAreaElement>('#paste-text').value).to.equal('-20;-0.1\n0;-0.3');
    isOffline = false;
    await tap(button('Try again'));
    expect(words($('#paste-summary'))).to.equal('2 readings, −20 to 0 mm.');
  });

  it('is done by keyboard alone, and the focus comes back to where it was opened', async () => {
    await show();
    $('#open').focus();
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(focused()?.id).to.equal('paste-text');
    await sendKeys({ type: '-20;-0.1' });
    await sendKeys({ press: 'Enter' });
    await sendKeys({ type: '0;-0.3' });
    await settled();
    const tabTo = async (name: RegExp) => {
      for (let i = 0; i < 20 && !name.test(words(focused())); i++) await sendKeys({ press: 'Tab' });
      expect(words(focused())).to.match(name);
    };
    await tabTo(/^B Camber/);
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(focused()?.id).to.equal('panel-first');
    // Escape closes the panel first, and only then the sheet.
    await sendKeys({ press: 'Escape' });
    await settled();
    expect($('.panel')).to.equal(null);
    expect($<HTMLDialogElement>('dialog').open).to.equal(true);
    expect(focused()?.id).to.equal('head-1');
    await tabTo(/^Use these 2/);
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(element.setup.readings).to.have.length(2);
    expect($<HTMLDialogElement>('dialog').open).to.equal(false);
    expect(focused()?.id).to.equal('open');
  });
});

describe('a pasted sheet for everybody', () => {
  afterEach(() => document.querySelector('paste-host')?.remove());
  after(() => setViewport({ width: 1280, height: 800 }));

  const LONG = `travel\tcamber\n${Array.from({ length: 300 }, (_, i) => `${i - 150}\t${(-i / 100).toFixed(2)}`).join('\n')}`;

  for (const theme of ['light', 'dark'])
    it(`passes axe with questions, problems and a panel, ${theme}`, async () => {
      await setViewport({ width: 360, height: 780 });
      await show(undefined, (host) => host.setAttribute('theme', theme));
      const audit = async () => {
        const { violations } = await axe.run('paste-host', { rules: { region: { enabled: false } } });
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).to.deep.equal(
          [],
        );
      };
      element.sheet.open();
      await settled();
      await audit();
      element.sheet.open(UGLY);
      await settled();
      await audit();
      await tap($('#head-1'));
      await audit();
      await tap(button('Correct D9'));
      await audit();
    });

  for (const [width, height] of [
    [320, 640],
    [360, 780],
    [1280, 900],
  ] as const)
    it(`scrolls the table in its own box and never the page, and gives targets of 44 px, at ${width} px`, async () => {
      await setViewport({ width, height });
      await show(UGLY);
      expect(overflow()).to.equal(0);
      const preview = $('.preview');
      if (width < 400) expect(preview.scrollWidth).to.be.above(preview.clientWidth + 100);
      // The heights stay where they are while the rest moves.
      const left = () => cell(5, 1).getBoundingClientRect().left;
      const before = left();
      preview.scrollTo(80, 0);
      expect(left()).to.equal(before);
      for (const open of [() => $('#head-3'), () => button('Correct D9')]) {
        await tap(open());
        expect(overflow()).to.equal(0);
        const small = all(
          'dialog button, dialog input:not([type=file]), dialog select, dialog label.file, dialog textarea',
        )
          .map((control) => ({ control, box: control.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
          .map(({ control, box }) => `${control.outerHTML.slice(0, 80)} ${box.width}×${box.height}`);
        expect(small).to.deep.equal([]);
      }
    });

  it('asks for the base of two dials and their sign, reads toe by them, and keeps both figures', async () => {
    await setViewport({ width: 360, height: 780 });
    await show('travel\tfront dial\trear dial\n-20\t1.20\t1.10\n0\t1.50\t1.00\n20\t1.90\t0.80\n', (host) => {
      host.setup = { ...host.setup, quantity: 'toe' };
    });
    expect(words($('#paste-take'))).to.equal('Nothing to use yet');
    // Heights wait for the answers, and for no figure.
    expect(words($('#paste-summary'))).to.equal('No readings yet.');
    expect(words(cell(2, 2))).to.equal('1.20→ ?, see the question');
    await enter($<HTMLInputElement>('#answer-base'), '300');
    expect(words($('#paste-take'))).to.equal('Nothing to use yet');
    await tap(button('More: toe-in'));
    // The angle that both make stands below the first.
    expect([2, 3].map((column) => words(cell(2, column)))).to.deep.equal(['1.20→ +0.02°', '1.10']);
    await tap(button('Use these 3 readings'));
    expect(element.setup.overBase).to.deep.equal({ by: 'dials', base: 300, front: 'inboard' });
    expect(element.setup.readings[0]!.pair).to.deep.equal([1.2, 1.1]);
    expect(element.setup.quantity).to.equal('toe');
    for (const [i, difference] of [0.1, 0.5, 1.1].entries())
      expect(element.setup.readings[i]!.value).to.be.closeTo((Math.atan(difference / 300) * 180) / Math.PI, 1e-9);
  });

  describe('a typed length', () => {
    const DIALS = 'travel\tfront dial\trear dial\n-20\t1.20\t1.10\n0\t1.50\t1.00\n20\t1.90\t0.80\n';
    const OTHER = 'Height\tFront mm\tRear mm\n-20\t2.20\t2.10\n0\t2.50\t2.00\n20\t2.90\t1.80\n';
    const toe = (host: PasteHost) => {
      host.setup = { ...host.setup, quantity: 'toe' };
    };
    const take = () => $<HTMLButtonElement>('#paste-take');
    const base = () => $<HTMLInputElement>('#answer-base');
    before(() => setViewport({ width: 360, height: 780 }));

    it('that is no base takes the one before back: nothing is used by it, and the message names the base', async () => {
      await show(DIALS, toe);
      await enter(base(), '300');
      await tap(button('More: toe-in'));
      expect(take().disabled).to.equal(false);
      for (const [text, message] of [
        ['3', /^The base \(front to rear\) is 3 mm, .*Enter 20 mm or more/],
        ['0', /^The base \(front to rear\) is 0 mm/],
        ['-300', /^The base \(front to rear\) is −300 mm/],
        ['9000', /^The base \(front to rear\) is “9000”, .*4000 mm/],
        ['long', /^The base \(front to rear\): “long” cannot be read/],
      ] as const) {
        await enter(base(), text);
        expect(words($('#wrong-base'))).to.match(message);
        expect(base().getAttribute('aria-invalid')).to.equal('true');
        expect(base().value).to.equal(text);
        expect(take().disabled, text).to.equal(true);
        expect(all('.preview small').map(words).join(' ')).not.to.contain('°');
      }
      await enter(base(), '');
      expect($('#wrong-base')).to.equal(null);
      expect(take().disabled).to.equal(true);
      await enter(base(), '250');
      expect(take().disabled).to.equal(false);
    });

    it('counts as it is typed, keeps the caret and the text, and is called wrong only once it is typed out', async () => {
      await show(DIALS, toe);
      await tap(button('More: toe-in'));
      base().focus();
      await sendKeys({ type: '3' });
      await settled();
      expect($('#wrong-base')).to.equal(null);
      expect(take().disabled).to.equal(true);
      await sendKeys({ type: '00.' });
      await settled();
      expect(base().value).to.equal('300.');
      expect(focused()?.id).to.equal('answer-base');
      expect(words(take())).to.equal('Use these 3 readings');
      expect(take().disabled).to.equal(false);
      for (let i = 0; i < 3; i++) await sendKeys({ press: 'Backspace' });
      await settled();
      expect(take().disabled).to.equal(true);
      expect($('#wrong-base')).to.equal(null);
      await sendKeys({ press: 'Tab' });
      await settled();
      expect(words($('#wrong-base'))).to.contain('is 3 mm');
    });

    it('and all other answers go with the text that is cleared, and come back with it', async () => {
      await show(DIALS, toe);
      await enter(base(), '300');
      await tap(button('More: toe-in'));
      await enter(base(), '3');
      await tap(button('Clear'));
      await enter($<HTMLTextAreaElement>('#paste-text'), OTHER, 'input');
      expect(base().value).to.equal('');
      expect(base().getAttribute('aria-invalid')).to.equal(null);
      expect(all('.answer[aria-pressed=true]')).to.have.length(0);
      expect(take().disabled).to.equal(true);
      await enter($<HTMLTextAreaElement>('#paste-text'), '', 'input');
      await enter($<HTMLTextAreaElement>('#paste-text'), DIALS, 'input');
      expect(base().value).to.equal('');
      await enter(base(), '400');
      await tap(button('More: toe-in'));
      await tap(button('Clear'));
      await tap(button('Back to the text before'));
      expect(base().value).to.equal('400');
      await tap(button('Use these 3 readings'));
      expect(element.setup.overBase!.base).to.equal(400);
    });

    it('of the height that is zero is kept to the same rules, where the sheet names a likely one too', async () => {
      await show('Height (mm)\tCamber\tNotes\n400\t0.31\t\n365\t-0.52\tride height\n341\t-0.93\t\n330\t-1.08\t\n');
      expect(take().disabled).to.equal(false);
      await enter($<HTMLInputElement>('#answer-zero'), '3');
      expect(words($('#wrong-zero'))).to.match(/^The height that is zero is 3 mm/);
      expect(take().disabled).to.equal(true);
      await enter($<HTMLInputElement>('#answer-zero'), '341', 'input');
      expect(take().disabled).to.equal(false);
      expect($('#wrong-zero')).to.equal(null);
      await enter($<HTMLInputElement>('#answer-zero'), '3');
      await tap(button('365 mm assumed'));
      expect($<HTMLInputElement>('#answer-zero').value).to.equal('365');
      expect(take().disabled).to.equal(false);
    });
  });

  it('asks of columns of toe without names what they are, then for the base and the sign, and uses nothing before', async () => {
    await setViewport({ width: 360, height: 780 });
    const ROWS = '-20\t6.40\t5.90\n-10\t6.20\t5.95\n0\t6.00\t5.99\n10\t5.70\t6.02\n20\t5.30\t6.05';
    const toe = (host: PasteHost) => {
      host.setup = { ...host.setup, quantity: 'toe' };
    };
    await show(ROWS, toe);
    expect(all('.questions > li')).to.have.length(1);
    expect(words($('#question-pairs'))).to.equal('What stands in columns B and C?');
    expect(all('.answer').map(words)).to.deep.equal([
      'Front and rear of one wheel, by two dials',
      'Front and rear of one wheel, by tape',
      'Two passes of one set',
      'Two sets of parts',
    ]);
    expect(words($('#paste-take'))).to.equal('Nothing to use yet');
    expect($('#paste-assumed')).to.equal(null);
    // No figure is shown as an angle that it may not be.
    expect(words(cell(1, 2))).to.equal('6.40→ ?, see the question');
    expect(overflow()).to.equal(0);
    await tap(button('Front and rear of one wheel, by two dials'));
    expect($('#question-base')).not.to.equal(null);
    expect(words($('#question-front-sign'))).to.contain('does the front dial read more, or less?');
    await enter($<HTMLInputElement>('#answer-base'), '300');
    await tap(button('Less: toe-out'));
    await tap(button('Use these 5 readings'));
    expect(element.setup.overBase).to.deep.equal({ by: 'dials', base: 300, front: 'outboard' });
    expect(element.setup.readings[0]!.pair).to.deep.equal([6.4, 5.9]);
    await show(ROWS.replace(/\t([\d.]+)\t([\d.]+)/g, '\t$1\t$2\t$1\t$2'), toe);
    expect(all('.answer').map(words)).to.deep.equal([
      'Front and rear of one wheel, by two dials: two passes, front and rear in turn',
      'Front and rear of one wheel, by tape: two passes, front and rear in turn',
      'Four passes of one set',
      'Four sets of parts',
    ]);
    expect(overflow()).to.equal(0);
  });

  it('shows two dials in the sample where toe is asked for, and says what is asked besides', async () => {
    await show(undefined, (host) => {
      host.setup = { ...host.setup, quantity: 'toe' };
    });
    await tap($('#open'));
    expect(all('.sample th').map(words)).to.deep.equal(['Travel mm', 'Front dial mm', 'Rear dial mm']);
    expect(words($('#paste-how')))
      .to.contain('the base')
      .and.to.contain('which way the front one counts');
    expect(words($('#paste-how'))).not.to.match(/camber|joint/i);
    // The sample is a sheet that is read.
    const rows = all('.sample tr').map((row) => [...row.children].map(words).join('\t'));
    await enter($<HTMLTextAreaElement>('#paste-text'), rows.join('\n'), 'input');
    await enter($<HTMLInputElement>('#answer-base'), '300');
    await tap(button('More: toe-in'));
    expect(words($('#paste-take'))).to.equal('Use these 3 readings');
  });

  it('tells dials by their headings where either angle is taken, and never adds toe to readings of camber', async () => {
    await setViewport({ width: 360, height: 780 });
    await show('travel\tfront dial\trear dial\n-20\t1.20\t1.10\n0\t1.50\t1.00\n20\t1.90\t0.80\n', (host) => {
      host.takesEither = true;
      host.isOwn = true;
    });
    expect(words($('#question-base'))).to.contain('How far apart');
    await tap(button('Camber'));
    expect($('#question-base')).to.equal(null);
    await tap(button('Toe'));
    await enter($<HTMLInputElement>('#answer-base'), '300');
    await tap(button('More: toe-in'));
    await tap(button('Use these 3 readings'));
    expect(all('dialog button').map(words)).not.to.include('Add as further passes');
    await tap(button('Keep them'));
    expect(element.car.setups!.map(({ quantity }) => quantity)).to.deep.equal(['camber', 'toe']);
  });

  it('draws the first rows of a long sheet and the rest when asked', async () => {
    await setViewport({ width: 360, height: 780 });
    await show(LONG);
    expect(words($('#paste-summary'))).to.equal('300 readings, −150 to +149 mm.');
    expect(all('.preview tbody tr')).to.have.length(40);
    expect(words($('.rest'))).to.equal('Rows 1 to 40 of 301 are shown. Show all 301 rows');
    await tap(button('Show all 301 rows'));
    expect(all('.preview tbody tr')).to.have.length(301);
    expect($('.rest')).to.equal(null);
    expect(focused()).to.equal($('.preview'));
  });

  it('shows what cells become in the user’s own units', async () => {
    await show('travel (mm);camber °\n-25.4;-0.5\n0;-0,75\n', (host) => {
      host.display = { units: { length: 'in', angle: 'arcminutes' }, language: 'de' };
    });
    expect(words($('#paste-summary'))).to.equal('2 readings, −1 to 0 in.');
    expect(words(cell(2, 1))).to.equal('-25.4→ −1 in');
    expect(words(cell(2, 2))).to.equal('-0.5→ −0°30′');
  });
});
