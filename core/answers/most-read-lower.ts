/** How much lower than measured a car may have stood when its camber was read, mm: with as many people aboard as it carries. */
export const MOST_READ_LOWER = 60;
