import { define } from '../shared/define.js';
import { BumplineCar } from './bumpline-car.js';

export const RegisteredBumplineCar = define('bumpline-car', BumplineCar);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-car': BumplineCar;
  }
}
