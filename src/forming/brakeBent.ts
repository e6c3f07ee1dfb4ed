import { radians } from "../geometry/angle.ts";

type Point = readonly [number, number];

/** A line of a piece, and what it is bent by. */
export interface BentLine {
  readonly from: Point;
  readonly to: Point;
  readonly bendDeg: number;
}

/**
 * At first lines are bent a little less than they are in the end, and less of a bend reaches deeper: taken so low to be on
 * the safe side, without a source. [-]
 */
const AT_FIRST = 0.75;

/** Distance of a point from a line, above 0 on its left. [mm] */
function leftOf({ from, to }: Pick<BentLine, "from" | "to">, [x, y]: Point): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return ((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) / length;
}

/**
 * Points in one row of numbers, x y z each, and the place of each among the lines: at every hit all of them are looked at
 * and many are turned.
 */
interface Row {
  readonly xyz: Float64Array;
  readonly places: readonly number[];
}

/** How far a row of points reaches to one side of a line, and turned up about it what is bent with it. [mm] */
function bentAt(
  { from, to, bendDeg }: BentLine,
  { xyz, places }: Row,
  { side, isTurned }: { side: 1 | -1; isTurned: (place: number) => boolean },
): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const angle = side * radians(AT_FIRST * bendDeg);
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  let most = 0;
  for (let i = 0, k = 0; i < places.length; i++, k += 3) {
    const [x, y, z] = [xyz[k] as number, xyz[k + 1] as number, xyz[k + 2] as number];
    const off = ux * (y - from[1]) - uy * (x - from[0]);
    if (side * off > most) most = side * off;
    if (!isTurned(places[i] as number)) continue;
    const moved = off * cosine - z * sine - off;
    xyz[k] = x - uy * moved;
    xyz[k + 1] = y + ux * moved;
    xyz[k + 2] = off * sine + z * cosine;
  }
  return most;
}

/**
 * How deep one side of a piece reaches behind a line once the lines of that side are bent, with the plate beside the line
 * lying flat: each of its points is turned up about every bent line between it and that line, line by line as the work
 * goes. What lies beyond the line on its other side, and yet reaches over to this one, lies flat. Looked at are the ends of
 * all lines, and of the blank's hull what lies beyond the first and beyond the last. [mm]
 *
 * @returns for each line, once gone from seam edge 1 and once from seam edge 2
 * @param lines of one piece, from seam edge 1
 * @param hand 1 where seam edge 1 lies left of its lines, −1 where right
 * @see derived here
 */
export function bentReaches(
  lines: readonly BentLine[],
  { hull, hand }: { hull: readonly Point[]; hand: 1 | -1 },
): { readonly fromSeam1: readonly number[]; readonly fromSeam2: readonly number[] } {
  const [first, last] = [lines[0], lines.at(-1)];
  if (!first || !last) return { fromSeam1: [], fromSeam2: [] };
  const ends = lines.flatMap(({ from, to }, i) => [
    { point: from, place: i },
    { point: to, place: i },
  ]);
  const beyond = hull.flatMap((point) => {
    const [before, after] = [hand * leftOf(first, point) > 0, hand * leftOf(last, point) < 0];
    // Where a blank goes so far round that nobody can tell it is taken to lie flat.
    return before && after
      ? [{ point, place: NaN }]
      : before
        ? [{ point, place: -1 }]
        : after
          ? [{ point, place: lines.length }]
          : [];
  });
  const points = [...ends, ...beyond];
  const places = points.map(({ place }) => place);
  const going = (from: "seam 1" | "seam 2"): number[] => {
    const side = from === "seam 1" ? hand : hand === 1 ? -1 : 1;
    const xyz = Float64Array.from(points.flatMap(({ point: [x, y] }) => [x, y, 0]));
    const reaches: number[] = [];
    for (const at of from === "seam 1" ? lines.keys() : [...lines.keys()].reverse()) {
      const isTurned = (place: number) => (from === "seam 1" ? place < at : place > at);
      reaches[at] = bentAt(lines[at] as BentLine, { xyz, places }, { side, isTurned });
    }
    return reaches;
  };
  return { fromSeam1: going("seam 1"), fromSeam2: going("seam 2") };
}
