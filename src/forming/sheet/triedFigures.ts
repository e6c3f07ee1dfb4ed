import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import type { Figure } from "./step.ts";

/** Where trials of this part say to start. */
export function triedFigures({ tried, item }: RollSheetAsked): Figure[] {
  if (!tried?.set) return [];
  const { largeMm, smallMm, smallBearingMm, largeBearingMm } = tried.set;
  const places = isPipe(item)
    ? [["raise", largeMm] as const]
    : ([
        ["large edge", largeMm],
        ["small edge", smallMm],
        ["bearing beyond the small edge", smallBearingMm],
        ["bearing beyond the large edge", largeBearingMm],
      ] as const);
  return places.flatMap(([place, value]) =>
    value === null
      ? []
      : [{ label: `by this part's own trials, ${place}`, value, unit: "mm", basis: DERIVED }],
  );
}
