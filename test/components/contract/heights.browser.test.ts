import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { all, charted, clear, put, settled } from './stage.js';

/* As they open, on a phone: what decides stands open, the rest is a tap away. Fonts differ from machine to machine: those of a desktop make a sheet up to 10 % taller than the bundled browser's. */

/** The most that each may take of a column of 360 px, px. */
const MOST = {
  'bumpline-cornering': 2300,
  'bumpline-static-camber': 2560,
  'bumpline-toe': 2330,
  'bumpline-predict': 2410,
};

describe('an element in a column of 360 px, as it opens', () => {
  afterEach(clear);

  for (const [name, most] of Object.entries(MOST))
    it(`<${name}> is at most ${most} px high, and shows few fields`, async () => {
      await setViewport({ width: 360, height: 780 });
      const [element] = await put(name, `<${name}></${name}>`);
      await settled(element!);
      await charted(element!);
      expect(element!.getBoundingClientRect().height).to.be.at.most(most);
      const fields = all(element!, 'input:not([type=range])').filter(
        (one) => one.checkVisibility() && !one.closest('.sentence, dialog'),
      );
      expect(fields).to.have.length(0);
    });
});
