import { expose } from 'comlink';
import { camber } from './formula.js';

expose({ camber });
