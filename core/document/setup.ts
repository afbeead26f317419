export type { Setup } from './car-schema.js';
