/** As wide as there is room for the list beside the text: the same in site/site.css. */
const BESIDE = '(min-width: 1120px)';

/** The list of contents is open beside the text on a desktop; on a phone it is a line that opens, and closes behind who chose from it. */
export function keepContents(): void {
  const list = document.querySelector<HTMLDetailsElement>('.contents details');
  if (!list) return;
  const beside = matchMedia(BESIDE);
  const follow = () => {
    list.open = beside.matches;
  };
  follow();
  beside.addEventListener('change', follow);
  list.addEventListener('click', ({ target }) => {
    // In a task after: a list that closes above the place would move it.
    if (!beside.matches && target instanceof Element && target.closest('a')) setTimeout(follow);
  });
  list.addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || beside.matches || !list.open) return;
    follow();
    list.querySelector('summary')!.focus();
  });
  document.addEventListener('click', ({ target }) => {
    if (target instanceof Node && !list.contains(target)) follow();
  });
}
