import { LAY_GRID_MM, LAY_MEET_MM } from "../geometry/tolerance.ts";
import { type Sides, type Walks, windingOf } from "./walks.ts";

/** How far beside a side it is asked what lies there. [mm] */
const BESIDE_MM = LAY_GRID_MM / 2;

/**
 * The border of what closed walks go round: their steps are cut where they meet others, and a piece is kept if the walks
 * go round what lies on the one side of it and not round what lies on the other. No pieces are strung together: to find
 * corners and to see whether a place lies on the border takes no more.
 *
 * @param sides the steps that may be part of it: what is walked backwards at hollow corners never is
 */
export function borderOf(sides: Sides, walks: Walks): Sides {
  const kept: number[] = [];
  for (let i = 0; i < sides.length; i += 4) {
    const x1 = sides[i] as number;
    const y1 = sides[i + 1] as number;
    const ux = (sides[i + 2] as number) - x1;
    const uy = (sides[i + 3] as number) - y1;
    const long = Math.sqrt(ux * ux + uy * uy);
    if (long === 0) continue;
    const cuts = cutsOf(sides, i, long);
    // Square to the step, to its right.
    const rightX = (uy / long) * BESIDE_MM;
    const rightY = (-ux / long) * BESIDE_MM;
    let from = 0;
    for (const to of cuts) {
      if ((to - from) * long > LAY_MEET_MM) {
        const x = x1 + ((from + to) / 2) * ux;
        const y = y1 + ((from + to) / 2) * uy;
        const isWithin = windingOf(walks, x - rightX, y - rightY) !== 0;
        if (isWithin !== (windingOf(walks, x + rightX, y + rightY) !== 0))
          kept.push(x1 + from * ux, y1 + from * uy, x1 + to * ux, y1 + to * uy);
      }
      from = to;
    }
  }
  return Float64Array.from(kept);
}

/** Where a step meets others, as shares of its length in order, its end included. */
function cutsOf(sides: Sides, at: number, long: number): number[] {
  const x1 = sides[at] as number;
  const y1 = sides[at + 1] as number;
  const x2 = sides[at + 2] as number;
  const y2 = sides[at + 3] as number;
  const ux = x2 - x1;
  const uy = y2 - y1;
  const west = (x1 < x2 ? x1 : x2) - LAY_MEET_MM;
  const east = (x1 < x2 ? x2 : x1) + LAY_MEET_MM;
  const south = (y1 < y2 ? y1 : y2) - LAY_MEET_MM;
  const north = (y1 < y2 ? y2 : y1) + LAY_MEET_MM;
  const spare = LAY_MEET_MM / long;
  const cuts: number[] = [];
  const cut = (share: number): void => {
    if (share > spare && share < 1 - spare) cuts.push(share);
  };
  for (let i = 0; i < sides.length; i += 4) {
    const x3 = sides[i] as number;
    const x4 = sides[i + 2] as number;
    if ((x3 < west && x4 < west) || (x3 > east && x4 > east)) continue;
    const y3 = sides[i + 1] as number;
    const y4 = sides[i + 3] as number;
    if ((y3 < south && y4 < south) || (y3 > north && y4 > north)) continue;
    // How far the ends of the other step lie beside this one.
    const off3 = (ux * (y3 - y1) - uy * (x3 - x1)) / long;
    const off4 = (ux * (y4 - y1) - uy * (x4 - x1)) / long;
    if ((off3 > LAY_MEET_MM && off4 > LAY_MEET_MM) || (off3 < -LAY_MEET_MM && off4 < -LAY_MEET_MM)) continue;
    if (Math.abs(off3) <= LAY_MEET_MM) cut(((x3 - x1) * ux + (y3 - y1) * uy) / (long * long));
    if (Math.abs(off4) <= LAY_MEET_MM) cut(((x4 - x1) * ux + (y4 - y1) * uy) / (long * long));
    if (off3 * off4 < 0) {
      const share = off3 / (off3 - off4);
      const [x, y] = [x3 + share * (x4 - x3), y3 + share * (y4 - y3)];
      cut(((x - x1) * ux + (y - y1) * uy) / (long * long));
    }
  }
  cuts.sort((a, b) => a - b);
  cuts.push(1);
  return cuts;
}
