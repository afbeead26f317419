import { define } from '../element/define.js';
import { BumplineCar } from './bumpline-car.js';

export const RegisteredBumplineCar = define('bumpline-car', BumplineCar);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-car': BumplineCar;
  }
}
