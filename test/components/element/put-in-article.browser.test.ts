import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { carToLink } from '../../../core/document/link.js';
import { ELEMENTS } from '../contract/elements.js';
import { clear, find, put, type Sheet, settled, until } from '../contract/stage.js';

const linkIn = (element: Sheet) => find<HTMLAnchorElement>(element, 'a.put-in-article');

describe('the way into an article', () => {
  afterEach(clear);

  for (const { tag, own } of ELEMENTS) {
    it(`${tag}: leads to the page that its author names, with the car as it stands, and is nowhere else`, async () => {
      const [plain] = (await put(tag, `<${tag}></${tag}>`)) as [Sheet];
      expect(linkIn(plain)).to.equal(null);
      const [element] = (await put(tag, `<${tag} author-page="/builder/" units="in"></${tag}>`)) as [Sheet];
      const name = tag.replace('bumpline-', '');
      expect(linkIn(element)!.getAttribute('href')).to.equal(`/builder/?element=${name}&units=in`);
      element.car = new CarModel(own);
      await settled(element);
      linkIn(element)!.dispatchEvent(new PointerEvent('pointerdown'));
      await until('the link has the car', () => linkIn(element)!.hash !== '');
      expect(linkIn(element)!.hash).to.equal(`#${carToLink(own)}`);
    });
  }

  it('what is no page is led to by no link', async () => {
    const tag = 'bumpline-lowering';
    for (const address of ['javascript:alert(1)', ' JavaScript:alert(1)', 'data:text/html,no', 'https://[no']) {
      const [element] = (await put(tag, `<${tag} author-page="${address}"></${tag}>`)) as [Sheet];
      expect(linkIn(element), address).to.equal(null);
    }
  });

  it('what the page asks goes along, until a reader asks something else', async () => {
    const tag = 'bumpline-static-camber';
    const [element] = (await put(tag, `<${tag} author-page="/b/?x=1" by="-2" over="30" show="table"></${tag}>`)) as [
      Sheet,
    ];
    (element as Sheet & { show: string }).show = '';
    await settled(element);
    const query = () => new URL(linkIn(element)!.href).search;
    expect(query()).to.equal('?x=1&element=static-camber&over=30&by=-2&show=table');
    const field = find<HTMLInputElement>(element, '.sentence input')!;
    field.value = '1.5';
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await settled(element);
    expect(query()).to.equal('?x=1&element=static-camber&over=30&show=table');
  });
});
