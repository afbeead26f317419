import { define } from '../element/define.js';
import { BumplineStaticCamber } from './bumpline-static-camber.js';

export const RegisteredBumplineStaticCamber = define('bumpline-static-camber', BumplineStaticCamber);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-static-camber': BumplineStaticCamber;
  }
}
