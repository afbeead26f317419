/** Half-width of a 95 % interval ÷ standard uncertainty, normal distribution: its 97.5 % quantile (NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
export const NORMAL_95 = 1.959963984540054;
