import './builder.css';
import { keepContents } from '../contents-list.js';
import { takeCarAlong } from '../take-car-along.js';
import { BuilderPage } from './builder-page.js';

keepContents();
takeCarAlong();
new BuilderPage(document.querySelector<HTMLFormElement>('#builder')!).begin();
