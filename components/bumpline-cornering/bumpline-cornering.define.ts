import { define } from '../element/define.js';
import { BumplineCornering } from './bumpline-cornering.js';

export const RegisteredBumplineCornering = define('bumpline-cornering', BumplineCornering);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-cornering': BumplineCornering;
  }
}
