import { degrees, radians, TURN, wrap } from "../geometry/angle.ts";
import type { FormingCase } from "./case.ts";

/** A part is made in so many pieces at most. */
const MOST_PIECES = 12;

/** Up to this a half shell is tilted off: it opens by less than a hundredth of its width less than it is wide. Derived here. [°] */
export const LITTLE_MORE_DEG = 190;

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

/** A part in more pieces than it has now, of which each comes off the punch. */
export interface MorePieces {
  readonly pieces: number;
  /** What all bends of the piece that is bent most come to. [°] */
  readonly turnDeg: number;
}

type Turned = Pick<FormingCase, "bendZones" | "finish">;

/** What the piece that is bent most turns by where a skin is cut into so many, seam 1 staying where it is. [°] */
function mostTurnedDeg({ bendZones = [], finish }: Turned, pieces: number): number {
  const [first] = bendZones;
  if (!first) return degrees(TURN / pieces);
  const seam = first.afterFlat && finish ? radians(finish.seamDeg) : first.fromRad;
  const share = TURN / pieces;
  const turned = Array.from({ length: pieces }, () => 0);
  for (const zone of bendZones) {
    const { fromRad, toRad } = zone;
    const from = wrap(fromRad - seam);
    turned.forEach((before, k) => {
      const within = (rad: number) =>
        zone.turnedRad(Math.min(toRad, Math.max(fromRad, rad - from + fromRad)));
      turned[k] = before + within((k + 1) * share) - within(k * share);
    });
  }
  return degrees(Math.max(...turned));
}

/**
 * The fewest pieces, more than there are, that each come off the punch: by their own bends, and of a cone by its room in
 * the throat too.
 *
 * @returns null where none of twelve or fewer does
 * @see derived here
 */
export function morePieces(
  item: Pick<FormingCase, "cone" | "pieces"> & Turned,
  throatMm: number,
): MorePieces | null {
  const least = item.cone ? piecesToClear(item, throatMm) : item.pieces + 1;
  if (least === null) return null;
  for (let pieces = least; pieces <= MOST_PIECES; pieces++) {
    const turnDeg = mostTurnedDeg(item, pieces);
    if (turnDeg <= LITTLE_MORE_DEG) return { pieces, turnDeg };
  }
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
