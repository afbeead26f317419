import '../components/define.js';
import { keepContents } from './contents-list.js';
import { followCar } from './follow-car.js';
import { takeCarAlong } from './take-car-along.js';

/** Gives every snippet a button that copies it, where the browser lets a page write to the clipboard. */
function addCopyButtons(): void {
  if (!navigator.clipboard) return;
  const status = document.createElement('p');
  status.className = 'visually-hidden';
  status.setAttribute('role', 'status');
  document.body.append(status);
  for (const pre of document.querySelectorAll<HTMLPreElement>('.snippet pre')) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = 'Copy';
    button.addEventListener('click', () => {
      // The answer may come late or be "no": nothing is claimed before.
      navigator.clipboard.writeText(pre.textContent ?? '').then(
        () => say('Copied'),
        () => say('Not copied: select the text instead'),
      );
    });
    const say = (text: string) => {
      button.textContent = text;
      status.textContent = text;
    };
    pre.after(button);
  }
}

addCopyButtons();
followCar();
keepContents();
takeCarAlong();
