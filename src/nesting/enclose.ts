import { type ArcPiece, circleOf } from "../geometry/arcFit.ts";
import { ENCLOSE_GUARD_MM, ENCLOSE_MM } from "../geometry/tolerance.ts";
import { distance2, type Vec2 } from "../geometry/vector.ts";
import { grown, gridRing, ringMm } from "./ring.ts";
import { simplified } from "./simplify.ts";

/** A quarter of the guard. [mm] */
const FLAT_MM = ENCLOSE_GUARD_MM / 4;
/** The angle whose cosine is one less a share, kept exact for small ones. [rad] */
const halfAngle = (lost: number): number => 2 * Math.asin(Math.sqrt(Math.min(1, lost / 2)));

/** Small blanks are enclosed closer: by no more than this share of their chord. [-] */
const SHARE = 0.002;

/** More corners than this cost more time than the little plate they save is worth: the least of them are smoothed over. */
const MOST_CORNERS = 72;

/** A contour of arcs and lines, counter-clockwise and closed. */
interface Arcs {
  readonly start: Vec2;
  readonly pieces: readonly ArcPiece[];
}

/**
 * A polygon of few corners that encloses a contour with true arcs: sides touch an arc from outside where it bulges and
 * cut it off where it is hollow, so that no part of the blank lies without; all round it lies no further out than
 * `ENCLOSE_MM` and the guard, but a little further where that would take too many corners. [mm]
 */
export function enclose({ start, pieces }: Arcs): Vec2[] {
  const points: Vec2[] = [];
  let from = start;
  for (const piece of pieces) {
    points.push(from, ...corners(from, piece));
    from = piece.to;
  }
  return ringMm(grown(gridRing(simplified(points, MOST_CORNERS), 0), ENCLOSE_GUARD_MM));
}

/** Corners between the ends of a piece. */
function corners(from: Vec2, piece: ArcPiece): Vec2[] {
  const { bulge, to } = piece;
  // What stands off its chord by less than this is held by the guard.
  if ((Math.abs(bulge) * distance2(from, to)) / 2 < FLAT_MM) return [];
  const { centre, radius } = circleOf(from, piece);
  const sweep = 4 * Math.atan(bulge);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const within = Math.min(ENCLOSE_MM, SHARE * Math.max(distance2(from, to), radius));
  const at = (angle: number, reach: number): Vec2 => [
    centre[0] + reach * Math.cos(angle),
    centre[1] + reach * Math.sin(angle),
  ];
  if (bulge < 0) {
    // Hollow: chords across it. Height of a chord: r (1 − cos half).
    const half = halfAngle(within / radius);
    const count = Math.max(1, Math.ceil(-sweep / (2 * half)));
    return Array.from({ length: count - 1 }, (_, i) => at(start + (sweep * (i + 1)) / count, radius));
  }
  // Bulging: tangents round it. Their corners lie at r / cos half.
  const half = halfAngle(within / (radius + within));
  const count = Math.max(2, Math.ceil(sweep / (2 * half)));
  const step = sweep / count;
  return Array.from({ length: count }, (_, i) => at(start + (i + 0.5) * step, radius / Math.cos(step / 2)));
}
