/** How a tie rod's length is turned: one thread at one end, or an adjusting sleeve with a right-hand and a left-hand thread. */
export const ROD_THREADS = ['one', 'pair'] as const;
export type RodThread = (typeof ROD_THREADS)[number];
