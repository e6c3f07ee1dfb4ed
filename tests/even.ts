import fc from "fast-check";

/**
 * Numbers spread evenly from least to most, both included. (fast-check's own doubles are spread over their bit patterns:
 * between 0 and 1 most of them are next to nothing.)
 */
export const even = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => least + (i / 1_000_000) * (most - least));
