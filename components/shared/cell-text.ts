/** A `<data value>` is locale-free: written so that it cannot be read in two ways. */
export function cellText(cell: HTMLTableCellElement): string {
  const value = cell.querySelector('data')?.value;
  if (value === undefined) return cell.textContent?.trim() ?? '';
  const number = Number(value);
  return value.trim() !== '' && Number.isFinite(number) ? `${number.toFixed(6)}` : value;
}
