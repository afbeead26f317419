import { type BumplineClearance, type BumplineLowering, CarModel } from 'bumpline';
import { EMPTY_CAR } from 'bumpline/core';
import { type ComponentPropsWithoutRef, forwardRef, useEffect, useRef } from 'react';

const car = new CarModel(EMPTY_CAR);

/** A component of an author's own around an element. */
const Lowering = forwardRef<BumplineLowering, ComponentPropsWithoutRef<'bumpline-lowering'>>((props, ref) => (
  <bumpline-lowering ref={ref} theme="light" {...props} />
));

/** One car in several elements: by property, by an element around them, by its id; and what else an author writes. */
export function Shared() {
  const one = useRef<BumplineLowering>(null);
  const clearance = useRef<BumplineClearance>(null);
  useEffect(() => {
    for (const { current } of [one, clearance]) current!.car = car;
    clearance.current?.setAttribute('data-same', String(clearance.current.car === car));
  }, []);
  return (
    <section>
      <Lowering ref={one} id="one" class="wide" style={{ minHeight: '100px' }} lang="en" show="sentence" />
      <bumpline-clearance ref={clearance} wheel-after="225/45R17, 7.5, 40" limits="stop-gap 22; stop-length 50" />
      <bumpline-car id="car" keep-in-address>
        <bumpline-geometry class="wide" units="in" angles="arcminutes" drop={25} />
      </bumpline-car>
      <bumpline-toe car-id="car" data-of="toe" onClick={() => undefined}>
        <table>
          <tbody>
            <tr>
              <th>Travel, mm</th>
              <th>Toe, °</th>
            </tr>
            <tr>
              <td>-40</td>
              <td>0.1</td>
            </tr>
            <tr>
              <td>0</td>
              <td>0.05</td>
            </tr>
            <tr>
              <td>80</td>
              <td>-0.05</td>
            </tr>
          </tbody>
        </table>
      </bumpline-toe>
    </section>
  );
}
