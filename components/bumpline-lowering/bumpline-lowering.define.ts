import { define } from '../element/define.js';
import { BumplineLowering } from './bumpline-lowering.js';

export const RegisteredBumplineLowering = define('bumpline-lowering', BumplineLowering);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-lowering': BumplineLowering;
  }
}
