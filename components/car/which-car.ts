/** What the elements of a page that can have a car have in common. */
interface Calculator extends Element {
  car?: object | undefined;
  carId?: string | undefined;
  keepInAddress?: boolean;
}

/** Those that a page's own tree holds and that are at work, in its order. */
const calculators = (): Calculator[] =>
  [...document.querySelectorAll<Calculator>(':defined')].filter(({ localName }) => localName.startsWith('bumpline-'));

/** By what two of them share a car: the provider that they stand in or name, a car that a script handed over, or nothing. */
function carOf(one: Calculator): object {
  if (one.localName === 'bumpline-car') return one;
  const named = one.carId ? document.getElementById(one.carId) : undefined;
  return one.car ?? named ?? one.closest('bumpline-car') ?? one;
}

/** Which of the page's cars an element's is, from 1, in the order of the page; 1 where it stands in somebody's shadow. */
export function numberOnPage(host: Element): number {
  const cars = [...new Set(calculators().map(carOf))];
  return Math.max(0, cars.indexOf(carOf(host))) + 1;
}

/** Whether an element's car is that of the first that asks to be kept, whichever of them comes first over the network. */
export function isFirstKept(host: Element): boolean {
  const first = calculators().find(({ keepInAddress }) => keepInAddress);
  return first === undefined || carOf(first) === carOf(host);
}
