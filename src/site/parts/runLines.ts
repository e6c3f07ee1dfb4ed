import { textWidth } from "../../drawing/lettering.ts";

/** Lettering of one height. */
export interface Run {
  readonly text: string;
  readonly capMm: number;
}

/**
 * On how many lines of a width lettering of one or several heights stands, broken between words.
 *
 * @param startMm what stands on the first line before it
 */
export function runLines(runs: readonly Run[], widthMm: number, startMm = 0): number {
  let [count, at] = [1, startMm];
  for (const { text, capMm } of runs)
    for (const word of text.split(" ").filter((one) => one !== "")) {
      const long = textWidth(word, capMm);
      const space = at > 0 ? textWidth(" ", capMm) : 0;
      if (at > 0 && at + space + long > widthMm) {
        count += 1;
        at = long;
      } else at += space + long;
      // A word longer than a line is broken wherever the line ends.
      for (; at > widthMm; at -= widthMm) count += 1;
    }
  return count;
}
