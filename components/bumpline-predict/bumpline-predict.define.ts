import { define } from '../element/define.js';
import { BumplinePredict } from './bumpline-predict.js';

export const RegisteredBumplinePredict = define('bumpline-predict', BumplinePredict);

declare global {
  interface HTMLElementTagNameMap {
    'bumpline-predict': BumplinePredict;
  }
}
