import { define } from '../element/define.js';
import { BumplineReadings } from './bumpline-readings.js';

export const RegisteredBumplineReadings = define('bumpline-readings', BumplineReadings);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-readings': BumplineReadings;
  }
}
