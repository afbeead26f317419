/** Figures of one answer, by name; NaN where there is none. */
export type Figures = Readonly<Record<string, number>>;

/**
 * How each figure goes with a source, per standard uncertainty of it, by central differences; where the links of one neighbour do not
 * join, by the other alone.
 *
 * @param here the figures with the source where it is said to be
 * @param by how many standard uncertainties the neighbours are off
 * @returns NaN where neither neighbour has the figure
 */
export function figureSlopes(here: Figures, more: Figures | undefined, less: Figures | undefined, by: number): Figures {
  const part = (name: string): number => {
    const [up, down] = [more?.[name] ?? Number.NaN, less?.[name] ?? Number.NaN];
    // Close to an end of reach one of them may be beyond its own.
    if (Number.isNaN(up)) return (here[name]! - down) / by;
    return Number.isNaN(down) ? (up - here[name]!) / by : (up - down) / (2 * by);
  };
  return Object.fromEntries(Object.keys(here).map((name) => [name, part(name)]));
}
