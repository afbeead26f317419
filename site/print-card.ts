/** A card is made for paper. Where no script runs, the browser's own menu prints it. */
export function addPrintButton(): void {
  const opening = document.querySelector('.card .opening');
  if (!opening) return;
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'print-card';
  button.textContent = 'Print this card';
  button.addEventListener('click', () => print());
  opening.append(button);
}
