import { radians } from "../geometry/angle.ts";
import { distance2 } from "../geometry/vector.ts";

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

/** Above 0 for a point left of a line that is carried on beyond both its ends, below 0 right of it. */
const sideOf = ({ from, to }: Pick<BentLine, "from" | "to">, [x, y]: Point): number =>
  (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);

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
  const length = distance2(from, to);
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
 * @returns for each line the side that is come from: of seam edge 1 up to the middle, then of seam edge 2
 * @param lines of one piece, from seam edge 1
 * @param hand 1 where seam edge 1 lies left of its lines, −1 where right
 * @param half how many of the lines are come to from seam edge 1
 * @see derived here
 */
export function bentReaches(
  lines: readonly BentLine[],
  { hull, hand, half }: { hull: readonly Point[]; hand: 1 | -1; half: number },
): readonly number[] {
  const [first, last] = [lines[0], lines.at(-1)];
  if (!first || !last) return [];
  const places: number[] = [];
  const flat: number[] = [];
  const looked = ([x, y]: Point, place: number) => {
    places.push(place);
    flat.push(x, y, 0);
  };
  lines.forEach(({ from, to }, i) => {
    looked(from, i);
    looked(to, i);
  });
  for (const point of hull) {
    const [before, after] = [hand * sideOf(first, point) > 0, hand * sideOf(last, point) < 0];
    // Where a blank goes so far round that nobody can tell it is taken to lie flat.
    if (before || after) looked(point, before && after ? NaN : before ? -1 : lines.length);
  }
  const reaches: number[] = [];
  const going = (order: Iterable<number>, side: 1 | -1, isBefore: (place: number, at: number) => boolean) => {
    const xyz = new Float64Array(flat);
    for (const at of order)
      reaches[at] = bentAt(
        lines[at] as BentLine,
        { xyz, places },
        { side, isTurned: (place) => isBefore(place, at) },
      );
  };
  const order = [...lines.keys()];
  going(order.slice(0, half), hand, (place, at) => place < at);
  going(order.slice(half).reverse(), hand === 1 ? -1 : 1, (place, at) => place > at);
  return reaches;
}
