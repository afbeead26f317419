import '../define.js';
import { upgradeDivs } from './divs.js';

upgradeDivs();
