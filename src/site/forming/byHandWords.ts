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
  const gap = (mm: number) => bare(settable(mm, units));
  const range = ({ fromMm, toMm }: ByHand): string => {
    if (fromMm === null) return toMm === null ? "any" : `over ${gap(toMm)}, flat`;
    return toMm === null ? `under ${gap(fromMm)}` : `${gap(fromMm)} to ${gap(toMm)}`;
  };
  const raise = ({ fromMm, moreMm }: ByHand): string => {
    if (moreMm === 0) return fromMm === null ? "look for the cause" : "right: leave it";
    if (moreMm < 0) return `next blank −${bare(-tenth(moreMm))}`;
    return fromMm === null ? `${bare(tenth(moreMm))}, check 0 first` : bare(tenth(moreMm));
  };
  return {
    gaps: { name: `Gap, large end, ${units}`, cells: rows.map(range) },
    raises: { name: "Raise both ends by", cells: rows.map(raise) },
  };
}
