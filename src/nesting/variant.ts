import { degrees } from "../geometry/angle.ts";
import { boxesAtAngles, hull } from "../geometry/polygon.ts";
import { LAY_GRID_MM } from "../geometry/tolerance.ts";
import { distance2, type Vec2 } from "../geometry/vector.ts";
import type { LayItem, Stock } from "./model.ts";
import { gridRing, grown, type Ring, ringMm } from "./ring.ts";

/** One item in one turn, as it may be shifted about a plate. */
export interface Variant {
  /** Its place among all variants of one run. */
  readonly id: number;
  readonly item: number;
  readonly turnDeg: number;
  /** The upright rectangle round it, in its own coordinates once turned. [mm] */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** An item with everything that laying it on one plate size needs. */
export interface Kind {
  readonly item: number;
  readonly areaMm2: number;
  readonly count: number;
  /** Grown all round by half the spacing, not turned. */
  readonly ring: Ring;
  /** Only turns in which it goes on the plate; none where it does not go on at all. */
  readonly variants: readonly Variant[];
}

/** Steps of a full turn that are tried besides the sides' own directions. [degrees] */
const EIGHTH = 45;
/** So many of the longest straight sides are laid along the plate's edges. */
const SIDES = 2;
/** Turns nearer than this are one turn. [degrees] */
const SAME_TURN = 0.25;
/** All forms together are tried in about so many turns, but each in four at least. */
const [MOST_VARIANTS, LEAST_TURNS] = [240, 4];
/** With a grain the element lines stay across it: as drawn, or turned by half. [degrees] */
const ACROSS_GRAIN = [0, 180] as const;

/** Room between the edge margins. [mm] */
export const roomOf = (stock: Stock, edgeMm: number): { readonly xMm: number; readonly yMm: number } => ({
  xMm: stock.lengthMm - 2 * edgeMm,
  yMm: stock.widthMm - 2 * edgeMm,
});

/** Items made ready for one plate size. */
export function kindsOf(
  items: readonly LayItem[],
  stock: Stock,
  { spacingMm, edgeMm }: { spacingMm: number; edgeMm: number },
): Kind[] {
  const room = roomOf(stock, edgeMm);
  let id = 0;
  const turnsEach = Math.max(LEAST_TURNS, Math.floor(MOST_VARIANTS / items.length));
  return items.map(({ outline, areaMm2, count }, item): Kind => {
    const fitting = (turns: readonly number[]): Variant[] =>
      turns
        .map((turnDeg) => ({ item, turnDeg, ...boxOf(outline, turnDeg) }))
        .filter(({ left, right }) => right - left <= room.xMm + LAY_GRID_MM)
        .filter(({ bottom, top }) => top - bottom <= room.yMm + LAY_GRID_MM)
        .map((one) => ({ ...one, id: id++ }));
    const usual = fitting(stock.grain ? ACROSS_GRAIN : turnsOf(outline)).slice(0, turnsEach);
    // A blank that only just goes on the plate may want an odd angle.
    const variants = usual.length > 0 || stock.grain ? usual : fitting(boxTurns(outline));
    const ring = grown(gridRing(outline, 0), spacingMm / 2);
    return { item, areaMm2, count, ring, variants };
  });
}

function boxOf(
  outline: readonly Vec2[],
  turnDeg: number,
): Pick<Variant, "left" | "right" | "bottom" | "top"> {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of ringMm(gridRing(outline, turnDeg))) {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [bottom, top] = [Math.min(bottom, y), Math.max(top, y)];
  }
  return { left, right, bottom, top };
}

/** As drawn and at right angles, along its smallest rectangle, along its longest straight sides, and at eighths of a turn. */
function turnsOf(outline: readonly Vec2[]): number[] {
  const [box] = boxesAtAngles(outline).toSorted((p, q) => p.lengthMm * p.widthMm - q.lengthMm * q.widthMm);
  const starts = [0, ...(box ? [degrees(box.turnRad)] : []), ...sideTurns(outline), EIGHTH];
  return distinct(starts.flatMap((start) => [0, 180, 90, 270].map((quarter) => start + quarter)));
}

/** Every turn of a rectangle round it that no other betters in both sides. */
const boxTurns = (outline: readonly Vec2[]): number[] =>
  distinct(
    boxesAtAngles(outline).flatMap(({ turnRad }) =>
      [0, 180, 90, 270].map((quarter) => degrees(turnRad) + quarter),
    ),
  );

/** Turns that lay the longest straight sides of the hull level. */
function sideTurns(outline: readonly Vec2[]): number[] {
  const round = hull(outline);
  return round
    .map((p, i) => [p, round[(i + 1) % round.length] as Vec2] as const)
    .toSorted(([p, q], [r, s]) => distance2(r, s) - distance2(p, q))
    .slice(0, SIDES)
    .map(([p, q]) => -degrees(Math.atan2(q[1] - p[1], q[0] - p[0])));
}

/** Within 0 … 360, each once, the first mention kept. */
function distinct(turns: readonly number[]): number[] {
  const kept: number[] = [];
  for (const turn of turns) {
    const at = ((turn % 360) + 360) % 360;
    const apart = (other: number) => Math.min(Math.abs(at - other), 360 - Math.abs(at - other));
    if (kept.every((other) => apart(other) > SAME_TURN)) kept.push(at);
  }
  return kept;
}
