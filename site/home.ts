import { takeCarAlong } from './take-car-along.js';

takeCarAlong();
