/** Camber, degrees, at a wheel travel in mm: the one thing that the peer computes. */
export const camber = (travel: number): number => -0.6 - 0.014 * travel + 1.1e-4 * travel ** 2;
