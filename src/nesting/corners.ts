import { LAY_TOUCH_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { NoFit, Work } from "./noFit.ts";

/** The no-fit polygon of a blank that lies somewhere: shifted there. [mm] */
export interface LaidNoFit {
  readonly noFit: NoFit;
  readonly at: Vec2;
}

const HAIR = LAY_TOUCH_MM / 2;
type Offer = (x: number, y: number) => void;

/**
 * Corners of a no-fit polygon within the room, and where its sides cross the room's edges and the sides of others: the
 * corners of what is free are among these.
 */
export function cornersOf(
  { noFit, at }: LaidNoFit,
  { low, high, laid }: { low: Vec2; high: Vec2; laid: readonly LaidNoFit[] },
  offer: Offer,
  work: Work,
): void {
  const near = laid.filter((other) => touching({ noFit, at }, other));
  const [dx, dy] = at;
  const sides = noFit.border;
  for (let i = 0; i < sides.length; i += 4) {
    const x1 = (sides[i] as number) + dx;
    const y1 = (sides[i + 1] as number) + dy;
    const x2 = (sides[i + 2] as number) + dx;
    const y2 = (sides[i + 3] as number) + dy;
    if ((x1 < low[0] - HAIR && x2 < low[0] - HAIR) || (x1 > high[0] + HAIR && x2 > high[0] + HAIR)) continue;
    if ((y1 < low[1] - HAIR && y2 < low[1] - HAIR) || (y1 > high[1] + HAIR && y2 > high[1] + HAIR)) continue;
    offer(x1, y1);
    offer(x2, y2);
    crossUpright(low[0]);
    crossUpright(high[0]);
    crossLevel(low[1]);
    crossLevel(high[1]);
    for (const other of near) crossings(x1, y1, x2, y2, other, offer, work);

    function crossUpright(edge: number): void {
      if (x1 < edge !== x2 < edge) offer(edge, y1 + ((edge - x1) / (x2 - x1)) * (y2 - y1));
    }
    function crossLevel(edge: number): void {
      if (y1 < edge !== y2 < edge) offer(x1 + ((edge - y1) / (y2 - y1)) * (x2 - x1), edge);
    }
  }
}

const touching = (p: LaidNoFit, q: LaidNoFit): boolean => {
  const [dx, dy] = [q.at[0] - p.at[0], q.at[1] - p.at[1]];
  return (
    p.noFit.left <= q.noFit.right + dx &&
    q.noFit.left + dx <= p.noFit.right &&
    p.noFit.bottom <= q.noFit.top + dy &&
    q.noFit.bottom + dy <= p.noFit.top
  );
};

/** Where one side crosses those of another polygon. */
function crossings(
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
  { noFit, at }: LaidNoFit,
  offer: Offer,
  work: Work,
): void {
  // In the other's own coordinates, so that nothing is shifted but this side.
  const x1 = fromX - at[0];
  const y1 = fromY - at[1];
  const ux = toX - fromX;
  const uy = toY - fromY;
  const west = ux < 0 ? x1 + ux : x1;
  const east = ux < 0 ? x1 : x1 + ux;
  const south = uy < 0 ? y1 + uy : y1;
  const north = uy < 0 ? y1 : y1 + uy;
  const sides = noFit.border;
  if (east < noFit.left || west > noFit.right || north < noFit.bottom || south > noFit.top) return;
  work.done += sides.length >> 2;
  for (let i = 0; i < sides.length; i += 4) {
    const x3 = sides[i] as number;
    const x4 = sides[i + 2] as number;
    if ((x3 < west && x4 < west) || (x3 > east && x4 > east)) continue;
    const y3 = sides[i + 1] as number;
    const y4 = sides[i + 3] as number;
    if ((y3 < south && y4 < south) || (y3 > north && y4 > north)) continue;
    const vx = x4 - x3;
    const vy = y4 - y3;
    const d = ux * vy - uy * vx;
    // Sides in one direction: their ends are corners anyway.
    if (d === 0) continue;
    const t = ((x3 - x1) * vy - (y3 - y1) * vx) / d;
    const s = ((x3 - x1) * uy - (y3 - y1) * ux) / d;
    if (t >= 0 && t <= 1 && s >= 0 && s <= 1) offer(fromX + t * ux, fromY + t * uy);
  }
}
