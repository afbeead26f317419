import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineGeometry } from '../../../components/bumpline-geometry/bumpline-geometry.js';
import { wishboneCorner } from '../bumpline-lowering/set-up.js';
import { all, clear, find, press, put, settled, textOf, until } from '../contract/stage.js';

type Element = BumplineGeometry & Parameters<typeof settled>[0];

async function geometry(width: number): Promise<Element> {
  await setViewport({ width, height: 900 });
  const [element] = await put('bumpline-geometry', '<bumpline-geometry></bumpline-geometry>');
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  find<HTMLDetailsElement>(element!, '.corner-json')!.open = true;
  await settled(element!);
  return element as Element;
}

const textarea = (element: Element) => find<HTMLTextAreaElement>(element, '.json-text')!;
const said = (element: Element) => textOf(find(element, '#corner-said'));

/** Pastes a text and has it read. */
async function paste(element: Element, text: string): Promise<void> {
  const field = textarea(element);
  const before = said(element);
  field.value = text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await press(element, '.use-json');
  await until('the text is read', () => find(element, '.pasted') !== null || said(element) !== before);
  await settled(element);
}

const TABLE = [
  'Point;x;y;z;±',
  'Lower arm, front pivot;24,0;357,5;193,0;2',
  'Lower arm, rear pivot;−268,0;362,0;198,0;2',
  'Lower ball joint;0,0;694,0;176,0;2',
  'Top mount;−80,5;574,0;822,0;2',
  'Damper, low point;−38,0;625,0;462,0;2',
  'Tie rod, inner end;−124,0;340,0;256,0;2',
  'Tie rod, outer end;−128,0;664,0;245,0;2',
  'Wheel centre;0,0;738,0;302,0;2',
  'Loaded radius;302',
  'Static camber;−0,75',
  'Static toe;0,10',
].join('\n');

describe('<bumpline-geometry> and a pasted table', () => {
  afterEach(clear);

  it('shows what it read of a table before it takes it, and takes it as one step of undo', async () => {
    const element = await geometry(360);
    const before = element.answer;
    await paste(element, TABLE);
    expect(element.answer, 'nothing is taken yet').to.equal(before);
    const rows = all(element, '.pasted-rows li').map(textOf);
    expect(rows).to.have.length(11);
    expect(rows[3]).to.match(/^Top mount\s*−80\.5\s+574\s+822\s+±\s2\smm$/);
    expect(rows).to.include.members(rows.filter((row) => /Static camber\s*−0\.75°/.test(row)));
    expect(find(element, '.pasted-not')).to.equal(null);
    expect(find(element, '.sheet')!.scrollWidth).to.be.at.most(360);
    await press(element, '.take-table');
    const { corner } = element.answer!.bare.curves;
    expect(corner.kind === 'strut' && corner.strut.top).to.deep.equal([-80.5, 574, 822]);
    expect(corner.lowerArm.front).to.deep.equal([24, 357.5, 193]);
    expect([corner.camber, corner.toe]).to.deep.equal([-0.75, 0.1]);
    expect(textOf(find(element, '.owner'))).to.equal('all yours');
    expect(JSON.parse(textarea(element).value).strut.top).to.deep.equal([-80.5, 574, 822]);
    await press(element, '.undo');
    expect(element.answer!.bare.curves.corner).to.deep.equal(before!.bare.curves.corner);
    expect(find(element, '.undo:not([disabled])'), 'no second step').to.equal(null);
  });

  it('tells rows that it cannot read by name, takes the others, and keeps the text to be mended', async () => {
    const element = await geometry(700);
    const text = TABLE.replace('Wheel centre;', 'Spare wheel;').replace('574,0', '57x4');
    await paste(element, text);
    expect(all(element, '.pasted-rows li')).to.have.length(9);
    const problems = all(element, '.pasted-not li').map(textOf);
    expect(problems).to.have.length(2);
    expect(problems.join(' '))
      .to.match(/Spare wheel: /)
      .and.to.match(/Top mount, y: “57x4” cannot be read as a number/);
    await press(element, '.take-table');
    expect(textarea(element).value).to.equal(text);
    expect(said(element)).to.contain('Correct the others');
    expect(textOf(find(element, '.sentence'))).to.contain('2 points of this are still');
    await paste(element, text.replace('Spare wheel;', 'Wheel centre;').replace('57x4', '574'));
    await press(element, '.take-table');
    expect(textOf(find(element, '.owner'))).to.equal('all yours');
  });

  it('tells a text that is neither JSON nor a table, keeps it and changes nothing', async () => {
    const element = await geometry(360);
    const before = element.answer;
    await paste(element, 'Front left corner as measured on Sunday');
    expect(said(element)).to.contain('neither JSON nor a table');
    expect(textarea(element).value).to.equal('Front left corner as measured on Sunday');
    expect(textarea(element).getAttribute('aria-invalid')).to.equal('true');
    expect(find(element, '.take-table')).to.equal(null);
    expect(element.answer).to.equal(before);
  });

  it('puts a table in place of a double wishbone, none of whose points stay', async () => {
    const element = await geometry(700);
    await paste(element, JSON.stringify(wishboneCorner));
    expect(element.answer!.bare.curves.corner.kind).to.equal('wishbone');
    await paste(element, TABLE);
    await press(element, '.take-table');
    const { corner } = element.answer!.bare.curves;
    expect(corner.kind).to.equal('strut');
    expect(corner.lowerArm.front).to.deep.equal([24, 357.5, 193]);
  });
});
