import { degrees, radians, TURN, wrap } from "../geometry/angle.ts";
import { MOST_PIECES, morePiecesThan, splitSeamDeg } from "../shapes/pieces.ts";
import type { FormingCase } from "./case.ts";

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
  /** What is written into the part file for it: the pieces, and the seam where it cannot stay where it is. */
  readonly keys: string;
  /** What all bends of the piece that is bent most come to. [°] */
  readonly turnDeg: number;
}

type Turned = Pick<FormingCase, "bendZones" | "finish" | "shape">;

/** Can a part be split where its seam lies? */
const keepsSeam = ({ finish, shape }: Pick<FormingCase, "finish" | "shape">): boolean =>
  !finish || splitSeamDeg(shape, finish.seamDeg) === finish.seamDeg % 360;

/** What the piece that is bent most turns by where a skin is cut into so many, seam 1 staying where it is if it can. [°] */
function mostTurnedDeg(item: Turned, pieces: number): number {
  const { bendZones = [], finish, shape } = item;
  const [first] = bendZones;
  if (!first) return degrees(TURN / pieces);
  const seam = keepsSeam(item)
    ? first.afterFlat && finish
      ? radians(finish.seamDeg)
      : first.fromRad
    : radians(splitSeamDeg(shape, finish?.seamDeg ?? 0));
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

function keysFor(item: Turned, pieces: number): string {
  const { finish, shape } = item;
  const seam = keepsSeam(item) ? "" : `, seam.at: ${splitSeamDeg(shape, finish?.seamDeg ?? 0)}`;
  return `pieces: ${pieces}${seam}`;
}

/**
 * The fewest pieces, more than there are and such as the shape takes, that each come off the punch: by their own bends, and
 * of a cone by its room in the throat too.
 *
 * @returns null where none does
 * @see derived here
 */
export function morePieces(
  item: Pick<FormingCase, "cone" | "pieces"> & Turned,
  throatMm: number,
): MorePieces | null {
  const least = item.cone ? piecesToClear(item, throatMm) : item.pieces + 1;
  if (least === null) return null;
  for (const pieces of morePiecesThan(item.shape, least - 1)) {
    const turnDeg = mostTurnedDeg(item, pieces);
    if (turnDeg <= LITTLE_MORE_DEG) return { pieces, keys: keysFor(item, pieces), turnDeg };
  }
  return null;
}

/** More pieces than a part has now, in words: how many, where that is known, and that it goes in so many. */
export function inPieces(item: Pick<FormingCase, "cone" | "pieces" | "shape">, throatMm: number): string {
  const clear = piecesToClear(item, throatMm);
  if (clear !== null) return `in ${clear} pieces it goes (pieces: ${clear})`;
  const more = morePiecesThan(item.shape, item.pieces);
  if (more.length === 0) return "it is not made in more pieces, so use a brake with a deeper throat";
  // Of few numbers each is named: a part of that shape is not made in those between.
  if (more.length < 3) return `make it in ${more.join(" or ")} pieces`;
  return `make it in ${item.pieces === 1 ? "2 pieces or more" : "more pieces"}`;
}
