import { keepContents } from './contents-list.js';
import { addPrintButton } from './print-card.js';
import { takeCarAlong } from './take-car-along.js';

keepContents();
addPrintButton();
takeCarAlong();
