import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineGeometry } from '../../../components/bumpline-geometry/bumpline-geometry.js';
import { CarModel } from '../../../components/car/car-model.js';
import { amountFor } from '../../../core/answers/amount.js';
import { type CarDocument, EMPTY_CAR, withDrop } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { byUser } from '../../../core/document/own-car.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { all, find, put, settled, textOf, until } from '../contract/stage.js';

type Element = BumplineGeometry & Parameters<typeof settled>[0];

const { camber: _, ...UNREAD } = EXAMPLE_DRIVEWAY;
const JOINT: PartData = { part: 'ballJointExtended', mm: 10, correctTieRod: true };
const MOUNT: PartData = { part: 'topMountMoved', vector: [0, 0, 0] };

const measured = (measures: object): CarDocument =>
  ({ ...withDrop(EMPTY_CAR, 25), given: { points: {}, measures, camber: -0.6 } }) as CarDocument;
const withParts = (car: CarDocument, ...parts: PartData[]) => fitSetup(addParts(byUser(car), 'Parts', parts), 0);

async function shown(tag: 'bumpline-geometry' | 'bumpline-compare', car: CarDocument): Promise<Element> {
  await setViewport({ width: 360, height: 780 });
  const [element] = await put(tag, `<${tag}></${tag}>`);
  (element as Element).car = new CarModel(car);
  await settled(element!);
  for (const details of all<HTMLDetailsElement>(element!, '.set, .own-sets, .own-parts, .part-find'))
    details.open = true;
  return element as Element;
}

/** Presses the finder of a part, and waits for what it says. */
async function found(element: Element, at = 0): Promise<string> {
  const place = () => all(element, '.part-find')[at]!;
  place().querySelector<HTMLButtonElement>('.find')!.click();
  await until(
    'it has been worked out',
    () => !/^(Working it out…)?$/.test(textOf(place().querySelector('[role=status]')!)),
  );
  return textOf(place().querySelector('[role=status]')!);
}

const driveway = {
  kind: 'driveway',
  driveway: { ...EXAMPLE_DRIVEWAY, camber: { value: -0.6, plusMinus: 0.1 } },
} as const;

describe('the finder of amounts', () => {
  for (const tag of ['bumpline-geometry', 'bumpline-compare'] as const) {
    it(`finds the joint that gives back the stock camber rate, and puts it on as one step (${tag})`, async () => {
      const element = await shown(tag, withParts(measured(EXAMPLE_DRIVEWAY), JOINT));
      const answer = amountFor({
        of: driveway,
        part: JOINT,
        path: 'mm',
        between: [-20, 60],
        goal: 'stockRate',
        drop: 25,
      });
      if (answer.kind !== 'at') throw new Error('It is out of reach.');
      const text = await found(element);
      const size = Number(/\+([\d.]+)/.exec(text)![1]);
      expect(size).to.be.closeTo(answer.amount, 1);
      expect(text).to.match(/±.*The ± is that of the links/);
      find<HTMLButtonElement>(element, '.part-find .use')!.click();
      await settled(element);
      const [part] = element.car!.car.setups![0]!.parts!;
      expect((part as { mm: number }).mm).to.be.closeTo(answer.amount, 0.06);
      expect((part as { correctTieRod?: boolean }).correctTieRod).to.equal(true);
      // What was found does not depend on what the part is now.
      expect(textOf(find(element, '.part-find [role=status]')!)).to.equal(text);
      element.car!.undo();
      expect(element.car!.car.setups![0]!.parts).to.deep.equal([JOINT]);
    });
  }

  it('finds the top mount’s way inboard, counted as its field is, and says where the way ends', async () => {
    const element = await shown('bumpline-geometry', withParts(measured(EXAMPLE_DRIVEWAY), MOUNT));
    const text = await found(element);
    const answer = amountFor({
      of: driveway,
      part: MOUNT,
      path: 'vector.1',
      between: [-40, 40],
      goal: { camber: -2 },
      drop: 25,
    });
    if (answer.kind !== 'at') throw new Error('It is out of reach.');
    expect(Number(/Inboard \+([\d.]+)/.exec(text)![1])).to.be.closeTo(-answer.amount, 1);
    const goal = find<HTMLInputElement>(element, '.part-find input')!;
    goal.focus();
    goal.value = '-9';
    goal.dispatchEvent(new InputEvent('input', { bubbles: true }));
    goal.dispatchEvent(new Event('change', { bubbles: true }));
    await element.updateComplete;
    // Of another goal what stood there says nothing.
    expect(textOf(find(element, '.part-find [role=status]')!)).to.equal('');
    expect(await found(element)).to.match(/^Out of reach: it ends with \+40.*, at −\d.*, and −9\.\d*° is wanted\.$/);
  });

  it('gives no size whose ± is wider than any part: an uncorrected joint on a car from the driveway', async () => {
    const element = await shown(
      'bumpline-geometry',
      withParts(measured(EXAMPLE_DRIVEWAY), { part: 'ballJointExtended', mm: 10 }),
    );
    expect(await found(element)).to.match(/^(What is known of the links does not tell it|Out of reach)/);
    expect(all(element, '.part-find .use')).to.have.length(0);
  });

  it('says nothing of a height, a car or parts that it was not asked of', async () => {
    const element = await shown('bumpline-geometry', withParts(measured(EXAMPLE_DRIVEWAY), JOINT));
    expect(await found(element)).to.match(/^Ball centre lower by/);
    element.car!.update('drop', (car) => withDrop(car, 40));
    await settled(element);
    expect(textOf(find(element, '.part-find [role=status]')!)).to.equal('');
  });

  it('asks for static camber where that was not measured', async () => {
    const car = { ...withDrop(EMPTY_CAR, 25), given: { points: {}, measures: UNREAD } } as CarDocument;
    const element = await shown('bumpline-geometry', withParts(car, MOUNT));
    expect(textOf(find(element, '.part-find')!)).to.contain('Static camber was not measured.');
    expect(all(element, '.part-find .find')).to.have.length(0);
  });
});
