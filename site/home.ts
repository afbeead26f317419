import { keepContents } from './contents-list.js';
import { takeCarAlong } from './take-car-along.js';

keepContents();
takeCarAlong();
