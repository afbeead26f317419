import '../components/define.js';

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

/** Where the address carries a reader's car, links that go on with it carry it too. */
function takeCarAlong(): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-with-car]')) {
    const { hash } = link;
    link.addEventListener('click', () => {
      link.hash = location.hash.startsWith('#car=') ? location.hash : hash;
    });
  }
}

addCopyButtons();
takeCarAlong();
