import { define } from '../element/define.js';
import { BumplineCompare } from './bumpline-compare.js';

export const RegisteredBumplineCompare = define('bumpline-compare', BumplineCompare);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-compare': BumplineCompare;
  }
}
