/** Until somebody says otherwise, degrees: a hard corner on road tyres. Common practice, no source. */
export const USUAL_ROLL = 3;
