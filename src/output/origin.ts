/** Where x and y of every pattern begin: at a corner of the upright rectangle round it, which need be no corner of the pattern. */
export const NOUGHT = "x = 0 is the leftmost and y = 0 the lowest point of the cut edge";
