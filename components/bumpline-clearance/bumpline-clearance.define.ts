import { define } from '../element/define.js';
import { BumplineClearance } from './bumpline-clearance.js';

export const RegisteredBumplineClearance = define('bumpline-clearance', BumplineClearance);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-clearance': BumplineClearance;
  }
}
