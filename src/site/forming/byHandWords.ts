import type { Units } from "../../drawing/format.ts";
import type { ByHand } from "../../forming/byHand.ts";
import { settable } from "../../forming/rollPlaces.ts";
import { sayIn } from "../../forming/say.ts";

/** The table to correct the first pass by without a screen: names of its two rows, and their cells. */
export interface ByHandTable {
  readonly gaps: { readonly name: string; readonly cells: readonly string[] };
  readonly raises: { readonly name: string; readonly cells: readonly string[] };
}

/** The same words on the page, on paper and in a PDF. */
export function byHandWords(rows: readonly ByHand[], units: Units): ByHandTable {
  const say = sayIn(units);
  const bare = (mm: number) => say.length(mm).replace(/ (?:mm|in)$/, "");
  // A roll is set to a tenth of a millimetre at the best; a raise is never rounded up.
  const tenth = (mm: number) => Math.floor(mm * 10) / 10;
  return {
    gaps: {
      name: `Gap, large end, ${units}`,
      cells: rows.map(({ gapMm }) => (gapMm === null ? "flat" : bare(settable(gapMm, units)))),
    },
    raises: {
      name: "Raise both ends by (between two: the less)",
      cells: rows.map(({ gapMm, moreMm }) =>
        moreMm < 0
          ? `next −${bare(-tenth(moreMm))}`
          : `${bare(tenth(moreMm))}${gapMm === null ? " if 0 is right" : ""}`,
      ),
    },
  };
}
