/** How far every pass would be read beyond its ends for more travel, mm. */
export const MORE_MM = 10;
/** Half-width of the 95 % interval of a point that is measured again with care, mm. */
export const POINT_MM = 2;
