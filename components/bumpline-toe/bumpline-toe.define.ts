import { define } from '../element/define.js';
import { BumplineToe } from './bumpline-toe.js';

export const RegisteredBumplineToe = define('bumpline-toe', BumplineToe);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-toe': BumplineToe;
  }
}
