import { define } from '../element/define.js';
import { BumplineGeometry } from './bumpline-geometry.js';

export const RegisteredBumplineGeometry = define('bumpline-geometry', BumplineGeometry);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-geometry': BumplineGeometry;
  }
}
