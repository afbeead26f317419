/** Where a cursor stands, mm, and how far it goes. */
interface Along {
  travel: number;
  from: number;
  to: number;
  /** What one arrow key moves it by; Page moves ten. */
  step: number;
  /** Where Escape goes back to. */
  rest: number;
}

/** On whole steps, so that one gets a figure one can say; the ends themselves can be reached in any case. */
export const onStep = (travel: number, { from, to, step }: Pick<Along, 'from' | 'to' | 'step'>): number =>
  Math.min(Math.max(Math.round(travel / step) * step || 0, from), to);

/** The travel that a key moves a cursor to; undefined of a key that belongs to whoever is around it. */
export function travelByKey(event: KeyboardEvent, along: Along): number | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey) return undefined;
  const { travel, from, to, step, rest } = along;
  const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
  if (by !== undefined) return onStep(travel + by * step, along);
  if (event.key === 'Home') return from;
  if (event.key === 'End') return to;
  // Where there is nothing to go back from, Escape belongs to whoever is around us.
  return event.key === 'Escape' && travel !== rest ? rest : undefined;
}
