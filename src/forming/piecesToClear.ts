import type { FormingCase } from "./case.ts";

/** A part is made in so many pieces at most. */
const MOST_PIECES = 12;

/** Half the width of a blank square to its middle line, for a cone in so many pieces. [mm] */
function halfWidthMm(
  { halfAngleRad, largeRadiusMm }: NonNullable<FormingCase["cone"]>,
  pieces: number,
): number {
  const half = Math.PI / pieces;
  const sine = Math.sin(halfAngleRad);
  return sine === 0
    ? largeRadiusMm * half
    : (largeRadiusMm / sine) * Math.sin(Math.min(half * sine, Math.PI / 2));
}

/**
 * In how many pieces a right cone or a pipe would find room in the throat of a brake and come off its punch: it is half a
 * turn or less in two pieces already. Each is a sector of the pattern's
 * radius L = R / sin α over 2π sin α / n, and the line in its middle has most plate on its shallower side:
 *
 *   L sin(π sin α / n) ≤ throat    (a quarter turn at most),   of a pipe π R / n.
 *
 * Where no hit falls in the middle fewer may do.
 *
 * @param throatMm Infinity where no throat is known
 * @returns null for other shapes, and where no number of pieces does
 * @see derived here
 */
export function piecesToClear(
  { cone, pieces }: Pick<FormingCase, "cone" | "pieces">,
  throatMm: number,
): number | null {
  if (!cone) return null;
  for (let more = pieces + 1; more <= MOST_PIECES; more++)
    if (halfWidthMm(cone, more) <= throatMm) return more;
  return null;
}

/** More pieces than a part has now, in words: how many, where that is known, and that it goes in so many. */
export function inPieces(
  item: Pick<FormingCase, "cone" | "pieces">,
  throatMm: number,
): { readonly many: string; readonly goes: string } {
  const clear = piecesToClear(item, throatMm);
  if (clear !== null)
    return { many: `${clear} pieces`, goes: `in ${clear} pieces it goes (pieces: ${clear})` };
  const many = item.pieces === 1 ? "2 pieces or more" : "more pieces";
  return { many, goes: `make it in ${many}` };
}
