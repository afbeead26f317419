import { expect } from 'chai';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/own-car.js';
import { find } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const bare = () => location.href.replace(/#.*$/, '');
const setAddress = (hash: string) => history.replaceState(null, '', `${bare()}${hash}`);

describe('<bumpline-clearance keep-in-address>, of wheels and limits that a link brings without a corner', () => {
  afterEach(() => setAddress(''));

  const own = byUser({
    ...EMPTY_CAR,
    drop: 20,
    lowered: 'dampers',
    stopGap: 21,
    fit: { before: { size: '195/50R15', rimWidthInch: 6, offset: 35 } },
  });

  it('takes them as the user’s, and what the page gives stands in for the rest', async () => {
    setAddress(`#${carToLink(own)}`);
    const element = await show(
      '<bumpline-clearance keep-in-address wheel-before="205/55R16, 6.5, 45" wheel-after="225/45R17, 7.5, 35" limits="stop-gap 30; stop-length 40; stop-usable 0.5"></bumpline-clearance>',
    );
    const { car } = (element as unknown as { app: { model: { car: typeof own } } }).app.model;
    expect(car).to.deep.include({ drop: 20, lowered: 'dampers', stopGap: 21, fit: own.fit });
    expect(car.provenance.fit).to.deep.include({ by: 'user' });
    expect(car.provenance.fit!.standIn!.fit!.after!.size).to.equal('225/45R17');
    expect(find(element, '.copy-link')).to.not.equal(null);
  });
});
