import { type BumplineAnswerEvent, type BumplineClearance, CarModel } from 'bumpline';
import { EMPTY_CAR, EXAMPLE_CORNER, type LoweringAnswer } from 'bumpline/core';
import { type ComponentProps, useEffect, useRef, useState } from 'react';

const car = new CarModel(EMPTY_CAR);

/** A component of an author's own around an element. */
function Lowering(props: ComponentProps<'bumpline-lowering'>) {
  return <bumpline-lowering theme="light" {...props} />;
}

/** One car in several elements: by property, by an element around them, by its id; and what else an author writes. */
export function Shared() {
  const clearance = useRef<BumplineClearance>(null);
  const [said, setSaid] = useState('');
  useEffect(() => clearance.current?.setAttribute('data-same', String(clearance.current.car === car)));
  const answered = ({ answer }: BumplineAnswerEvent<LoweringAnswer>) => setSaid(String(answer.change.value));
  return (
    <section>
      <Lowering
        id="one"
        className="wide"
        style={{ minHeight: '100px' }}
        lang="en"
        car={car}
        show="sentence"
        onbumpline-change={({ path, value }) => setSaid(`${path}: ${value}`)}
        onbumpline-problem={({ problems }) => setSaid(problems.map(({ code }) => code).join())}
        onbumpline-answer={answered}
      />
      <bumpline-clearance
        ref={clearance}
        car={car}
        wheel-after="225/45R17, 7.5, 40"
        limits={{}}
        keepInAddress={false}
      />
      <bumpline-car id="car" keep-in-address={false}>
        <bumpline-geometry class="wide" corner={EXAMPLE_CORNER} units="in" angles="arcminutes" />
      </bumpline-car>
      <bumpline-toe car-id="car" data-of="toe" onClick={() => setSaid('pressed')}>
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
      <p>{said}</p>
    </section>
  );
}
